import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";

export const shellBulge = defineFunction({
  name: "SHELL.BULGE",
  title: "How far the skin stands out of a straight line between two offsets",
  args: {
    first: { unit: "mm", about: "half-breadth at one end", min: -100000, max: 100000 },
    middle: { unit: "mm", about: "half-breadth half way", min: -100000, max: 100000 },
    last: { unit: "mm", about: "half-breadth at the other end", min: -100000, max: 100000 },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "s",
      formula: "middle - (first + last) / 2",
      unit: "mm",
      why: "against the middle of the chord",
    },
  ],
  valid:
    "Take the three at top, axis and bottom of the tunnel, then forward, axis and aft. Above 0 the skin is round there, below 0 hollow. The tunnel's cut lines for a flat skin are wrong by about as much: with more than the joint can fill, mark the cut from the hull itself.",
  sources: [identity("Sagitta of a chord")],
  examples: [
    {
      given: { first: 638.153, middle: 501.966, last: 304.571 },
      expect: 30.604,
      within: 5e-4,
      source: identity("501.966 − (638.153 + 304.571)/2 = 30.604"),
    },
    {
      given: { first: 800, middle: 1000, last: 800 },
      expect: 200,
      within: 1e-9,
      source: identity("circle of radius 1000, 600 either side: 1000 − 800 = 200"),
    },
  ],
});
