import { defineFunction } from "../../formula/define";
import { nistSp811 } from "../../tables/unit-sources";

export const fabricGrams = defineFunction({
  name: "FABRIC.GRAMS",
  title: "Fabric sold by the ounce, in grams a square metre",
  args: {
    ounces: { unit: "ozm", about: "weight on the label", min: 0, max: 200 },
    per: { kind: "text", about: "area on the label", choices: ["ft2", "yd2"] },
  },
  constants: {
    ounce: { value: 28.349523125, unit: "g/ozm", about: "avoirdupois ounce", source: nistSp811 },
    squareFoot: { value: 0.09290304, unit: "m2", about: "square foot", source: nistSp811 },
    squareYard: { value: 0.83612736, unit: "m2", about: "square yard", source: nistSp811 },
  },
  steps: [
    {
      kind: "choose",
      symbol: "area",
      by: "per",
      cases: { ft2: "squareFoot", yd2: "squareYard" },
      unit: "m2",
      why: "the area that the label means",
    },
    { kind: "algebra", symbol: "w", formula: "ounces * ounce / area", unit: "g/m2", why: "mass over area" },
  ],
  valid:
    "Mat is sold per square foot, cloth per square yard: the same ounces differ nine times. A stitched mat is two " +
    "layers of two kinds; add them up separately.",
  sources: [nistSp811],
  examples: [
    { given: { ounces: 1, per: "ft2" }, expect: 305.1517, within: 5e-5, source: nistSp811 },
    { given: { ounces: 1, per: "yd2" }, expect: 33.90575, within: 5e-6, source: nistSp811 },
  ],
});
