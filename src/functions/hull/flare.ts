import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { axis, between, grid, validGrid } from "./offsets";
import { wigley, wigleyAxis, wigleyGrid } from "./wigley";

export const hullFlare = defineFunction({
  name: "HULL.FLARE",
  title: "Flare between measured offsets",
  args: { ...grid, ...axis, between },
  steps: [{ kind: "surface", symbol: "f", reading: "flare", unit: "deg", why: "slope of the section at the axis" }],
  valid: `Angle of the section at one point. ${validGrid}`,
  sources: [identity("A surface through measured points")],
  examples: [
    {
      given: { ...wigleyGrid, ...wigleyAxis },
      expect: 24.2277,
      within: 5e-5,
      source: { ...wigley, clause: "slope 1800·0.36·2·0.5/1.44 = 0.45, 24.2277 degrees" },
    },
  ],
});
