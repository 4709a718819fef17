import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { resinVapour } from "./cautions";
import { fabric, fraction } from "./layer";

export const plyResin = defineFunction({
  name: "PLY.RESIN",
  title: "Resin held by a ply",
  args: { fabric, fraction },
  steps: [
    {
      kind: "algebra",
      symbol: "m",
      formula: "fabric * (1 - fraction) / fraction",
      unit: "g/m2",
      why: "what is not fibre is resin",
    },
  ],
  valid:
    "Resin in the laminate only: what stays in pots, rollers and peel ply comes on top. Wet-out charts agree with " +
    "the fraction of a complex surface.",
  caution: resinVapour,
  sources: [identity("Definition of the fibre fraction by mass")],
  examples: [
    {
      given: { fabric: 450, fraction: 0.3 },
      expect: 1050,
      within: 1e-9,
      source: identity("450·0.70/0.30 = 1050"),
    },
    {
      given: { fabric: 600, fraction: 0.5 },
      expect: 600,
      within: 1e-9,
      source: identity("600·0.50/0.50 = 600"),
    },
  ],
});
