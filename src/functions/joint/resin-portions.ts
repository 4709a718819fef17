import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";

export const resinPortions = defineFunction({
  name: "RESIN.PORTIONS",
  title: "Pots to mix",
  args: {
    total: { unit: "kg", about: "resin of the joint", min: 0, max: 10000 },
    portion: { unit: "kg", about: "resin in one pot", min: 0, aboveMin: true, max: 100 },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "n",
      formula: "ceil(total / portion - 1e-9)",
      unit: "1",
      why: "rounded up; a billionth is taken off so that twelve pots of a twelfth are twelve",
    },
  ],
  valid: "Equal pots. Pots of different plies do not share a rest.",
  sources: [identity("Rounding up to whole pots")],
  examples: [
    { given: { total: 3.6, portion: 0.3 }, expect: 12, within: 0, source: identity("3.6/0.3 = 12") },
    { given: { total: 3.61, portion: 0.3 }, expect: 13, within: 0, source: identity("3.61/0.3 = 12.03, up to 13") },
  ],
});
