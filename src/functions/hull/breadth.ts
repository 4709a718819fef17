import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { axis, between, grid, validGrid } from "./offsets";
import { wigley, wigleyAxis, wigleyGrid } from "./wigley";

export const hullBreadth = defineFunction({
  name: "HULL.BREADTH",
  title: "Half-breadth between measured offsets",
  args: { ...grid, ...axis, between },
  steps: [{ kind: "surface", symbol: "b", reading: "breadth", unit: "mm", why: "read from the surface at the axis" }],
  valid: `Half-breadth at one point. ${validGrid}`,
  sources: [identity("A surface through measured points")],
  examples: [
    {
      given: { ...wigleyGrid, ...wigleyAxis },
      expect: 535.5,
      within: 1e-9,
      source: { ...wigley, clause: "1800·(1 − 0.8²)·(1 − (5/12)²) = 535.5" },
    },
  ],
});
