import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";

export const tableAt = defineFunction({
  name: "TABLE.AT",
  title: "Straight-line reading of a table",
  args: {
    x: { unit: "any", about: "where the table is read" },
    xs: { kind: "range", unit: "any", about: "first column, rising" },
    ys: { kind: "range", unit: "any", about: "second column, as long" },
  },
  steps: [
    {
      kind: "between",
      symbol: "y",
      points: { xs: "xs", ys: "ys" },
      at: "x",
      unit: "any",
      why: "straight line between the two nearest rows",
    },
  ],
  valid:
    "Only between the first and the last row: outside there is no answer. A bent curve read by straight lines is cut " +
    "short; give it closer rows where it bends.",
  sources: [identity("Straight line through two points")],
  examples: [
    {
      given: { x: 2.5, xs: [1, 2, 4], ys: [10, 20, 60] },
      expect: 30,
      within: 1e-12,
      source: identity("20 + (2.5 − 2)/(4 − 2)·(60 − 20) = 30"),
    },
    {
      given: { x: 4, xs: [1, 2, 4], ys: [10, 20, 60] },
      expect: 60,
      within: 0,
      source: identity("the last row itself"),
    },
  ],
});
