import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { standardGravity } from "../../tables/hydraulics-sources";

export const tunnelSuction = defineFunction({
  name: "TUNNEL.SUCTION",
  title: "Head of water that the flow in the tube pulls with",
  args: {
    jet: { unit: "m/s", about: "speed of the water in the tube", min: 0, max: 30 },
    inlet: { unit: "1", about: "inlet loss in velocity heads", min: 0, max: 5, otherwise: 0 },
  },
  constants: {
    g: { value: 9.80665, unit: "m/s2", about: "standard gravity", source: standardGravity },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "s",
      formula: "(1 + inlet) * jet * jet / (2 * g)",
      unit: "m",
      why: "velocity head and inlet loss ahead of the propeller",
    },
  ],
  valid:
    "Compare with the cover: where this is more than the cover, air is drawn as soon as a path to the surface opens. On small craft it always is, so it ranks layouts and does not pass or fail one.",
  sources: [identity("Bernoulli's equation between still water and the tube")],
  examples: [
    {
      given: { jet: 6, inlet: 0.2 },
      expect: 2.2026,
      within: 5e-5,
      source: identity("1.2·36/(2·9.80665) = 2.2026"),
    },
  ],
});
