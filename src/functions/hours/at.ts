import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { pert, wichura } from "../../tables/estimate-sources";
import { normalQuantile } from "../../tables/normal-quantile";
import { mean, spread } from "./three-point";

export const hoursAt = defineFunction({
  name: "HOURS.AT",
  title: "Hours that hold in a share of cases",
  args: {
    mean,
    spread,
    share: { unit: "1", about: "share of cases in which they are enough", min: 0.001, max: 0.999 },
  },
  constants: normalQuantile,
  steps: [
    { kind: "algebra", symbol: "q", formula: "share - 0.5", unit: "1", why: "distance from the middle" },
    { kind: "algebra", symbol: "m", formula: "square - q * q", unit: "1", why: "variable of the middle" },
    {
      kind: "algebra",
      symbol: "t",
      formula: "sqrt(-ln(min(share, 1 - share))) - shift",
      unit: "1",
      why: "variable of the tail",
    },
    {
      kind: "algebra",
      symbol: "a",
      formula: "((((((a7 * m + a6) * m + a5) * m + a4) * m + a3) * m + a2) * m + a1) * m + a0",
      unit: "1",
      why: "middle, above the line",
    },
    {
      kind: "algebra",
      symbol: "b",
      formula: "((((((b7 * m + b6) * m + b5) * m + b4) * m + b3) * m + b2) * m + b1) * m + 1",
      unit: "1",
      why: "middle, below the line",
    },
    {
      kind: "algebra",
      symbol: "c",
      formula: "((((((c7 * t + c6) * t + c5) * t + c4) * t + c3) * t + c2) * t + c1) * t + c0",
      unit: "1",
      why: "tail, above the line",
    },
    {
      kind: "algebra",
      symbol: "d",
      formula: "((((((d7 * t + d6) * t + d5) * t + d4) * t + d3) * t + d2) * t + d1) * t + 1",
      unit: "1",
      why: "tail, below the line",
    },
    {
      kind: "algebra",
      symbol: "z",
      formula: "abs(q) <= reach ? q * a / b : (q < 0 ? -(c / d) : c / d)",
      unit: "1",
      why: "standard normal quantile; the low tail mirrors the high one",
    },
    { kind: "algebra", symbol: "h", formula: "mean + spread * z", unit: "h", why: "so many spreads from the mean" },
  ],
  valid:
    "Sums of many lines, which come out nearly normal; a single lopsided line does not. A low share of a wide spread " +
    "may fall below 0: then the estimate is too rough for it.",
  sources: [wichura, identity("Mean and so many standard deviations")],
  examples: [
    {
      given: { mean: 24, spread: Math.sqrt(5), share: 0.9632 },
      expect: 28,
      within: 1.4e-3,
      source: {
        ...pert,
        note: "P(T ≤ 28) = 0.9632 for mean 24 and variance 5; half a unit of its last digit is 0.0014 weeks",
      },
    },
    {
      given: { mean: 21, spread: 2, share: 0.95 },
      expect: 24.29,
      within: 5e-3,
      source: identity("21 + 2·1.6449 = 24.29"),
    },
    {
      given: { mean: 0, spread: 1, share: 0.975 },
      expect: 1.959963984540054,
      within: 1e-14,
      source: identity("erf(1.959963984540054/√2) = 0.95"),
    },
  ],
});
