import { defineFunction } from "../../formula/define";
import { commonPractice, identity } from "../../formula/source";
import { axisDepth, diameter } from "./bore";

export const tunnelImmersion = defineFunction({
  name: "TUNNEL.IMMERSION",
  title: "Cover in tunnel diameters",
  args: { axisDepth, diameter },
  steps: [
    {
      kind: "algebra",
      symbol: "i",
      formula: "(axisDepth - diameter / 2) / diameter",
      unit: "diameters",
      why: "water above the tube, in diameters",
    },
  ],
  valid:
    "Still water; pitching and heeling take some of it away. At least half a diameter, better a whole one, is a habit of the trade, not a rule.",
  sources: [
    identity("Geometry of a level tube"),
    commonPractice("cover of at least 1/2 diameter, better 1, in the lightest trim"),
  ],
  examples: [
    {
      given: { axisDepth: 300, diameter: 200 },
      expect: 1,
      within: 1e-12,
      source: identity("(300 − 200/2)/200 = 1"),
    },
    {
      given: { axisDepth: 300, diameter: 185 },
      expect: 1.122,
      within: 5e-4,
      source: identity("(300 − 92.5)/185 = 1.1216"),
    },
  ],
});
