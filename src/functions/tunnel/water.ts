import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { mm2PerM2, mmPerM } from "../../tables/metre";
import { diameter, seaDensity } from "./bore";

export const tunnelWater = defineFunction({
  name: "TUNNEL.WATER",
  title: "Water carried in the tunnel",
  args: {
    diameter: { ...diameter, about: "inner diameter of the tube" },
    length: { unit: "mm", about: "mean length of the tube", min: 0, max: 20000 },
    density: seaDensity,
  },
  constants: { mmPerM, mm2PerM2 },
  steps: [
    {
      kind: "algebra",
      symbol: "A",
      formula: "pi * diameter * diameter / 4 / mm2PerM2",
      unit: "m2",
      why: "bore of the tube",
    },
    {
      kind: "algebra",
      symbol: "m",
      formula: "density * A * (length / mmPerM)",
      unit: "kg",
      why: "mass of the water in it",
    },
  ],
  valid:
    "Buoyancy lost, not cargo: count it once, as lost buoyancy or as added weight, never both. The mean length is twice the half-breadth on a flat skin, whatever the angles.",
  sources: [identity("Volume of a cylinder")],
  examples: [
    {
      given: { diameter: 185, length: 1000 },
      expect: 27.552,
      within: 5e-4,
      source: identity("1025·π·0.185²/4 = 27.552 kg a metre"),
    },
    {
      given: { diameter: 250, length: 1000, density: 999.1026 },
      expect: 49.043,
      within: 5e-4,
      source: identity("999.1026·π·0.25²/4 = 49.043 kg a metre"),
    },
  ],
});
