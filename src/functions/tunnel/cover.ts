import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { axisDepth, diameter } from "./bore";

export const tunnelCover = defineFunction({
  name: "TUNNEL.COVER",
  title: "Water above the top of the tunnel",
  args: { axisDepth, diameter },
  steps: [
    {
      kind: "algebra",
      symbol: "c",
      formula: "axisDepth - diameter / 2",
      unit: "mm",
      why: "the top of the tube is half a diameter above its axis",
    },
  ],
  valid:
    "Still water and the trim that the axis depth was measured in: check the light condition. Below 0 the tube breaks the surface.",
  sources: [identity("Geometry of a level tube")],
  examples: [
    {
      given: { axisDepth: 300, diameter: 185 },
      expect: 207.5,
      within: 1e-9,
      source: identity("300 − 185/2 = 207.5"),
    },
  ],
});
