import { defineTable } from "../formula/table";
import { cfr183Table5, cfr183Table5OneCopy } from "./electrical-sources";

const oneCopy = (celsius: number) =>
  ({ unit: "A", about: `insulation rated ${celsius} °C`, source: cfr183Table5OneCopy }) as const;

/** Amperes that a stranded copper conductor may carry continuously in 30 °C, by gauge and insulation. */
export const carryingCurrent = defineTable({
  title: "33 CFR 183.425 table 5",
  source: cfr183Table5,
  key: { name: "gauge", about: "American wire gauge" },
  columns: {
    "60": oneCopy(60),
    "75": oneCopy(75),
    "80": oneCopy(80),
    "90": oneCopy(90),
    "105": { unit: "A", about: "insulation rated 105 °C" },
    "125": oneCopy(125),
    "200": oneCopy(200),
  },
  rows: [
    ["18", 10, 10, 15, 20, 20, 25, 25],
    ["16", 15, 15, 20, 25, 25, 30, 35],
    ["14", 20, 20, 25, 30, 35, 40, 45],
    ["12", 25, 25, 35, 40, 45, 50, 55],
    ["10", 40, 40, 50, 55, 60, 70, 70],
    ["8", 55, 65, 70, 70, 80, 90, 100],
    ["6", 80, 95, 100, 100, 120, 125, 135],
    ["4", 105, 125, 130, 135, 160, 170, 180],
    ["3", 120, 145, 150, 155, 180, 195, 210],
    ["2", 140, 170, 175, 180, 210, 225, 240],
    ["1", 165, 195, 210, 210, 245, 265, 280],
    ["1/0", 195, 230, 245, 245, 285, 305, 325],
    ["2/0", 225, 265, 285, 285, 330, 355, 370],
    ["3/0", 260, 310, 330, 330, 385, 410, 430],
    ["4/0", 300, 360, 385, 385, 445, 475, 510],
  ],
});
