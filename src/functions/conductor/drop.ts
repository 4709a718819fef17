import { defineFunction } from "../../formula/define";
import { conductorResistance } from "../../tables/conductor-resistance";
import { iec60228 } from "../../tables/sources";

export const conductorDrop = defineFunction({
  name: "CONDUCTOR.DROP",
  title: "Voltage lost in a copper run",
  args: {
    current: { unit: "A", about: "current while running", min: 0, max: 5000 },
    run: { unit: "m", about: "conductor length out and back", min: 0, max: 500 },
    area: { unit: "mm2", about: "nominal size" },
    temperature: { unit: "degC", about: "conductor", min: -40, max: 150, otherwise: 20 },
    parallel: { unit: "1", about: "conductors side by side", whole: true, min: 1, max: 8, otherwise: 1 },
  },
  constants: {
    alpha: { value: 0.00393, unit: "1/K", about: "copper", source: iec60228 },
    T20: { value: 20, unit: "degC", about: "table temperature", source: iec60228 },
    metresPerKm: { value: 1000, unit: "1", about: "m in a km", source: iec60228 },
  },
  steps: [
    {
      kind: "lookup",
      symbol: "r",
      table: conductorResistance,
      key: "area",
      column: "5",
      unit: "ohm/km",
      why: "largest resistance allowed at 20 °C",
    },
    {
      kind: "algebra",
      symbol: "R",
      formula: "r / metresPerKm * run * (1 + alpha * (temperature - T20)) / parallel",
      unit: "ohm",
      why: "length, temperature, legs",
    },
    { kind: "algebra", symbol: "U", formula: "R * current", unit: "V", why: "Ohm's law" },
  ],
  valid: "plain copper; joints, isolator and fuse not included",
  sources: [iec60228],
  examples: [{ given: { current: 300, run: 10, area: 50 }, expect: 1.158, within: 5e-4, source: iec60228 }],
});
