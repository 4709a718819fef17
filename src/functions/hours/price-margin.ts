import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";

export const priceMargin = defineFunction({
  name: "PRICE.MARGIN",
  title: "Margin from mark-up",
  args: { markup: { unit: "1", about: "profit over cost", min: 0, max: 1000 } },
  steps: [
    {
      kind: "algebra",
      symbol: "g",
      formula: "markup / (1 + markup)",
      unit: "1",
      why: "profit over price, not over cost",
    },
  ],
  valid: "Shares, not per cent: 0.25 is a quarter.",
  sources: [identity("Price is cost and profit")],
  examples: [
    { given: { markup: 0.25 }, expect: 0.2, within: 1e-12, source: identity("0.25/1.25 = 0.2") },
    { given: { markup: 1 }, expect: 0.5, within: 1e-12, source: identity("1/2 = 0.5") },
  ],
});
