import { defineFunction } from "../../formula/define";
import { standardAtmosphere } from "../../tables/weather-sources";

export const airDensityAt = defineFunction({
  name: "AIR.DENSITY",
  title: "Density of dry air",
  args: {
    temperature: { unit: "degC", about: "air temperature", min: -60, max: 60 },
    pressure: { unit: "Pa", about: "air pressure", min: 50000, max: 110000, otherwise: 101325 },
  },
  constants: {
    zero: { value: -273.15, unit: "degC", about: "absolute zero", source: standardAtmosphere },
    R: { value: 287.05287, unit: "J/(kg K)", about: "gas constant of dry air", source: standardAtmosphere },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "rho",
      formula: "pressure / (R * (temperature - zero))",
      unit: "kg/m3",
      why: "gas law",
    },
  ],
  valid: "Dry air; moisture makes it lighter by up to 2 % in the tropics.",
  sources: [standardAtmosphere],
  examples: [
    { given: { temperature: 15 }, expect: 1.225, within: 5e-6, source: standardAtmosphere },
    { given: { temperature: 0 }, expect: 1.29227, within: 5e-6, source: standardAtmosphere },
    { given: { temperature: 30 }, expect: 1.16439, within: 5e-6, source: standardAtmosphere },
  ],
});
