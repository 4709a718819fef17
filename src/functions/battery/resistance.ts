import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { saeJ537 } from "../../tables/electrical-sources";
import { liveCaution } from "../conductor/cautions";

export const batteryResistance = defineFunction({
  name: "BATTERY.RESISTANCE",
  title: "Inner resistance of a cold battery, from its cranking current",
  args: {
    cranking: { unit: "A", about: "cold cranking current", min: 0, aboveMin: true, max: 10000 },
    cells: { unit: "1", about: "cells in series", whole: true, min: 1, max: 200, otherwise: 6 },
    rest: { unit: "V", about: "of a cell at rest", min: 0.5, max: 4.5, otherwise: 2.1 },
    end: { unit: "V", about: "of a cell at the end of the cranking test", min: 0, max: 4.5, otherwise: 1.2 },
  },
  steps: [
    {
      kind: "require",
      holds: "rest > end",
      says: "end: {end} V is not below the {rest} V of a cell at rest",
    },
    {
      kind: "algebra",
      symbol: "R",
      formula: "cells * (rest - end) / cranking",
      unit: "ohm",
      why: "what the cells lose in the test, over its current",
    },
  ],
  valid:
    "An estimate, ±30 %, for -18 °C and 30 s by the test of SAE J537; other cranking ratings end at other voltages. Take it as it stands for sag and for the least fault current; warm, the resistance is about 0.4 of it, which is the case for breaking capacity. A measured resistance of the bank is better than either.",
  caution: liveCaution,
  sources: [saeJ537],
  examples: [
    { given: { cranking: 650 }, expect: 0.00831, within: 5e-6, source: identity("6·(2.1 - 1.2)/650") },
    { given: { cranking: 800 }, expect: 0.00675, within: 5e-9, source: identity("5.4/800") },
    { given: { cranking: 1000 }, expect: 0.0054, within: 5e-9, source: identity("5.4/1000") },
  ],
});
