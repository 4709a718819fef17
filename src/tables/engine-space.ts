import { defineTable } from "../formula/table";
import { cfr183EngineSpace, cfr183EngineSpaceOthers } from "./electrical-sources";

/** What is left of a conductor's carrying current in an engine space at 50 °C, by insulation. */
export const engineSpaceFactors = defineTable({
  title: "33 CFR 183.425 engine-space factors",
  source: cfr183EngineSpace,
  key: { name: "insulation", about: "temperature rating of the insulation", unit: "degC" },
  columns: { factor: { unit: "1", about: "times the carrying current in 30 °C" } },
  rows: [
    [60, 0.58],
    [75, 0.75],
    [80, 0.78],
    [90, 0.82],
    [105, 0.85],
    [125, 0.89],
    [200, 1],
  ],
  rowSources: {
    "60": cfr183EngineSpaceOthers,
    "75": cfr183EngineSpaceOthers,
    "80": cfr183EngineSpaceOthers,
    "90": cfr183EngineSpaceOthers,
    "125": cfr183EngineSpaceOthers,
    "200": cfr183EngineSpaceOthers,
  },
});
