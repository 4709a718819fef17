import { defineFunction } from "../../formula/define";
import { fibreFraction } from "../../tables/fibre-fraction";
import { isoFibreFraction } from "../../tables/laminate-sources";
import { surface } from "./layer";

export const fabricFraction = defineFunction({
  name: "FABRIC.FRACTION",
  title: "Usual fibre fraction of a reinforcement",
  args: {
    reinforcement: {
      kind: "text",
      about: "glass reinforcement",
      choices: ["mat", "woven roving", "multidirectional", "unidirectional"],
    },
    surface,
  },
  steps: [
    {
      kind: "lookup",
      symbol: "psi",
      table: fibreFraction,
      key: "reinforcement",
      column: { by: "surface", of: { simple: "simple", complex: "complex", vacuum: "vacuum" } },
      unit: "1",
      why: "default of the standard where nothing was measured",
    },
  ],
  valid: "Glass. A burnt-out sample of the yard's own laminate is better than any table.",
  sources: [isoFibreFraction],
  examples: [
    { given: { reinforcement: "mat" }, expect: 0.3, within: 0, source: isoFibreFraction },
    {
      given: { reinforcement: "multidirectional", surface: "complex" },
      expect: 0.38,
      within: 0,
      source: isoFibreFraction,
    },
  ],
});
