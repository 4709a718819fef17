import { defineTable } from "../formula/table";
import { r10Ratings } from "./electrical-sources";

/** Rated currents of fuses in the series of preferred numbers R10, with 6, 25, 32, 63 and so on as devices print them. */
export const fuseRatingsR10 = defineTable({
  title: "R10 fuse ratings",
  source: r10Ratings,
  key: { name: "rating", about: "rated current", unit: "A" },
  columns: {},
  rows: [
    2, 4, 6, 10, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600,
  ].map((rating) => [rating] as const),
});
