import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { blendermann } from "../../tables/weather-sources";
import { airDensity, lateralArea, sideCoefficient, steadyWind, windSpeed } from "./weather";

export const windPush = defineFunction({
  name: "WIND.PUSH",
  title: "Side force of a beam wind",
  args: { area: lateralArea, speed: windSpeed, coefficient: sideCoefficient, density: airDensity },
  steps: [
    {
      kind: "algebra",
      symbol: "q",
      formula: "density / 2 * speed * speed",
      unit: "Pa",
      why: "pressure of the wind",
    },
    {
      kind: "algebra",
      symbol: "F",
      formula: "q * coefficient * area",
      unit: "N",
      why: "on the lateral area",
    },
  ],
  valid: `${steadyWind} Published coefficients for a beam wind run from 0.77 to 1.22; 0.90 is that of a speed boat.`,
  sources: [identity("Force is pressure times coefficient times area"), blendermann],
  examples: [
    {
      given: { area: 24, speed: 10.7 },
      expect: 1514.7,
      within: 0.05,
      source: identity("0.9·24·70.13 = 1514.7, upper limit of force 5"),
    },
    {
      given: { area: 14, speed: 17, coefficient: 1.2 / 1.225 },
      expect: 2427.6,
      within: 0.05,
      source: {
        evidence: "published",
        title: "ISO 12217-1, wind heeling moment 0.3·A·(A/L + T)·v² over its arm",
        clause: "6.3.2, filled worksheet: 14 m2, 17 m/s",
        note: "worksheet of the 2002 kind; as a side force its coefficient is 1.2/1.225",
      },
    },
  ],
});
