import { defineFunction } from "../../formula/define";
import { idelchikOblique } from "../../tables/hydraulics-sources";

export const tunnelOblique = defineFunction({
  name: "TUNNEL.OBLIQUE",
  title: "Loss of a sharp inlet that meets the skin at an angle",
  args: {
    angle: { unit: "deg", about: "between the tunnel's axis and the skin; 90 is square", min: 20, max: 90 },
  },
  constants: {
    square: { value: 0.57, unit: "1", about: "loss of a square sharp entry", source: idelchikOblique },
    first: { value: 0.3, unit: "1", about: "factor of the cosine", source: idelchikOblique },
    second: { value: 0.2, unit: "1", about: "factor of the cosine squared", source: idelchikOblique },
  },
  steps: [
    { kind: "algebra", symbol: "c", formula: "cos(radians(angle))", unit: "1", why: "how far from square" },
    {
      kind: "algebra",
      symbol: "K",
      formula: "square + first * c + second * c * c",
      unit: "1",
      why: "the handbook's fit, in velocity heads of the tube",
    },
  ],
  valid:
    "Sharp edges, not under 20 degrees. Use it to see what an end that is left sharp costs; a rounded end is TUNNEL.INLET.",
  sources: [idelchikOblique],
  examples: [
    { given: { angle: 90 }, expect: 0.57, within: 5e-4, source: idelchikOblique },
    { given: { angle: 60 }, expect: 0.77, within: 5e-4, source: idelchikOblique },
    { given: { angle: 45 }, expect: 0.882, within: 5e-4, source: idelchikOblique },
  ],
});
