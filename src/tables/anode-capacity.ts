import type { Source } from "../formula/source";
import { defineTable } from "../formula/table";
import { dnvAnodes } from "./electrical-sources";

const magnesium: Source = {
  evidence: "published",
  title: "American Bureau of Shipping, Guidance notes on cathodic protection of ships",
  edition: "2017",
  note: "read second hand",
};

/** Charge that a kilogram of anode gives in use. */
export const anodeCapacity = defineTable({
  title: "Anode metals",
  source: dnvAnodes,
  key: { name: "metal", about: "anode metal" },
  columns: { capacity: { unit: "Ah/kg", about: "design capacity" } },
  rows: [
    ["zinc", 780],
    ["magnesium", 1230],
    ["aluminium", 2000],
  ],
  rowSources: { magnesium },
});
