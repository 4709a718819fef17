import type { Source } from "../formula/source";
import { defineTable } from "../formula/table";
import { astmB258 } from "./electrical-sources";

const saeLeast: Source = {
  evidence: "published",
  title: "SAE least conductor areas by gauge",
  note: "circular mils read in two reprints, brought to mm2; no entry for 3 AWG",
};

/**
 * The gauges that 33 CFR 183.425 table 5 lists. "1/0" is not one size: the least area that a wire standard
 * allows is 3 to 11 % below the nominal one.
 */
export const boatGauges = defineTable({
  title: "AWG gauges of boat wiring",
  source: astmB258,
  key: { name: "gauge", about: "American wire gauge" },
  columns: {
    number: { unit: "1", about: "number in the rule for the diameter" },
    least: { unit: "mm2", about: "least area of a stranded conductor sold under that gauge", source: saeLeast },
  },
  rows: [
    ["18", 18, 0.779],
    ["16", 16, 1.184],
    ["14", 14, 1.876],
    ["12", 12, 2.956],
    ["10", 10, 4.734],
    ["8", 8, 7.504],
    ["6", 6, 12.434],
    ["4", 4, 18.931],
    ["3", 3, null],
    ["2", 2, 31.644],
    ["1", 1, 39.417],
    ["1/0", 0, 50.154],
    ["2/0", -1, 63.389],
    ["3/0", -2, 80.364],
    ["4/0", -3, 104.128],
  ],
});
