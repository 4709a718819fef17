import { defineTable } from "../formula/table";
import { blendermann } from "./weather-sources";

/** Coefficients of the wind's force on ships and boats. */
export const windLoads = defineTable({
  title: "Wind loads by kind of vessel",
  source: blendermann,
  key: { name: "vessel", about: "kind of vessel" },
  columns: {
    side: { unit: "1", about: "side force, beam wind, on the lateral area" },
    bow: { unit: "1", about: "fore-and-aft force, wind from ahead, on the frontal area" },
    stern: { unit: "1", about: "fore-and-aft force, wind from astern, on the frontal area" },
    shape: { unit: "1", about: "how the side force bulges between ahead and abeam" },
  },
  rows: [
    ["Car carrier", 0.95, 0.55, 0.6, 0.8],
    ["Cargo vessel loaded", 0.85, 0.65, 0.55, 0.4],
    ["Cargo vessel container on deck", 0.85, 0.55, 0.5, 0.4],
    ["Container ship loaded", 0.9, 0.55, 0.55, 0.4],
    ["Destroyer", 0.85, 0.6, 0.65, 0.65],
    ["Diving support vessel", 0.9, 0.6, 0.8, 0.55],
    ["Drilling vessel", 1, 0.85, 0.925, 0.1],
    ["Ferry", 0.9, 0.45, 0.5, 0.8],
    ["Fishing vessel", 0.95, 0.7, 0.7, 0.4],
    ["LNG tanker", 0.7, 0.6, 0.65, 0.5],
    ["Offshore supply vessel", 0.9, 0.55, 0.8, 0.55],
    ["Passenger liner", 0.9, 0.4, 0.4, 0.8],
    ["Research vessel", 0.85, 0.55, 0.65, 0.6],
    ["Speed boat", 0.9, 0.55, 0.6, 0.6],
    ["Tanker loaded", 0.7, 0.9, 0.55, 0.4],
    ["Tanker in ballast", 0.7, 0.75, 0.55, 0.4],
    ["Tender", 0.85, 0.55, 0.55, 0.65],
  ],
});
