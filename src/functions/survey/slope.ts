import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";

export const shellSlope = defineFunction({
  name: "SHELL.SLOPE",
  title: "Entrance or flare of the skin from two offsets",
  args: {
    first: { unit: "mm", about: "half-breadth aft (for entrance) or above (for flare)", min: -100000, max: 100000 },
    second: { unit: "mm", about: "half-breadth forward, or below", min: -100000, max: 100000 },
    spacing: { unit: "mm", about: "distance between the two offsets", min: 0, aboveMin: true, max: 100000 },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "alpha",
      formula: "degrees(atan((first - second) / spacing))",
      unit: "deg",
      why: "slope of the chord between the two offsets",
    },
  ],
  valid:
    "Offsets about a tunnel diameter apart, either side of its axis: along the waterline for entrance, up the section for flare. Between them the skin is taken as flat; SHELL.BULGE shows whether it is.",
  sources: [identity("Tangent of an angle")],
  examples: [
    {
      given: { first: 433.6672, second: 366.3328, spacing: 185 },
      expect: 20,
      within: 5e-5,
      source: identity("67.3344/185 = tan 20°"),
    },
    {
      given: { first: 300, second: 400, spacing: 100 },
      expect: -45,
      within: 1e-9,
      source: identity("atan(−1) = −45°"),
    },
  ],
});
