import { defineFunction } from "../../formula/define";
import { ittcWater } from "../../tables/hydraulics-sources";
import { seaViscosity } from "../../tables/sea-viscosity";

export const waterViscosity = defineFunction({
  name: "WATER.VISCOSITY",
  title: "Kinematic viscosity of sea water",
  args: {
    temperature: { unit: "degC", about: "water temperature", min: 1, max: 30 },
  },
  steps: [
    {
      kind: "between",
      symbol: "nu",
      points: { table: seaViscosity, column: "viscosity" },
      at: "temperature",
      unit: "m2/s",
      why: "straight line between whole degrees",
    },
  ],
  valid: "Sea water of 35.16504 g/kg at one atmosphere; fresh water is about 4 % thinner.",
  sources: [ittcWater],
  examples: [
    { given: { temperature: 15 }, expect: 1.1892e-6, within: 5e-11, source: ittcWater },
    { given: { temperature: 5 }, expect: 1.5762e-6, within: 5e-11, source: ittcWater },
    { given: { temperature: 30 }, expect: 8.4253e-7, within: 5e-12, source: ittcWater },
  ],
});
