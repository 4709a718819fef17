import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { mm2PerM2, mmPerM } from "../../tables/metre";
import { diameter, seaDensity } from "../tunnel/bore";
import { axis, between, grid, validGrid } from "./offsets";
import { wigley, wigleyAxis, wigleyGrid } from "./wigley";

export const hullWater = defineFunction({
  name: "HULL.WATER",
  title: "Water carried in the tunnel of a curved hull",
  args: { ...grid, ...axis, diameter, density: seaDensity, between },
  constants: { mm2PerM2, mmPerM },
  steps: [
    { kind: "surface", symbol: "V", reading: "volume", unit: "mm3", why: "space from skin to skin" },
    {
      kind: "algebra",
      symbol: "w",
      formula: "density * (V / mm2PerM2 / mmPerM)",
      unit: "kg",
      why: "mass of the water in it",
    },
  ],
  valid: `Use the inside diameter; compare with TUNNEL.WATER. Buoyancy lost, not cargo: count it once. ${validGrid}`,
  sources: [identity("Volume of a cylinder between two surfaces")],
  examples: [
    {
      given: { ...wigleyGrid, ...wigleyAxis, diameter: 185, density: 1000 },
      expect: 28.7323,
      within: 5e-5,
      source: { ...wigley, clause: "2πR²·(b + R²/8·(fxx + fzz) + R⁴/96·fxxzz) = 0.0287323 m³" },
    },
  ],
});
