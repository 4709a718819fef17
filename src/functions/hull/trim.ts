import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { diameter } from "../tunnel/bore";
import { angle, axis, between, grid, validGrid } from "./offsets";
import { wigley, wigleyAxis, wigleyGrid } from "./wigley";

export const hullTrim = defineFunction({
  name: "HULL.TRIM",
  title: "Cut line of the tube's end against its mean, curved side",
  args: { ...grid, ...axis, diameter, angle, between },
  steps: [
    { kind: "surface", symbol: "l", reading: "half", unit: "mm", why: "the surface at that place of the tube" },
    { kind: "surface", symbol: "m", reading: "mean", unit: "mm", why: "mean round the tube" },
    { kind: "algebra", symbol: "t", formula: "l - m", unit: "mm", why: "outboard of the mean line is above 0" },
  ],
  valid: `Use the outside diameter for a template that is wrapped around the tube; compare with TUNNEL.TRIM. ${validGrid}`,
  sources: [identity("Where a cylinder meets a surface")],
  examples: [
    {
      given: { ...wigleyGrid, ...wigleyAxis, diameter: 185, angle: 0 },
      expect: 39.8766,
      within: 6e-4,
      source: { ...wigley, clause: "573.275 − 533.3984 = 39.8766" },
    },
    {
      given: { ...wigleyGrid, ...wigleyAxis, diameter: 185, angle: 180 },
      expect: -43.3734,
      within: 6e-4,
      source: { ...wigley, clause: "490.025 − 533.3984 = −43.3734" },
    },
  ],
});
