import type { Source } from "../formula/source";
import { defineTable } from "../formula/table";

const part5: Source = {
  evidence: "published",
  title: "ISO 8820-5, Road vehicles, fuse-links: bolt-in strip fuses",
  edition: "2015",
};
const part4: Source = {
  evidence: "published",
  title: "ISO 8820-4, Road vehicles, fuse-links: female contacts and bolt-in contacts",
  edition: "2016",
};
const iso20934: Source = {
  evidence: "published",
  title: "ISO 20934, Road vehicles, fuse-links for 48 V",
  edition: "2019",
};

/** The largest current that a fuse can break; a warm battery bank may drive more than that. */
export const fuseBreaking = defineTable({
  title: "Breaking capacity of fuse types",
  source: part5,
  key: { name: "type", about: "standard of the fuse" },
  columns: {
    volts: { unit: "V", about: "rated voltage" },
    largest: { unit: "A", about: "largest rated current" },
    breaks: { unit: "A", about: "breaking capacity" },
  },
  rows: [
    ["ISO 8820-4", 32, 140, 1000],
    ["ISO 8820-5", 32, 500, 2000],
    ["ISO 20934", 70, 500, 2500],
  ],
  rowSources: { "ISO 8820-4": part4, "ISO 20934": iso20934 },
});
