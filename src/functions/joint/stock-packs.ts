import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";

export const stockPacks = defineFunction({
  name: "STOCK.PACKS",
  title: "Packs to order",
  args: {
    net: { unit: "any", about: "quantity in the work", min: 0 },
    waste: { unit: "1", about: "waste on top, as a share", min: 0, max: 2 },
    pack: { unit: "any", about: "quantity in one pack, in the same unit", min: 0, aboveMin: true },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "n",
      formula: "ceil(net * (1 + waste) / pack - 1e-9)",
      unit: "1",
      why: "with waste, rounded up to whole packs",
    },
  ],
  valid: "Waste is the yard's own figure: no published one was found. Quantity and pack must be in one unit.",
  sources: [identity("Rounding up to whole packs")],
  examples: [
    {
      given: { net: 7.4, waste: 0.15, pack: 5 },
      expect: 2,
      within: 0,
      source: identity("7.4·1.15/5 = 1.702, up to 2"),
    },
    { given: { net: 10, waste: 0.1, pack: 1.1 }, expect: 10, within: 0, source: identity("10·1.1/1.1 = 10") },
  ],
});
