import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { mm3PerMl } from "../../tables/millilitre";
import { glassDust } from "./cautions";
import { ratio, thickness } from "./ring";

export const bevelVolume = defineFunction({
  name: "BEVEL.VOLUME",
  title: "Laminate that a bevel round a hole takes away",
  args: {
    holeRadius: { unit: "mm", about: "radius of the hole", min: 0, max: 1000 },
    thickness,
    ratio,
  },
  constants: { mm3PerMl },
  steps: [
    { kind: "algebra", symbol: "b", formula: "ratio * thickness", unit: "mm", why: "width of the bevel" },
    {
      kind: "algebra",
      symbol: "A",
      formula: "b * thickness / 2",
      unit: "mm2",
      why: "triangle ground off",
    },
    {
      kind: "algebra",
      symbol: "c",
      formula: "2 * pi * (holeRadius + b / 3)",
      unit: "mm",
      why: "way of the triangle's centre once round",
    },
    { kind: "algebra", symbol: "V", formula: "A * c / mm3PerMl", unit: "ml", why: "Pappus: area times way" },
  ],
  valid: "A round hole, ground from one side, in a skin that is nearly flat.",
  caution: glassDust,
  sources: [identity("Pappus: π·k·t²·(a + k·t/3)")],
  examples: [
    {
      given: { holeRadius: 100, thickness: 12, ratio: 12 },
      expect: 803.44,
      within: 5e-3,
      source: identity("π·12·144·(100 + 48) mm3 = 803.44 ml"),
    },
  ],
});
