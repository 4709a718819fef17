import { defineFunction } from "../../formula/define";
import { commonPractice, identity } from "../../formula/source";
import { diameter, entrance } from "./bore";

export const tunnelBackFace = defineFunction({
  name: "TUNNEL.BACKFACE",
  title: "Strip of the aft wall that is seen from dead ahead",
  args: { diameter, entrance },
  steps: [
    {
      kind: "algebra",
      symbol: "w",
      formula: "diameter * tan(radians(entrance))",
      unit: "mm",
      why: "how much farther out the aft edge stands than the forward edge; flare does not matter",
    },
  ],
  valid:
    "The strip at axis height, its widest. It should not be seen: recess the aft edge, set a deflector ahead of the forward one, or share it between both. On the cautious side, as real flow bends along the hull.",
  sources: [
    identity("Parallel view of a cylinder cut by a plane"),
    commonPractice("the aft wall of the tunnel is kept out of the flow when under way"),
  ],
  examples: [
    {
      given: { diameter: 185, entrance: 20 },
      expect: 67.33,
      within: 5e-3,
      source: identity("185·tan 20° = 67.33"),
    },
    { given: { diameter: 200, entrance: 45 }, expect: 200, within: 1e-9, source: identity("200·tan 45° = 200") },
  ],
});
