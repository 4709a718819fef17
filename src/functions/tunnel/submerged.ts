import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { axisDepth, diameter } from "./bore";

const segment = identity("Area of a circular segment");

export const tunnelSubmerged = defineFunction({
  name: "TUNNEL.SUBMERGED",
  title: "Share of the tunnel's disc that is under water",
  args: { axisDepth, diameter },
  steps: [
    {
      kind: "algebra",
      symbol: "x",
      formula: "max(-1, min(1, axisDepth / (diameter / 2)))",
      unit: "1",
      why: "axis depth in radii; beyond one radius the disc is all under or all out",
    },
    {
      kind: "algebra",
      symbol: "share",
      formula: "1 - acos(x) / pi + x * sqrt(1 - x * x) / pi",
      unit: "1",
      why: "disc less the segment above water",
    },
  ],
  valid:
    "Geometry of still water alone: a propeller that is wholly under can still draw air. Beyond one radius the share stays 0 or 1.",
  sources: [segment],
  examples: [
    { given: { axisDepth: 0, diameter: 200 }, expect: 0.5, within: 1e-12, source: identity("half the disc at x = 0") },
    {
      given: { axisDepth: 50, diameter: 200 },
      expect: 0.8045,
      within: 5e-5,
      source: identity("1 − 1.047198/π + 0.5·0.866025/π = 0.8045"),
    },
    { given: { axisDepth: 100, diameter: 200 }, expect: 1, within: 1e-12, source: identity("the whole disc at x = 1") },
  ],
});
