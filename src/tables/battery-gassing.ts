import type { Source } from "../formula/source";
import { defineTable } from "../formula/table";
import { batteryAir } from "./electrical-sources";

const recalled: Source = { ...batteryAir, evidence: "memory" };
const traction: Source = {
  evidence: "published",
  title: "EN 50272-3, Safety requirements for secondary batteries: traction batteries",
  note: "printed in A per 100 Ah, brought to mA/Ah; charged at a limited 2.4 V a cell; read in one copy",
};

/** Current that goes into gas while a lead-acid battery is charged, for the ventilation rule. */
export const batteryGassing = defineTable({
  title: "Gassing current of lead-acid batteries",
  source: { ...batteryAir, note: "read in one copy" },
  key: { name: "charging", about: "battery and way of charging" },
  columns: { gassing: { unit: "mA/Ah", about: "gassing current for each Ah of capacity" } },
  rows: [
    ["sealed, float", 1],
    ["vented, float", 5],
    ["sealed, boost", 8],
    ["vented, boost", 20],
    ["sealed, cycled at 2.4 V a cell", 10],
    ["vented, cycled at 2.4 V a cell", 20],
  ],
  rowSources: {
    "vented, float": recalled,
    "sealed, boost": recalled,
    "vented, boost": recalled,
    "sealed, cycled at 2.4 V a cell": traction,
    "vented, cycled at 2.4 V a cell": traction,
  },
});
