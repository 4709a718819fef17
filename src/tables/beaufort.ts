import { defineTable } from "../formula/table";
import { beaufortScale } from "./weather-sources";

/** Mean wind at 10 m by Beaufort force. The knots of the scale were rounded on their own: 21 kn is 10.8 m/s. */
export const beaufort = defineTable({
  title: "Beaufort scale",
  source: beaufortScale,
  key: { name: "force", about: "Beaufort force" },
  columns: {
    lower: { unit: "m/s", about: "lower limit of the mean wind" },
    upper: { unit: "m/s", about: "upper limit of the mean wind" },
  },
  rows: [
    [0, 0, 0.2],
    [1, 0.3, 1.5],
    [2, 1.6, 3.3],
    [3, 3.4, 5.4],
    [4, 5.5, 7.9],
    [5, 8, 10.7],
    [6, 10.8, 13.8],
    [7, 13.9, 17.1],
    [8, 17.2, 20.7],
    [9, 20.8, 24.4],
    [10, 24.5, 28.4],
    [11, 28.5, 32.6],
    [12, 32.7, null],
  ],
});
