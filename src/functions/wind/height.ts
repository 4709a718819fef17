import { defineFunction } from "../../formula/define";
import { windProfile } from "../../tables/weather-sources";

export const windHeight = defineFunction({
  name: "WIND.HEIGHT",
  title: "Wind pressure at a height against that at 10 m",
  args: {
    height: { unit: "m", about: "centroid of the area above water", min: 0.3, max: 100 },
  },
  constants: {
    rise: { value: 0.127, unit: "1", about: "factor of the logarithm", source: windProfile },
    level: { value: 0.772, unit: "1", about: "share of the wind at 1 m", source: windProfile },
    metre: { value: 1, unit: "m", about: "the rule counts heights in m", source: windProfile },
    forecast: { value: 10, unit: "m", about: "height of the forecast wind", source: windProfile },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "v",
      formula: "(rise * ln(height / metre) + level) / (rise * ln(forecast / metre) + level)",
      unit: "1",
      why: "wind at the height against the wind at 10 m",
    },
    { kind: "algebra", symbol: "k", formula: "v * v", unit: "1", why: "pressure goes with the square" },
  ],
  valid:
    "Open water and a forecast wind. For a wind measured on deck no reduction is due. A 1/7-power profile stays within 3.4 % of it from 0.5 to 10 m.",
  sources: [windProfile],
  examples: [
    { given: { height: 0.5 }, expect: 0.4129, within: 5e-5, source: windProfile },
    { given: { height: 1 }, expect: 0.526, within: 5e-5, source: windProfile },
    { given: { height: 2 }, expect: 0.6528, within: 5e-5, source: windProfile },
    { given: { height: 10 }, expect: 1, within: 1e-12, source: windProfile },
  ],
});
