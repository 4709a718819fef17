import type { Source } from "../formula/source";
import { defineTable } from "../formula/table";

const iso10133: Source = {
  evidence: "published",
  title: "ISO 10133, Small craft: extra-low-voltage direct-current installations",
  clause: "7.3 and 7.4",
  edition: "2012",
};
const cfr46: Source = { evidence: "published", title: "46 CFR 183.340", clause: "(b)(4)" };
const hongKong: Source = {
  evidence: "published",
  title: "Hong Kong, Code of practice for the Electricity (Wiring) Regulations",
  clause: "25",
  edition: "2009",
};
const wiringGuide: Source = {
  evidence: "published",
  title: "Institution of Electrical Engineers, guidance to the wiring regulations",
  clause: "table 4.10",
  note: "PVC cable, by outside diameter; read in one copy",
};

/** How far apart a cable may be held. 33 CFR 183 names no spacing. */
export const cableSupports = defineTable({
  title: "Supports of cables",
  source: iso10133,
  key: { name: "where", about: "run or cable" },
  columns: {
    level: { unit: "mm", about: "at most, along a level run" },
    upright: { unit: "mm", about: "at most, along an upright run" },
  },
  rows: [
    ["end or bend", 150, 150],
    ["cable to 9 mm", 250, 400],
    ["cable 10 to 15 mm", 300, 400],
    ["battery conductor up to the switch", 300, 300],
    ["cable 16 to 20 mm", 350, 450],
    ["cable 21 to 40 mm", 400, 550],
    ["conductor outside conduit or tray", 450, 450],
    ["metal supports, passenger vessel", 610, 610],
    ["first support from the battery terminal", 1000, 1000],
  ],
  rowSources: {
    "end or bend": hongKong,
    "cable to 9 mm": wiringGuide,
    "cable 10 to 15 mm": wiringGuide,
    "cable 16 to 20 mm": wiringGuide,
    "cable 21 to 40 mm": wiringGuide,
    "metal supports, passenger vessel": cfr46,
  },
});
