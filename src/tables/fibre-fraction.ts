import { defineTable } from "../formula/table";
import { isoFibreFraction } from "./laminate-sources";

export const fibreFraction = defineTable({
  title: "ISO 12215-5 fibre fractions",
  source: isoFibreFraction,
  key: { name: "reinforcement", about: "glass reinforcement" },
  columns: {
    simple: { unit: "1", about: "by hand on a simple surface, fibre mass over laminate mass" },
    complex: { unit: "1", about: "by hand on a complex surface" },
    vacuum: { unit: "1", about: "under vacuum" },
  },
  rows: [
    ["mat", 0.3, 0.25, 0.36],
    ["woven roving", 0.48, 0.36, 0.58],
    ["multidirectional", 0.5, 0.38, 0.6],
    ["unidirectional", 0.55, 0.41, 0.66],
  ],
});
