import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { hardener } from "./cautions";

export const resinHardener = defineFunction({
  name: "RESIN.HARDENER",
  title: "Hardener in a mixed portion",
  args: {
    mixed: { unit: "kg", about: "resin and hardener together", min: 0, max: 1000 },
    resinParts: { unit: "1", about: "parts of resin by mass", min: 0, aboveMin: true, max: 1000 },
    hardenerParts: { unit: "1", about: "parts of hardener by mass", min: 0, max: 1000 },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "h",
      formula: "mixed * hardenerParts / (resinParts + hardenerParts)",
      unit: "kg",
      why: "the hardener's share of all parts",
    },
  ],
  valid:
    "Parts by mass. A ratio by volume is another number: 5:1 by volume is about 5.9:1 by mass where the hardener is " +
    "lighter. Never change an epoxy's ratio to change its speed.",
  caution: hardener,
  sources: [identity("Splitting a mass by parts")],
  examples: [
    {
      given: { mixed: 0.6, resinParts: 5, hardenerParts: 1 },
      expect: 0.1,
      within: 1e-9,
      source: identity("0.6·1/6 = 0.1"),
    },
    {
      given: { mixed: 1, resinParts: 100, hardenerParts: 28 },
      expect: 0.21875,
      within: 5e-6,
      source: identity("28/128 = 0.21875"),
    },
  ],
});
