import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { diameter } from "../tunnel/bore";
import { axis, between, grid, validGrid } from "./offsets";
import { wigley, wigleyAxis, wigleyGrid } from "./wigley";

export const hullMeanLength = defineFunction({
  name: "HULL.MEANLENGTH",
  title: "Mean half-length of the tube to a curved side",
  args: { ...grid, ...axis, diameter, between },
  steps: [{ kind: "surface", symbol: "m", reading: "mean", unit: "mm", why: "even steps round the tube" }],
  valid: `The level from which HULL.TRIM counts. ${validGrid}`,
  sources: [identity("Where a cylinder meets a surface")],
  examples: [
    {
      given: { ...wigleyGrid, ...wigleyAxis, diameter: 185 },
      expect: 533.3984,
      within: 5e-5,
      source: { ...wigley, clause: "b + R²/4·(fxx + fzz) + R⁴/32·fxxzz, exact for this hull" },
    },
  ],
});
