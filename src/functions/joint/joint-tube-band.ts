import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { mm2PerM2 } from "../../tables/metre";
import { glassDust } from "./cautions";
import { diameter, width } from "./ring";

export const jointTubeBand = defineFunction({
  name: "JOINT.TUBEBAND",
  title: "Band on the tube",
  args: { diameter, width },
  constants: { mm2PerM2 },
  steps: [
    { kind: "algebra", symbol: "A", formula: "pi * diameter * width", unit: "mm2", why: "girth times width" },
    { kind: "algebra", symbol: "area", formula: "A / mm2PerM2", unit: "m2", why: "in square metres" },
  ],
  valid: "Width measured along the tube; the same on a slanting end, since both edges of the band slant alike.",
  caution: glassDust,
  sources: [identity("Surface of a cylinder between two like curves")],
  examples: [
    {
      given: { diameter: 200, width: 50 },
      expect: 0.0314159,
      within: 5e-8,
      source: identity("π·200·50 mm2 = 0.0314159 m2"),
    },
  ],
});
