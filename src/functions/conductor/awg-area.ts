import { defineFunction } from "../../formula/define";
import { awgGauges } from "../../tables/awg-gauges";
import { astmB258 } from "../../tables/electrical-sources";
import { gaugeRatio, gaugesBetween, smallestDiameter, smallestNumber } from "./gauge";

const gauges = awgGauges.rows.map(([gauge]) => String(gauge)).reverse();

export const awgArea = defineFunction({
  name: "AWG.AREA",
  title: "Cross-section of a gauge",
  args: { gauge: { kind: "key", about: "American wire gauge, 4/0 to 18", keys: gauges } },
  constants: { d36: smallestDiameter, n36: smallestNumber, ratio: gaugeRatio, between: gaugesBetween },
  steps: [
    {
      kind: "lookup",
      symbol: "n",
      table: awgGauges,
      key: "gauge",
      column: "number",
      unit: "1",
      why: "1/0 counts as 0, 4/0 as -3",
    },
    {
      kind: "algebra",
      symbol: "d",
      formula: "d36 * ratio ^ ((n36 - n) / between)",
      unit: "mm",
      why: "diameters grow in a constant ratio",
    },
    { kind: "algebra", symbol: "A", formula: "pi / 4 * d * d", unit: "mm2", why: "area of the circle" },
  ],
  valid:
    'Nominal area of the solid gauge. Type 4/0 with quotation marks in a formula ("4/0"), or it is a division. "1/0" on a boat cable may be 6 % less than this: the least area of stranded boat wire is 3 to 11 % below nominal. A metric size is no substitute: 50 mm2 is smaller than 1/0, 35 larger than 2.',
  sources: [astmB258],
  examples: [
    { given: { gauge: "4/0" }, expect: 107.22, within: 5e-3, source: astmB258 },
    { given: { gauge: "1/0" }, expect: 53.475, within: 5e-4, source: astmB258 },
    { given: { gauge: "2" }, expect: 33.631, within: 5e-4, source: astmB258 },
    { given: { gauge: "18" }, expect: 0.823, within: 5e-4, source: astmB258 },
  ],
});
