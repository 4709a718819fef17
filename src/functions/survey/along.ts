import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { base, fromFirst, fromSecond } from "./tape";

export const surveyAlong = defineFunction({
  name: "SURVEY.ALONG",
  title: "A point fixed by two tapes: how far along the line of the marks",
  args: { fromFirst, fromSecond, base },
  steps: [
    {
      kind: "algebra",
      symbol: "x",
      formula: "(fromFirst * fromFirst - fromSecond * fromSecond + base * base) / (2 * base)",
      unit: "mm",
      why: "foot of the point on the line, from the first mark towards the second",
    },
  ],
  valid:
    "Marks that can be found on both sides of the skin, tapes held in one plane. Below 0 the foot lies on the far side of the first mark. Tapes that cannot meet also give a number here: SURVEY.AWAY refuses them.",
  sources: [identity("Two right triangles with one height")],
  examples: [
    {
      given: { fromFirst: 500, fromSecond: 500, base: 800 },
      expect: 400,
      within: 1e-9,
      source: identity("equal tapes meet over the middle"),
    },
    {
      given: { fromFirst: 300, fromSecond: 400, base: 500 },
      expect: 180,
      within: 1e-9,
      source: identity("(300² − 400² + 500²)/1000 = 180"),
    },
  ],
});
