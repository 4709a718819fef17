import { defineTable } from "../formula/table";
import { iec60228 } from "./sources";

/**
 * Largest direct-current resistance of plain copper conductors at 20 °C.
 *
 * A nominal size is defined by this resistance, not by the geometry of its strands.
 */
export const conductorResistance = defineTable({
  title: "IEC 60228 sizes",
  source: iec60228,
  key: { name: "size", about: "nominal size", unit: "mm2" },
  columns: {
    stranded: { unit: "ohm/km", about: "class 2, stranded, plain copper, largest at 20 °C" },
    flexible: { unit: "ohm/km", about: "class 5, flexible, plain copper, largest at 20 °C" },
  },
  rows: [
    [0.5, 36.0, 39.0],
    [0.75, 24.5, 26.0],
    [1, 18.1, 19.5],
    [1.5, 12.1, 13.3],
    [2.5, 7.41, 7.98],
    [4, 4.61, 4.95],
    [6, 3.08, 3.3],
    [10, 1.83, 1.91],
    [16, 1.15, 1.21],
    [25, 0.727, 0.78],
    [35, 0.524, 0.554],
    [50, 0.387, 0.386],
    [70, 0.268, 0.272],
    [95, 0.193, 0.206],
    [120, 0.153, 0.161],
    [150, 0.124, 0.129],
    [185, 0.0991, 0.106],
    [240, 0.0754, 0.0801],
    [300, 0.0601, 0.0641],
    [400, 0.047, 0.0486],
  ],
});
