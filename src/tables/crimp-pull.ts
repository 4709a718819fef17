import type { Source } from "../formula/source";
import { defineTable } from "../formula/table";
import { ul486a } from "./electrical-sources";

const recalled: Source = { ...ul486a, evidence: "memory" };

/** Pull that a crimped lug must hold for a minute, by gauge; about a third of what IEC 61238-1 asks at like size. */
export const crimpPull = defineTable({
  title: "UL 486A pull-out",
  source: { ...ul486a, note: "printed in pounds-force, × 4.4482 N; 18 to 4 AWG read in two copies, 2 to 2/0 in one" },
  key: { name: "gauge", about: "American wire gauge" },
  columns: { pull: { unit: "N", about: "held for 1 min" } },
  rows: [
    ["18", 89.0],
    ["16", 133.4],
    ["14", 222.4],
    ["12", 311.4],
    ["10", 355.9],
    ["8", 400.3],
    ["6", 444.8],
    ["4", 622.8],
    ["2", 800.7],
    ["1/0", 1112.1],
    ["2/0", 1334.5],
    ["3/0", 1556.9],
    ["4/0", 2001.7],
  ],
  rowSources: { "3/0": recalled, "4/0": recalled },
});
