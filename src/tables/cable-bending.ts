import type { Source } from "../formula/source";
import { defineTable } from "../formula/table";

const classRules: Source = {
  evidence: "published",
  title: "Korean Register, Rules for steel ships, electrical",
  clause: "902",
  note: "6 diameters also in the Japanese rules H 2.9.10, 12 in an offshore cable guide to BS 6883",
};
const hd60364: Source = {
  evidence: "published",
  title: "HD 60364-5-52, Low-voltage installations: wiring systems",
  note: "read in one reprint; half of it for one careful bend",
};

/** Least inside radius of a bend, in outside diameters of the cable. */
export const cableBending = defineTable({
  title: "Bending of cables",
  source: classRules,
  key: { name: "cable", about: "cable or conductor" },
  columns: { radius: { unit: "diameters", about: "least inside radius" } },
  rows: [
    ["rubber or PVC, no armour", 4],
    ["metal covering", 6],
    ["expansion loop", 12],
    ["multicore, land wiring", 12],
    ["single core, land wiring", 15],
  ],
  rowSources: { "multicore, land wiring": hd60364, "single core, land wiring": hd60364 },
});
