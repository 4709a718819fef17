import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { liveCaution } from "../conductor/cautions";

const rule = identity("resistances in series add, their inverses in parallel add");

export const batteryBank = defineFunction({
  name: "BATTERY.BANK",
  title: "Inner resistance of a bank of equal batteries",
  args: {
    resistance: { unit: "ohm", about: "of one battery", min: 0, max: 100 },
    series: { unit: "1", about: "batteries in a string", whole: true, min: 1, max: 200, otherwise: 1 },
    parallel: { unit: "1", about: "strings side by side", whole: true, min: 1, max: 100, otherwise: 1 },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "R",
      formula: "resistance * series / parallel",
      unit: "ohm",
      why: "strings add, strings side by side share",
    },
  ],
  valid:
    "Equal batteries of equal age and charge. Strings side by side add their fault currents, batteries in series do not. The links between the batteries are not included.",
  caution: liveCaution,
  sources: [rule],
  examples: [
    { given: { resistance: 0.0005, series: 110 }, expect: 0.055, within: 1e-12, source: identity("110 × 0.5 mohm") },
    {
      given: { resistance: 0.00675, series: 2, parallel: 2 },
      expect: 0.00675,
      within: 1e-12,
      source: identity("6.75 mohm × 2/2"),
    },
  ],
});
