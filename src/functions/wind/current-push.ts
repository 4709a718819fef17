import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { hoerner } from "../../tables/weather-sources";
import { seaDensity } from "../tunnel/bore";

export const currentPush = defineFunction({
  name: "CURRENT.PUSH",
  title: "Side force of a beam current",
  args: {
    length: { unit: "m", about: "waterline length", min: 0, aboveMin: true, max: 500 },
    draught: { unit: "m", about: "mean draught of the hull body", min: 0, aboveMin: true, max: 30 },
    speed: { unit: "m/s", about: "current across the boat", min: 0, max: 3 },
    coefficient: { unit: "1", about: "cross-flow drag, from CURRENT.COEFFICIENT", min: 0.2, max: 4 },
    density: seaDensity,
  },
  steps: [
    {
      kind: "algebra",
      symbol: "F",
      formula: "density / 2 * speed * speed * length * draught * coefficient",
      unit: "N",
      why: "pressure of the current on the underwater profile",
    },
  ],
  valid:
    "A boat held against the current, square to it, in deep water; a shallow bottom can raise the force three times (CURRENT.SHALLOW). A bow thruster alone does not hold a boat against a beam current: take this as a warning.",
  sources: [identity("Force is pressure times coefficient times area"), hoerner],
  examples: [
    {
      given: { length: 11, draught: 0.8, speed: 1852 / 3600, coefficient: 0.61 },
      expect: 728,
      within: 0.5,
      source: identity("1 kn: 0.5·1025·0.514444²·11·0.8·0.61 = 728"),
    },
    {
      given: { length: 8, draught: 0.5, speed: 926 / 3600, coefficient: 0.62 },
      expect: 84,
      within: 0.5,
      source: identity("0.5 kn: 0.5·1025·0.257222²·8·0.5·0.62 = 84"),
    },
  ],
});
