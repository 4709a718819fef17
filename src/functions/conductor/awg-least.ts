import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { boatGauges } from "../../tables/boat-gauges";
import { astmB258, cfr183Table5 } from "../../tables/electrical-sources";
import { gaugeRatio, gaugesBetween, smallestDiameter, smallestNumber } from "./gauge";

export const awgLeast = defineFunction({
  name: "AWG.LEAST",
  title: "Smallest gauge that has an area",
  args: { area: { unit: "mm2", about: "cross-section that is needed", min: 0, aboveMin: true, max: 1000 } },
  constants: { d36: smallestDiameter, n36: smallestNumber, ratio: gaugeRatio, between: gaugesBetween },
  steps: [
    {
      kind: "first",
      symbol: "size",
      table: boatGauges,
      where: "pi / 4 * (d36 * ratio ^ ((n36 - number) / between)) * (d36 * ratio ^ ((n36 - number) / between)) >= area",
      take: "gauge",
      none: "area: above 4/0 (107.2 mm2), the largest gauge of 33 CFR 183.425 table 5; take legs side by side or a metric size",
      unit: "text",
      why: "first gauge of 33 CFR 183.425 table 5 whose nominal area is not below it",
    },
  ],
  valid:
    "Gauges 18 to 4/0 that 33 CFR 183.425 table 5 lists, by nominal area. A metric size and the gauge next to it are different cables: the gauge for 50 mm2 is 1/0, that for 35 mm2 is 1.",
  sources: [astmB258, cfr183Table5],
  examples: [
    { given: { area: 50 }, expect: "1/0", within: 0, source: identity("1 AWG has 42.41 mm2, 1/0 53.48 mm2") },
    { given: { area: 33.6 }, expect: "2", within: 0, source: identity("3 AWG has 26.67 mm2, 2 AWG 33.63 mm2") },
    { given: { area: 107 }, expect: "4/0", within: 0, source: identity("3/0 has 85.03 mm2, 4/0 107.22 mm2") },
  ],
});
