import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { commonCause } from "../../tables/estimate-sources";

export const hoursJoin = defineFunction({
  name: "HOURS.JOIN",
  title: "Spread of a sum of lines",
  args: {
    spreads: { kind: "range", unit: "h", about: "spread of each line", min: 0 },
    common: {
      unit: "1",
      about: "how far all lines move together: 0 not at all, 1 fully",
      min: 0,
      max: 1,
      otherwise: 0.2,
    },
  },
  steps: [
    {
      kind: "total",
      symbol: "squares",
      over: "spreads",
      each: "s",
      term: "s * s",
      unit: "h2",
      why: "lines by themselves",
    },
    { kind: "total", symbol: "all", over: "spreads", each: "one", term: "one", unit: "h", why: "lines in step" },
    {
      kind: "algebra",
      symbol: "joint",
      formula: "sqrt((1 - common) * squares + common * all * all)",
      unit: "h",
      why: "variance of a sum whose every pair has this correlation",
    },
  ],
  valid:
    "One correlation for every pair. Poor access moves all labour lines together: left at 0, nine equal lines look a " +
    "third narrower than at 0.2. The default is a choice, not a measurement.",
  sources: [identity("Variance of a sum: (1 − ρ)Σs² + ρ(Σs)²"), commonCause],
  examples: [
    {
      given: { spreads: [3, 4], common: 0 },
      expect: 5,
      within: 1e-12,
      source: identity("√(9 + 16) = 5"),
    },
    {
      given: { spreads: [3, 4], common: 1 },
      expect: 7,
      within: 1e-12,
      source: identity("3 + 4 = 7"),
    },
    {
      given: { spreads: [1, 1, 1, 1, 1, 1, 1, 1, 1], common: 0.2 },
      expect: 4.8374,
      within: 5e-5,
      source: identity("√(0.8·9 + 0.2·81) = 4.8374"),
    },
  ],
});
