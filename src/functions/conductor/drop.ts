import { defineFunction } from "../../formula/define";
import type { Source } from "../../formula/source";
import { identity } from "../../formula/source";
import { conductorResistance } from "../../tables/conductor-resistance";
import { iec60028 } from "../../tables/electrical-sources";
import { iec60228 } from "../../tables/sources";
import { alpha, metresPerKm, referenceTemperature } from "./copper";
import { current, nominalArea, parallel, run, temperature } from "./run-arguments";

const handbook: Source = {
  evidence: "published",
  title: "Electric Cables Handbook",
  clause: "table A9.2, plain copper 95 mm2, 10 m",
  edition: "3rd edition",
};

export const conductorDrop = defineFunction({
  name: "CONDUCTOR.DROP",
  title: "Voltage lost in a copper run",
  args: { current, run, area: nominalArea, temperature, parallel },
  constants: { alpha, T20: referenceTemperature, metresPerKm },
  steps: [
    {
      kind: "lookup",
      symbol: "r",
      table: conductorResistance,
      key: "area",
      column: "flexible",
      unit: "ohm/km",
      why: "largest resistance allowed at 20 °C, class 5",
    },
    {
      kind: "algebra",
      symbol: "R",
      formula: "r / metresPerKm * run * (1 + alpha * (temperature - T20)) / parallel",
      unit: "ohm",
      why: "length, temperature, conductors side by side",
    },
    { kind: "algebra", symbol: "U", formula: "R * current", unit: "V", why: "Ohm's law" },
  ],
  valid:
    "Flexible plain copper (class 5); joints, isolator and fuse not included. Constants in circulation (0.0164 ohm mm2/m, 10.75 ohm circular mil/ft) stand for cool solid wire and promise less than a real cable loses; the 3 % wire lists for 12 V break even their own formula in 10 of 98 places, each time too thin.",
  sources: [iec60228, iec60028],
  examples: [
    { given: { current: 100, run: 10, area: 95 }, expect: 0.21, within: 5e-3, source: handbook },
    { given: { current: 100, run: 10, area: 95, temperature: 60 }, expect: 0.24, within: 5e-3, source: handbook },
    { given: { current: 100, run: 10, area: 95, temperature: 85 }, expect: 0.26, within: 5e-3, source: handbook },
    {
      given: { current: 300, run: 10, area: 50 },
      expect: 1.158,
      within: 5e-4,
      source: identity("300 A × 0.386 ohm/km × 10 m"),
    },
    {
      given: { current: 300, run: 10, area: 50, temperature: 50 },
      expect: 1.295,
      within: 5e-4,
      source: identity("1.158 V × (1 + 0.00393·30)"),
    },
  ],
});
