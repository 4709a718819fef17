import { defineTable } from "../formula/table";
import { kirschmerBars } from "./hydraulics-sources";

/** How much the section of a bar weighs in the loss of a grid. */
export const gridBars = defineTable({
  title: "Bar factors of a grid",
  source: kirschmerBars,
  key: { name: "bar", about: "section of the bar, flow from the left" },
  columns: { factor: { unit: "1", about: "bar factor" } },
  rows: [
    ["square", 2.42],
    ["rounded front", 1.83],
    ["round", 1.79],
    ["rounded both ends", 1.67],
    ["streamlined", 0.76],
  ],
});
