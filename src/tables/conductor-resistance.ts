import { defineTable } from "../formula/table";
import { iec60228 } from "./sources";

export const conductorResistance = defineTable({
  title: "IEC 60228 sizes",
  source: iec60228,
  key: { name: "size", about: "nominal size", unit: "mm2" },
  columns: {
    "2": { unit: "ohm/km", about: "stranded, plain copper, largest at 20 °C" },
    "5": { unit: "ohm/km", about: "flexible, plain copper, largest at 20 °C" },
  },
  rows: [
    [35, 0.524, 0.554],
    [50, 0.387, 0.386],
  ],
});
