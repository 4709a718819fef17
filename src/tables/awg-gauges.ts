import { defineTable } from "../formula/table";
import { astmB258 } from "./electrical-sources";

/** The gauges of boat wiring with the number that the rule for their diameter counts with: 1/0 is 0, 4/0 is -3. */
export const awgGauges = defineTable({
  title: "AWG gauges",
  source: astmB258,
  key: { name: "gauge", about: "American wire gauge" },
  columns: { number: { unit: "1", about: "number in the rule for the diameter" } },
  rows: [
    ["18", 18],
    ["17", 17],
    ["16", 16],
    ["15", 15],
    ["14", 14],
    ["13", 13],
    ["12", 12],
    ["11", 11],
    ["10", 10],
    ["9", 9],
    ["8", 8],
    ["7", 7],
    ["6", 6],
    ["5", 5],
    ["4", 4],
    ["3", 3],
    ["2", 2],
    ["1", 1],
    ["1/0", 0],
    ["2/0", -1],
    ["3/0", -2],
    ["4/0", -3],
  ],
});
