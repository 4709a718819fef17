import { commonPractice } from "../formula/source";
import { defineTable } from "../formula/table";

/**
 * A first figure for joints in the resistance budget, to be replaced by a measurement. A washer between lug and
 * contact face multiplies it several times.
 */
export const jointResistance = defineTable({
  title: "Resistance of a lug with its bolt",
  source: commonPractice("planning figures for a crimped lug on its stud"),
  key: { name: "state", about: "state of the joint" },
  columns: { each: { unit: "mohm", about: "each lug end" } },
  rows: [
    ["good", 0.03],
    ["aged", 0.1],
    ["doubtful", 0.2],
  ],
});
