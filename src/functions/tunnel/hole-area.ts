import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { mm2PerM2 } from "../../tables/metre";
import { diameter, entrance, flare } from "./bore";

export const tunnelHoleArea = defineFunction({
  name: "TUNNEL.HOLEAREA",
  title: "Area of the hole in the skin",
  args: { diameter, entrance, flare },
  constants: { mm2PerM2 },
  steps: [
    {
      kind: "algebra",
      symbol: "G",
      formula: "sqrt(tan(radians(entrance)) * tan(radians(entrance)) + tan(radians(flare)) * tan(radians(flare)))",
      unit: "1",
      why: "steepest slope of the skin against the tunnel's end",
    },
    {
      kind: "algebra",
      symbol: "R",
      formula: "diameter / 2",
      unit: "mm",
      why: "half the short axis of the ellipse",
    },
    {
      kind: "algebra",
      symbol: "A",
      formula: "pi * R * R * sqrt(1 + G * G) / mm2PerM2",
      unit: "m2",
      why: "π times both half axes",
    },
  ],
  valid: "One hole, measured on a flat skin, with the outer diameter of the tube.",
  sources: [identity("A cylinder cut by a plane")],
  examples: [
    {
      given: { diameter: 185, entrance: 20, flare: 15 },
      expect: 0.0294981969,
      within: 5e-11,
      source: identity("π·92.5·101.5088 mm2 = 29498.1969 mm2"),
    },
  ],
});
