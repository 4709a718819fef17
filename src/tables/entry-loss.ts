import { defineTable } from "../formula/table";
import { crane } from "./hydraulics-sources";

/** Loss of a flush, rounded entry in velocity heads of the tube. */
export const entryLoss = defineTable({
  title: "Entry loss against edge radius",
  source: crane,
  key: { name: "radius", about: "edge radius as a share of the tube's diameter", unit: "1" },
  columns: { loss: { unit: "1", about: "entry loss in velocity heads" } },
  rows: [
    [0, 0.5],
    [0.02, 0.28],
    [0.04, 0.24],
    [0.06, 0.15],
    [0.1, 0.09],
    [0.15, 0.04],
  ],
});
