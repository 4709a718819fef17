import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { mm2PerM2 } from "../../tables/metre";
import { seaDensity } from "../tunnel/bore";
import { bore, hub, jetCaution, power } from "./propeller";

export const thrustIdeal = defineFunction({
  name: "THRUST.IDEAL",
  title: "Most thrust that a power can make in a tunnel",
  args: {
    power: { ...power, about: "power given to the water" },
    diameter: bore,
    jet: {
      unit: "1",
      about: "jet over disc area: 1 straight tunnel, 0.5 open propeller",
      min: 0.5,
      max: 1,
      otherwise: 1,
    },
    hub,
    density: seaDensity,
  },
  constants: { mm2PerM2 },
  steps: [
    {
      kind: "algebra",
      symbol: "A",
      formula: "pi * diameter * diameter / 4 * (1 - hub * hub) / mm2PerM2",
      unit: "m2",
      why: "disc less hub",
    },
    {
      kind: "algebra",
      symbol: "T",
      formula: "(4 * jet * density * A * power * power)^(1 / 3)",
      unit: "N",
      why: "momentum and energy of the jet, speed taken out between them",
    },
  ],
  valid:
    "An upper bound without any loss; a real small tunnel unit makes about half of it. Thrust goes with (power·diameter)^(2/3): never carry a large ship's newtons per kilowatt to a small tunnel.",
  caution: jetCaution,
  sources: [identity("Momentum theory of a propeller at zero speed")],
  examples: [
    {
      given: { power: 3000, diameter: 185 },
      expect: 997.29,
      within: 5e-3,
      source: identity("(4·1025·0.0268803·3000²)^(1/3) = 997.29"),
    },
    {
      given: { power: 3000, diameter: 185, jet: 0.5 },
      expect: 791.55,
      within: 5e-3,
      source: identity("(2·1025·0.0268803·3000²)^(1/3) = 791.55"),
    },
  ],
});
