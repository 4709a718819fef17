import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { bevelRatio } from "../../tables/laminate-sources";
import { glassDust } from "./cautions";
import { ratio, thickness } from "./ring";

export const bevelWidth = defineFunction({
  name: "BEVEL.WIDTH",
  title: "Width of a bevel",
  args: { thickness, ratio },
  steps: [
    { kind: "algebra", symbol: "b", formula: "ratio * thickness", unit: "mm", why: "so many times the thickness" },
  ],
  valid:
    "From one side. Ground from both sides, each takes half the thickness and half the width. The ground circle is " +
    "the hole and twice the width: larger than most expect.",
  caution: glassDust,
  sources: [identity("Slope of the bevel"), bevelRatio],
  examples: [
    { given: { thickness: 12, ratio: 12 }, expect: 144, within: 1e-9, source: identity("12·12 = 144") },
    {
      given: { thickness: 11.176, ratio: 12 },
      expect: 134.112,
      within: 1e-9,
      source: identity("0.44 in at 12:1 is 5.28 in = 134.112 mm"),
    },
  ],
});
