import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";

export const priceMarkup = defineFunction({
  name: "PRICE.MARKUP",
  title: "Mark-up from margin",
  args: { margin: { unit: "1", about: "profit over price", min: 0, max: 0.99 } },
  steps: [
    {
      kind: "algebra",
      symbol: "u",
      formula: "margin / (1 - margin)",
      unit: "1",
      why: "profit over cost, not over price",
    },
  ],
  valid: "Shares, not per cent: a margin of a third takes a mark-up of a half.",
  sources: [identity("Cost is price less profit")],
  examples: [
    { given: { margin: 0.2 }, expect: 0.25, within: 1e-12, source: identity("0.2/0.8 = 0.25") },
    { given: { margin: 0.5 }, expect: 1, within: 1e-12, source: identity("0.5/0.5 = 1") },
  ],
});
