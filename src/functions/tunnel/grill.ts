import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { blevinsGrill } from "../../tables/hydraulics-sources";

export const tunnelGrill = defineFunction({
  name: "TUNNEL.GRILL",
  title: "Loss of a square-edged grill by its open share",
  args: {
    open: { unit: "1", about: "open share of the area", min: 0.3, max: 1 },
  },
  constants: {
    contraction: { value: 0.5, unit: "1", about: "factor of the closed share", source: blevinsGrill },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "K",
      formula: "(contraction * (1 - open) + 1 - open * open) / (open * open)",
      unit: "1",
      why: "in velocity heads of the flow that comes to the grill",
    },
  ],
  valid: "One grill with square edges: count both ends. The high side of the range whose low side is TUNNEL.GRID.",
  sources: [blevinsGrill],
  examples: [
    {
      given: { open: 0.9 },
      expect: 0.296,
      within: 5e-4,
      source: identity("(0.5·0.1 + 1 − 0.81)/0.81 = 0.2963"),
    },
    { given: { open: 0.5 }, expect: 4, within: 1e-12, source: identity("(0.25 + 0.75)/0.25 = 4") },
  ],
});
