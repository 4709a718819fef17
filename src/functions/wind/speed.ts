import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { blendermann } from "../../tables/weather-sources";
import { airDensity, lateralArea, sideCoefficient, steadyWind } from "./weather";

export const windSpeedHeld = defineFunction({
  name: "WIND.SPEED",
  title: "Beam wind that makes a given push",
  args: {
    push: { unit: "N", about: "side force of the wind", min: 0, max: 1e7 },
    area: { ...lateralArea, aboveMin: true },
    coefficient: sideCoefficient,
    density: airDensity,
  },
  steps: [
    {
      kind: "algebra",
      symbol: "V",
      formula: "sqrt(2 * push / (density * coefficient * area))",
      unit: "m/s",
      why: "WIND.PUSH turned round",
    },
  ],
  valid: `${steadyWind} With the push that a thruster can balance (THRUST.HOLD with the places of push and thruster changed over) it is the wind that the boat can be held in.`,
  sources: [identity("Dynamic pressure solved for the speed"), blendermann],
  examples: [
    {
      given: { push: 1514.7, area: 24 },
      expect: 10.7,
      within: 5e-4,
      source: identity("sqrt(2·1514.7/(1.225·0.9·24)) = 10.700"),
    },
  ],
});
