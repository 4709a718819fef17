import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { diameter, entrance, flare, halfBreadth } from "./bore";

export const tunnelStock = defineFunction({
  name: "TUNNEL.STOCK",
  title: "Length of tube to order",
  args: {
    halfBreadth,
    diameter,
    entrance,
    flare,
    allowance: { unit: "mm", about: "left standing at each end for trimming", min: 0, max: 1000, otherwise: 0 },
  },
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
      symbol: "L",
      formula: "2 * (halfBreadth + diameter / 2 * G + allowance)",
      unit: "mm",
      why: "the longest line on the tube, both sides",
    },
  ],
  valid: "A flat skin at the tunnel and a tube square to the centreplane. Use the outer diameter.",
  sources: [identity("A plane cut by a cylinder")],
  examples: [
    {
      given: { halfBreadth: 400, diameter: 185, entrance: 20, flare: 15 },
      expect: 883.6133,
      within: 5e-5,
      source: identity("2·(400 + 92.5·0.451963) = 883.6133"),
    },
    {
      given: { halfBreadth: 400, diameter: 185, entrance: 45, flare: 0, allowance: 10 },
      expect: 1005,
      within: 1e-9,
      source: identity("2·(400 + 92.5 + 10) = 1005"),
    },
  ],
});
