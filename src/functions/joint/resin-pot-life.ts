import { defineFunction } from "../../formula/define";
import { amineCure } from "../../tables/laminate-sources";
import { resinHeat } from "./cautions";

export const resinPotLife = defineFunction({
  name: "RESIN.POTLIFE",
  title: "Pot life at the temperature of the day",
  args: {
    minutes: { unit: "min", about: "pot life at 25 °C", min: 0, aboveMin: true, max: 1440 },
    temperature: { unit: "degC", about: "resin and air", min: 10, max: 35 },
  },
  constants: {
    T25: { value: 25, unit: "degC", about: "temperature of the data sheet", source: amineCure },
    perDoubling: { value: 10, unit: "K", about: "rise that halves the pot life", source: amineCure },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "t",
      formula: "minutes * 2 ^ ((T25 - temperature) / perDoubling)",
      unit: "min",
      why: "twice as long for each 10 °C below, half for each 10 °C above",
    },
  ],
  valid:
    "10 to 35 °C, the mass that the data sheet names (often 100 g): a larger pot goes off sooner and no general law " +
    "says how much. US Army TM 1-1500-204-23-11 halves the stated time above 32 °C, which is stricter.",
  caution: resinHeat,
  sources: [amineCure],
  examples: [
    { given: { minutes: 20, temperature: 15 }, expect: 40, within: 1e-9, source: amineCure },
    { given: { minutes: 20, temperature: 35 }, expect: 10, within: 1e-9, source: amineCure },
  ],
});
