import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { pert } from "../../tables/estimate-sources";
import { high, inOrder, likely, low } from "./three-point";

export const hoursSpread = defineFunction({
  name: "HOURS.SPREAD",
  title: "Spread of a three-point estimate",
  args: { low, likely, high },
  steps: [
    inOrder,
    {
      kind: "algebra",
      symbol: "s",
      formula: "(high - low) / 6",
      unit: "h",
      why: "three standard deviations on each side",
    },
  ],
  valid: "A standard deviation. A simulation with the same three numbers gives a slightly larger one.",
  sources: [pert],
  examples: [
    { given: { low: 5, likely: 8, high: 17 }, expect: 2, within: 5e-5, source: pert },
    {
      given: { low: 3, likely: 5, high: 7 },
      expect: 0.66667,
      within: 5e-6,
      source: identity("(7 − 3)/6 = 0.66667, whose square is 0.4444"),
    },
  ],
});
