import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { diameter, entrance } from "./bore";

export const tunnelRecessDepth = defineFunction({
  name: "TUNNEL.RECESSDEPTH",
  title: "Depth of the recess at the aft edge, square to the skin",
  args: { diameter, entrance },
  steps: [
    {
      kind: "algebra",
      symbol: "n",
      formula: "diameter * sin(radians(entrance))",
      unit: "mm",
      why: "the strip of TUNNEL.BACKFACE measured square to the skin",
    },
  ],
  valid:
    "The full depth, at axis height; it dies out at the top and bottom of the hole. Build the inside up first where the skin is not thick enough.",
  sources: [identity("Parallel view of a cylinder cut by a plane")],
  examples: [
    {
      given: { diameter: 185, entrance: 20 },
      expect: 63.27,
      within: 5e-3,
      source: identity("185·sin 20° = 63.27"),
    },
  ],
});
