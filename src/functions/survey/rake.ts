import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { entrance, flare } from "../tunnel/bore";

export const shellRake = defineFunction({
  name: "SHELL.RAKE",
  title: "Rake of the stem that goes with entrance and flare",
  args: { entrance: { ...entrance, aboveMin: true }, flare },
  steps: [
    {
      kind: "algebra",
      symbol: "rho",
      formula: "degrees(atan(tan(radians(flare)) / tan(radians(entrance))))",
      unit: "deg",
      why: "where the plane of the side meets the centreplane, from vertical",
    },
  ],
  valid:
    "On a flat bow entrance, flare and stem rake hang together. A measured rake that is far from this means that the side is not flat or an angle is wrong. Above 0 the stem leans forward going up.",
  sources: [identity("Two planes meet in a line")],
  examples: [
    {
      given: { entrance: 20, flare: 15 },
      expect: 36.3599,
      within: 5e-5,
      source: identity("atan(tan 15°/tan 20°) = 36.3599°"),
    },
    {
      given: { entrance: 25, flare: 30 },
      expect: 51.0733,
      within: 5e-5,
      source: identity("atan(tan 30°/tan 25°) = 51.0733°"),
    },
  ],
});
