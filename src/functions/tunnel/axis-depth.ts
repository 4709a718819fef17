import { defineFunction } from "../../formula/define";
import { commonPractice, identity } from "../../formula/source";
import { diameter } from "./bore";

export const tunnelAxisDepth = defineFunction({
  name: "TUNNEL.AXISDEPTH",
  title: "Axis depth that gives the cover wanted",
  args: {
    diameter,
    cover: {
      unit: "diameters",
      about: "water wanted above the tube, in diameters",
      min: 0,
      max: 5,
      otherwise: 0.75,
    },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "h",
      formula: "diameter * (cover + 1 / 2)",
      unit: "mm",
      why: "cover and the half of the tube above its axis",
    },
  ],
  valid: "Measure down from the waterline in the lightest trim. The tube must also stay clear of the keel line below.",
  sources: [identity("Geometry of a level tube"), commonPractice("cover of 3/4 diameter")],
  examples: [
    { given: { diameter: 200 }, expect: 250, within: 1e-9, source: identity("200·(0.75 + 0.5) = 250") },
    { given: { diameter: 185, cover: 1 }, expect: 277.5, within: 1e-9, source: identity("185·1.5 = 277.5") },
  ],
});
