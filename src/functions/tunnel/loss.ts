import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";

export const tunnelLoss = defineFunction({
  name: "TUNNEL.LOSS",
  title: "All losses of the tunnel in velocity heads",
  args: {
    inlet: { unit: "1", about: "inlet loss, from TUNNEL.INLET", min: 0, max: 5 },
    friction: { unit: "1", about: "friction loss, from TUNNEL.FRICTION", min: 0, max: 5, otherwise: 0 },
    other: { unit: "1", about: "grids at both ends and anything else", min: 0, max: 20, otherwise: 0 },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "K",
      formula: "1 + inlet + friction + other",
      unit: "1",
      why: "the 1 is the energy that the jet carries away",
    },
  ],
  valid: "The 1 already is the loss at the exit, whatever its edge: do not add an exit loss on top.",
  sources: [identity("Energy of the water in the tube: jet, inlet, wall, fittings")],
  examples: [
    {
      given: { inlet: 0.195, friction: 0.075 },
      expect: 1.27,
      within: 1e-12,
      source: identity("1 + 0.195 + 0.015·5 = 1.27"),
    },
    { given: { inlet: 0.5 }, expect: 1.5, within: 1e-12, source: identity("1 + 0.5 = 1.5") },
  ],
});
