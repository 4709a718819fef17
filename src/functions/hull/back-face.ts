import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { diameter } from "../tunnel/bore";
import { axis, between, grid, validGrid } from "./offsets";
import { wigley, wigleyAxis, wigleyGrid } from "./wigley";

export const hullBackFace = defineFunction({
  name: "HULL.BACKFACE",
  title: "Strip of aft wall seen from ahead, curved side",
  args: { ...grid, ...axis, diameter, between },
  steps: [
    {
      kind: "surface",
      symbol: "w",
      reading: "strip",
      unit: "mm",
      why: "greatest half-length aft less the one straight ahead of it",
    },
  ],
  valid: `Use the inside diameter; compare with TUNNEL.BACKFACE. The strip should not be seen: common practice, no source. ${validGrid}`,
  sources: [identity("Where a cylinder meets a surface")],
  examples: [
    {
      given: { ...wigleyGrid, ...wigleyAxis, diameter: 185 },
      expect: 73.6003,
      within: 5e-5,
      source: {
        ...wigley,
        clause:
          "greatest of the formula aft less forward at one height, at 85.66 degrees; 73.383 at the height of the axis",
      },
    },
  ],
});
