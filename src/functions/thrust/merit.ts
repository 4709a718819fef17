import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { mm2PerM2 } from "../../tables/metre";
import { seaDensity } from "../tunnel/bore";
import { bore, power, thrust } from "./propeller";

export const thrustMerit = defineFunction({
  name: "THRUST.MERIT",
  title: "Merit of a stated thrust",
  args: { thrust, power, diameter: bore, density: seaDensity },
  constants: { mm2PerM2 },
  steps: [
    {
      kind: "algebra",
      symbol: "A",
      formula: "pi * diameter * diameter / 4 / mm2PerM2",
      unit: "m2",
      why: "bore of the tunnel, hub not taken off",
    },
    {
      kind: "algebra",
      symbol: "C",
      formula: "thrust * sqrt(thrust) / (power * sqrt(density * A))",
      unit: "1",
      why: "thrust to the power 3/2 over power and bore",
    },
  ],
  valid:
    "An ideal tunnel has 2, an ideal open propeller 1.414; a real tunnel unit stays well below. Where a statement comes near 2, ask which power and which thrust were meant.",
  sources: [identity("Momentum theory: 2·sqrt(jet over disc area) without loss")],
  examples: [
    {
      given: { thrust: 997.29, power: 3000, diameter: 185 },
      expect: 2,
      within: 5e-5,
      source: identity("997.29^1.5/(3000·sqrt(1025·0.0268803)) = 2.0000"),
    },
    {
      given: { thrust: 628.25, power: 3000, diameter: 185 },
      expect: 1,
      within: 5e-5,
      source: identity("628.25^1.5/(3000·sqrt(1025·0.0268803)) = 1.0000"),
    },
  ],
});
