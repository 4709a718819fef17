import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { portionShare } from "../../tables/laminate-sources";
import { resinHeat } from "./cautions";

export const resinPortion = defineFunction({
  name: "RESIN.PORTION",
  title: "Resin to mix at once",
  args: {
    rate: { unit: "kg/min", about: "resin that the crew lays up", min: 0, max: 10 },
    potlife: { unit: "min", about: "pot life at the temperature of the day", min: 0, max: 1440 },
    share: { unit: "1", about: "part of the pot life to count on", min: 0, max: 1, otherwise: 0.6 },
    cap: { unit: "kg", about: "most in one pot", min: 0, aboveMin: true, max: 20, otherwise: 0.5 },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "m",
      formula: "min(cap, share * rate * potlife)",
      unit: "kg",
      why: "what is used up in time, and never more than the cap",
    },
  ],
  valid: "Share and cap are habits, not data: use the resin's own sheet where it says more.",
  caution: resinHeat,
  sources: [portionShare],
  examples: [
    {
      given: { rate: 0.02, potlife: 25 },
      expect: 0.3,
      within: 1e-9,
      source: identity("0.6·0.02·25 = 0.3, below the cap of 0.5"),
    },
    {
      given: { rate: 0.05, potlife: 25 },
      expect: 0.5,
      within: 1e-9,
      source: identity("0.6·0.05·25 = 0.75, capped at 0.5"),
    },
  ],
});
