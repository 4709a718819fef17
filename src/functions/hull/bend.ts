import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { diameter } from "../tunnel/bore";
import { axis, between, grid, validGrid } from "./offsets";
import { wigley, wigleyAxis, wigleyGrid } from "./wigley";

export const hullBend = defineFunction({
  name: "HULL.BEND",
  title: "Greatest departure of a curved side from a flat one",
  args: { ...grid, ...axis, diameter, between },
  steps: [
    {
      kind: "surface",
      symbol: "d",
      reading: "bend",
      unit: "mm",
      why: "skin against the flat side through the axis, on the tube",
    },
  ],
  valid: `By how much the flat-side formulas err at worst on this tube. ${validGrid}`,
  sources: [identity("Where a cylinder meets a surface")],
  examples: [
    {
      given: { ...wigleyGrid, ...wigleyAxis, diameter: 185 },
      expect: 4.4346,
      within: 5e-5,
      source: {
        ...wigley,
        clause: "greatest of the formula against its tangent plane, at 200.49 degrees; 3.85 at top and bottom",
      },
    },
  ],
});
