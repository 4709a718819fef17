import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { pert } from "../../tables/estimate-sources";
import { high, inOrder, likely, low } from "./three-point";

export const hoursMean = defineFunction({
  name: "HOURS.MEAN",
  title: "Mean of a three-point estimate",
  args: { low, likely, high },
  steps: [
    inOrder,
    {
      kind: "algebra",
      symbol: "m",
      formula: "(low + 4 * likely + high) / 6",
      unit: "h",
      why: "the likely value counts four times",
    },
  ],
  valid: "Sum the means, not the likely values: those add up too low where a line can go more wrong than right.",
  sources: [pert],
  examples: [
    { given: { low: 5, likely: 8, high: 17 }, expect: 9, within: 5e-5, source: pert },
    {
      given: { low: 2, likely: 3, high: 5 },
      expect: 3.16667,
      within: 5e-6,
      source: identity("(2 + 12 + 5)/6 = 3.16667"),
    },
  ],
});
