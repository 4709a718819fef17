import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { standardAtmosphere } from "../../tables/weather-sources";
import { airDensity, steadyWind, windSpeed } from "./weather";

export const windPressure = defineFunction({
  name: "WIND.PRESSURE",
  title: "Pressure of the wind",
  args: { speed: windSpeed, density: airDensity },
  steps: [
    {
      kind: "algebra",
      symbol: "q",
      formula: "density / 2 * speed * speed",
      unit: "Pa",
      why: "energy of the moving air in a volume",
    },
  ],
  valid: steadyWind,
  sources: [identity("Dynamic pressure, half density times speed squared"), standardAtmosphere],
  examples: [
    {
      given: { speed: 13.8 },
      expect: 116.64,
      within: 5e-3,
      source: identity("0.5·1.225·13.8² = 116.64, upper limit of force 6"),
    },
    {
      given: { speed: 10.2889 },
      expect: 64.84,
      within: 5e-3,
      source: identity("20 kn: 0.5·1.225·10.2889² = 64.84"),
    },
  ],
});
