import type { Source } from "../formula/source";
import { defineTable } from "../formula/table";
import { saeJ537 } from "./electrical-sources";

const en50342: Source = { evidence: "published", title: "EN 50342-1, Lead-acid starter batteries" };
const din43539: Source = { evidence: "published", title: "DIN 43539-2, Starter batteries", note: "withdrawn" };
const iec60095: Source = { evidence: "published", title: "IEC 60095-1, Lead-acid starter batteries, an older edition" };
const marine: Source = {
  evidence: "published",
  title: "Marine cranking rating as battery data sheets define it",
  note: "1.20 V a cell",
};

/**
 * What "cranking amperes" means: the current that a 12 V battery gives while its voltage stays at least so high
 * for so long. The ratings cannot be exchanged for one another.
 */
export const batteryCranking = defineTable({
  title: "Definitions of cranking current",
  source: saeJ537,
  key: { name: "rating", about: "definition" },
  columns: {
    temperature: { unit: "degC", about: "of the battery" },
    volts: { unit: "V", about: "least voltage of a 12 V battery" },
    seconds: { unit: "s", about: "after so long; total time where the test has two parts" },
  },
  rows: [
    ["SAE J537", -18, 7.2, 30],
    ["EN 50342-1, first part", -18, 7.5, 10],
    ["EN 50342-1, class C1", -18, 6, 90],
    ["EN 50342-1, class C2", -18, 6, 150],
    ["DIN 43539-2, first part", -18, 9, 30],
    ["DIN 43539-2, second part", -18, 6, 150],
    ["IEC 60095-1, older edition", -18, 8.4, 60],
    ["marine cranking", 0, 7.2, 30],
  ],
  rowSources: {
    "EN 50342-1, first part": en50342,
    "EN 50342-1, class C1": en50342,
    "EN 50342-1, class C2": en50342,
    "DIN 43539-2, first part": din43539,
    "DIN 43539-2, second part": din43539,
    "IEC 60095-1, older edition": iec60095,
    "marine cranking": marine,
  },
});
