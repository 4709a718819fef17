import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { mm2PerM2 } from "../../tables/metre";
import { diameter } from "../tunnel/bore";
import { axis, between, grid, validGrid } from "./offsets";

// A flat side, where the area is known in closed form: 20 degrees of entrance, 15 of flare.
const slope = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);
const places = [-150, 0, 150];
const flatSide = {
  stations: places,
  heights: places,
  offsets: places.flatMap((z) => places.map((x) => 400 - x * slope(20) + z * slope(15))),
};

export const hullHoleArea = defineFunction({
  name: "HULL.HOLEAREA",
  title: "Area of the hole on a curved side",
  args: { ...grid, ...axis, diameter, between },
  constants: { mm2PerM2 },
  steps: [
    { kind: "surface", symbol: "S", reading: "area", unit: "mm2", why: "area of skin inside the tube" },
    { kind: "algebra", symbol: "A", formula: "S / mm2PerM2", unit: "m2", why: "in square metres" },
  ],
  valid: `Use the outside diameter; compare with TUNNEL.HOLEAREA. ${validGrid}`,
  sources: [identity("Area of a surface over a circle")],
  examples: [
    {
      given: { ...flatSide, station: 0, height: 0, diameter: 185 },
      expect: 0.0294982,
      within: 5e-8,
      source: identity("a flat side: π·92.5²·sqrt(1 + tan²20° + tan²15°) mm²"),
    },
  ],
});
