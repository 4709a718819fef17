import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { base, fromFirst, fromSecond } from "./tape";

export const surveyAway = defineFunction({
  name: "SURVEY.AWAY",
  title: "A point fixed by two tapes: how far off the line of the marks",
  args: { fromFirst, fromSecond, base },
  steps: [
    {
      kind: "require",
      holds: "abs(fromFirst - fromSecond) <= base and base <= fromFirst + fromSecond",
      says: "from first {fromFirst} mm and from second {fromSecond} mm do not meet over a base of {base} mm; measure again",
    },
    {
      kind: "algebra",
      symbol: "x",
      formula: "(fromFirst * fromFirst - fromSecond * fromSecond + base * base) / (2 * base)",
      unit: "mm",
      why: "foot of the point on the line, from the first mark",
    },
    // Rounding can leave a hair below 0 where the three points lie on one line.
    {
      kind: "algebra",
      symbol: "y",
      formula: "sqrt(max(0, (fromFirst - x) * (fromFirst + x)))",
      unit: "mm",
      why: "height of the triangle",
    },
  ],
  valid:
    "Marks that can be found on both sides of the skin, tapes held in one plane. A flat triangle (point close to the line) magnifies every error of the tapes: choose marks so that the tapes cross at a wide angle.",
  caution:
    "Before a hole is drilled the point found inside must agree with the one found outside; look what lies behind it. Local codes and licensed practice decide.",
  sources: [identity("Two right triangles with one height")],
  examples: [
    {
      given: { fromFirst: 500, fromSecond: 500, base: 800 },
      expect: 300,
      within: 1e-9,
      source: identity("sqrt(500² − 400²) = 300"),
    },
    {
      given: { fromFirst: 300, fromSecond: 400, base: 500 },
      expect: 240,
      within: 1e-9,
      source: identity("sqrt(300² − 180²) = 240"),
    },
  ],
});
