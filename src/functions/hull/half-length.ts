import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { diameter } from "../tunnel/bore";
import { angle, axis, between, grid, validGrid } from "./offsets";
import { wigley, wigleyAxis, wigleyGrid } from "./wigley";

export const hullHalfLength = defineFunction({
  name: "HULL.HALFLENGTH",
  title: "Half-length of the tube to a curved side",
  args: { ...grid, ...axis, diameter, angle, between },
  steps: [{ kind: "surface", symbol: "l", reading: "half", unit: "mm", why: "the surface at that place of the tube" }],
  valid: `Use the outside diameter for the cut and compare with TUNNEL.HALFLENGTH. ${validGrid}`,
  sources: [identity("Where a cylinder meets a surface")],
  examples: [
    {
      given: { ...wigleyGrid, ...wigleyAxis, diameter: 185, angle: 0 },
      expect: 573.275,
      within: 5e-4,
      source: { ...wigley, clause: "the hull's formula at the top of the tube" },
    },
    {
      given: { ...wigleyGrid, ...wigleyAxis, diameter: 185, angle: 90 },
      expect: 498.455,
      within: 5e-4,
      source: { ...wigley, clause: "the hull's formula forward on the tube" },
    },
    {
      given: { ...wigleyGrid, ...wigleyAxis, diameter: 185, angle: 180 },
      expect: 490.025,
      within: 5e-4,
      source: { ...wigley, clause: "the hull's formula at the bottom of the tube" },
    },
    {
      given: { ...wigleyGrid, ...wigleyAxis, diameter: 185, angle: 270 },
      expect: 571.838,
      within: 5e-4,
      source: { ...wigley, clause: "the hull's formula aft on the tube" },
    },
  ],
});
