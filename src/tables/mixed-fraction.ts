import { defineTable } from "../formula/table";
import { isoFibreFraction } from "./laminate-sources";

export const mixedFraction = defineTable({
  title: "ISO 12215-5 fibre fractions of mat and woven roving together",
  source: isoFibreFraction,
  key: { name: "surface", about: "how it is laid up" },
  columns: {
    roving: { unit: "1", about: "fraction without mat" },
    drop: { unit: "1", about: "what a share of mat takes off, times that share" },
  },
  rows: [
    ["simple", 0.46, 0.18],
    ["complex", 0.35, 0.11],
    ["vacuum", 0.56, 0.22],
  ],
});
