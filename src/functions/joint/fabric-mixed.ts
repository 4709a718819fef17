import { defineFunction } from "../../formula/define";
import { isoFibreFraction } from "../../tables/laminate-sources";
import { mixedFraction } from "../../tables/mixed-fraction";
import { surface } from "./layer";

export const fabricMixed = defineFunction({
  name: "FABRIC.MIXED",
  title: "Usual fibre fraction of mat and woven roving together",
  args: {
    mat: { unit: "1", about: "mat mass over all glass mass", min: 0, max: 1 },
    surface,
  },
  steps: [
    {
      kind: "lookup",
      symbol: "roving",
      table: mixedFraction,
      key: "surface",
      column: "roving",
      unit: "1",
      why: "fraction without mat",
    },
    {
      kind: "lookup",
      symbol: "drop",
      table: mixedFraction,
      key: "surface",
      column: "drop",
      unit: "1",
      why: "what mat takes off",
    },
    {
      kind: "algebra",
      symbol: "psi",
      formula: "roving - drop * mat",
      unit: "1",
      why: "straight line in the share of mat",
    },
  ],
  valid:
    "Glass mat and woven roving laid up wet in wet. The ends do not quite meet the values of the single materials.",
  sources: [isoFibreFraction],
  examples: [
    { given: { mat: 0.5 }, expect: 0.37, within: 1e-9, source: isoFibreFraction },
    { given: { mat: 1, surface: "complex" }, expect: 0.24, within: 1e-9, source: isoFibreFraction },
  ],
});
