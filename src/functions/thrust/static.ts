import { defineFunction } from "../../formula/define";
import { commonPractice, identity } from "../../formula/source";
import { mm2PerM2 } from "../../tables/metre";
import { seaDensity } from "../tunnel/bore";
import { bore, hub, jetCaution, power } from "./propeller";

export const thrustStatic = defineFunction({
  name: "THRUST.STATIC",
  title: "Thrust at rest from shaft power and the tunnel's losses",
  args: {
    power,
    diameter: bore,
    loss: { unit: "1", about: "all losses of the tunnel, from TUNNEL.LOSS", min: 1, max: 6 },
    efficiency: { unit: "1", about: "of the propeller as a pump", min: 0.1, max: 1, otherwise: 0.6 },
    hub: { ...hub, otherwise: 0.3 },
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
      symbol: "P",
      formula: "efficiency * power / loss",
      unit: "W",
      why: "power that is left in the jet",
    },
    {
      kind: "algebra",
      symbol: "T",
      formula: "(4 * density * A * P * P)^(1 / 3)",
      unit: "N",
      why: "momentum of that jet",
    },
  ],
  valid:
    "At rest, to judge whether a stated thrust is plausible. Part of it acts on the hull around the inlet, so rough or hidden inlets cost thrust even with the same motor. With headway the hull loses side force, the motor's load hardly changes.",
  caution: jetCaution,
  sources: [
    identity("Momentum theory with losses counted in velocity heads of the tube"),
    commonPractice("pump efficiency 0.6 of a small tunnel unit"),
  ],
  examples: [
    {
      given: { power: 3000, diameter: 185, loss: 1.575 },
      expect: 508,
      within: 0.5,
      source: identity("sharp edge: 1 + 0.5 + 0.015·5 = 1.575, (4·1025·0.024461·(1800/1.575)²)^(1/3) = 508"),
    },
    {
      given: { power: 3000, diameter: 185, loss: 1.27 },
      expect: 586,
      within: 0.5,
      source: identity("edge of 10 % of the radius: 1 + 0.195 + 0.075 = 1.27, 586"),
    },
    {
      given: { power: 3000, diameter: 185, loss: 1.165 },
      expect: 621,
      within: 0.5,
      source: identity("edge of 10 % of the diameter: 1 + 0.09 + 0.075 = 1.165, 621"),
    },
  ],
});
