import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { mm2PerM2 } from "../../tables/metre";
import { seaDensity } from "../tunnel/bore";
import { bore, hub, jetCaution, thrust } from "./propeller";

export const jetSpeed = defineFunction({
  name: "JET.SPEED",
  title: "Speed of the water in the tunnel",
  args: { thrust, diameter: bore, hub, density: seaDensity },
  constants: { mm2PerM2 },
  steps: [
    {
      kind: "algebra",
      symbol: "A",
      formula: "pi * diameter * diameter / 4 * (1 - hub * hub) / mm2PerM2",
      unit: "m2",
      why: "section of the jet",
    },
    {
      kind: "algebra",
      symbol: "U",
      formula: "sqrt(thrust / (density * A))",
      unit: "m/s",
      why: "thrust is the momentum that the jet carries away",
    },
  ],
  valid:
    "At rest, evenly spread jet. Boat speed over this speed tells how much headway weakens the thruster: at about 0.2 one ship model had lost half its turning moment.",
  caution: jetCaution,
  sources: [identity("Momentum of a jet")],
  examples: [
    {
      given: { thrust: 997.29, diameter: 185 },
      expect: 6.0163,
      within: 5e-5,
      source: identity("sqrt(997.29/(1025·0.0268803)) = 6.0163, also 2·3000/997.29"),
    },
  ],
});
