import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";

const place = { unit: "m", min: -500, max: 500 } as const;

export const thrustHold = defineFunction({
  name: "THRUST.HOLD",
  title: "Thrust that balances a push about a held point",
  args: {
    push: { unit: "N", about: "side force to be balanced", min: -1e7, max: 1e7 },
    at: { ...place, about: "where the push acts, from any one datum" },
    pivot: { ...place, about: "the point that is held, from the same datum" },
    thruster: { ...place, about: "the tunnel's axis, from the same datum" },
  },
  steps: [
    {
      kind: "require",
      holds: "thruster != pivot",
      says: "thruster: {thruster} m is the pivot itself, where no thrust turns the boat",
    },
    {
      kind: "algebra",
      symbol: "T",
      formula: "push * (at - pivot) / (thruster - pivot)",
      unit: "N",
      why: "equal moments about the held point",
    },
  ],
  valid:
    "The stern is held by a line, by engine and rudder or by a second thruster; a boat adrift still goes sideways. Below 0 the thrust is needed to the same side as the push. For the push that a thruster can balance, give its thrust as the push and change over the two places.",
  sources: [identity("Equilibrium of moments")],
  examples: [
    {
      given: { push: 825.7, at: 6, pivot: 0, thruster: 10.8 },
      expect: 458.7,
      within: 0.05,
      source: identity("825.7·6/10.8 = 458.7"),
    },
    {
      given: { push: 1514.7, at: 6, pivot: 0, thruster: 10.8 },
      expect: 841.5,
      within: 0.05,
      source: identity("1514.7·6/10.8 = 841.5"),
    },
  ],
});
