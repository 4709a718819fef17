import { defineTable } from "../formula/table";
import { nec240 } from "./electrical-sources";

/** Standard ampere ratings of fuses; 1, 3, 6, 10 and 601 A are the clause's additional ratings for fuses. */
export const fuseRatingsNec = defineTable({
  title: "NEC standard fuse ratings",
  source: nec240,
  key: { name: "rating", about: "rated current", unit: "A" },
  columns: {},
  rows: [
    1, 3, 6, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400,
    450, 500, 600, 601, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
  ].map((rating) => [rating] as const),
});
