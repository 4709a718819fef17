import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { conductorResistance } from "../../tables/conductor-resistance";
import { iec60028 } from "../../tables/electrical-sources";
import { iec60228 } from "../../tables/sources";
import { alpha, metresPerKm, referenceTemperature } from "./copper";
import { nominalArea, parallel, run, temperature } from "./run-arguments";

export const conductorResistanceOfRun = defineFunction({
  name: "CONDUCTOR.RESISTANCE",
  title: "Resistance of a copper run",
  args: {
    area: nominalArea,
    run,
    temperature,
    parallel,
    class: { unit: "1", about: "2 stranded or 5 flexible", oneOf: [2, 5], otherwise: 5 },
  },
  constants: { alpha, T20: referenceTemperature, metresPerKm },
  steps: [
    {
      kind: "lookup",
      symbol: "r",
      table: conductorResistance,
      key: "area",
      column: { by: "class", of: { "2": "stranded", "5": "flexible" } },
      unit: "ohm/km",
      why: "largest resistance allowed at 20 °C",
    },
    {
      kind: "algebra",
      symbol: "R",
      formula: "r / metresPerKm * run * (1 + alpha * (temperature - T20)) / parallel",
      unit: "ohm",
      why: "length, temperature, conductors side by side",
    },
  ],
  valid:
    "Plain copper of IEC 60228, about -20 to 150 °C; tinned strands have 2 to 3 % more. A size in mm2 stands for this resistance, not for the geometry of its strands, so do not swap it for a gauge: 50 mm2 is smaller than 1/0. Joints, isolator and fuse are not included.",
  sources: [iec60228, iec60028],
  examples: [
    { given: { area: 50, run: 1000 }, expect: 0.386, within: 5e-4, source: iec60228 },
    { given: { area: 95, run: 1000, class: 2 }, expect: 0.193, within: 5e-4, source: iec60228 },
    {
      given: { area: 50, run: 10, temperature: 50, parallel: 2 },
      expect: 0.002157547,
      within: 5e-10,
      source: identity("0.386/1000·10·(1 + 0.00393·30)/2"),
    },
  ],
});
