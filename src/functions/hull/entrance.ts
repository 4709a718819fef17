import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { axis, between, grid, validGrid } from "./offsets";
import { wigley, wigleyAxis, wigleyGrid } from "./wigley";

export const hullEntrance = defineFunction({
  name: "HULL.ENTRANCE",
  title: "Entrance angle between measured offsets",
  args: { ...grid, ...axis, between },
  steps: [
    { kind: "surface", symbol: "e", reading: "entrance", unit: "deg", why: "slope of the waterline at the axis" },
  ],
  valid: `Angle of the waterline at one point. ${validGrid}`,
  sources: [identity("A surface through measured points")],
  examples: [
    {
      given: { ...wigleyGrid, ...wigleyAxis },
      expect: 21.6366,
      within: 5e-5,
      source: { ...wigley, clause: "slope 1800·2·4.8/36·(1 − 0.1736) = 0.3967, 21.6366 degrees" },
    },
  ],
});
