import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { diameter } from "../tunnel/bore";
import { axis, between, grid, validGrid } from "./offsets";
import { wigley, wigleyAxis, wigleyGrid } from "./wigley";

export const hullStock = defineFunction({
  name: "HULL.STOCK",
  title: "Length of tube to order for a curved side",
  args: {
    ...grid,
    ...axis,
    diameter,
    allowance: { unit: "mm", about: "left standing at each end for trimming", min: 0, max: 1000, otherwise: 0 },
    between,
  },
  steps: [
    { kind: "surface", symbol: "l", reading: "greatest", unit: "mm", why: "the longest line on the tube" },
    { kind: "algebra", symbol: "L", formula: "2 * (l + allowance)", unit: "mm", why: "both sides" },
  ],
  valid: `Use the outside diameter; compare with TUNNEL.STOCK. The tube stands square to the centreplane. ${validGrid}`,
  sources: [identity("Where a cylinder meets a surface")],
  examples: [
    {
      given: { ...wigleyGrid, ...wigleyAxis, diameter: 185, allowance: 0 },
      expect: 1180.2002,
      within: 5e-5,
      source: { ...wigley, clause: "twice the greatest of the formula round the tube, at 314.91 degrees: 2·590.1001" },
    },
  ],
});
