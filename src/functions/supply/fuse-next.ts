import { defineFunction } from "../../formula/define";
import { cfr183Protection, nec240, r10Ratings } from "../../tables/electrical-sources";
import { fuseRatingsNec } from "../../tables/fuse-ratings-nec";
import { fuseRatingsR10 } from "../../tables/fuse-ratings-r10";
import { liveCaution } from "../conductor/cautions";

export const fuseNext = defineFunction({
  name: "FUSE.NEXT",
  title: "Next standard fuse rating",
  args: {
    current: { unit: "A", about: "that the fuse must carry", min: 0, max: 100000 },
    series: { kind: "text", about: "which list of ratings", choices: ["NEC", "R10"], otherwise: "NEC" },
  },
  steps: [
    {
      kind: "first",
      symbol: "I",
      table: { by: "series", of: { NEC: fuseRatingsNec, R10: fuseRatingsR10 } },
      where: "rating >= current",
      take: "rating",
      none: "current: above the largest standard rating of that series (6000 A for NEC, 1600 A for R10)",
      unit: "A",
      why: "first rating that is not below the current",
    },
  ],
  valid:
    "Rating only. 33 CFR 183.455 lets it reach 150 % of the conductor's current below 50 V, other rules 100 %: choose one and show which. Its time-current curve must hold for the longest run, its breaking capacity must cover the fault (a 32 V strip fuse to ISO 8820-5 breaks 2 kA only). The series R10 is from memory.",
  caution: liveCaution,
  sources: [nec240, r10Ratings, cfr183Protection],
  examples: [
    { given: { current: 310 }, expect: 350, within: 0, source: nec240 },
    { given: { current: 250 }, expect: 250, within: 0, source: nec240 },
    { given: { current: 260, series: "R10" }, expect: 315, within: 0, source: r10Ratings },
  ],
});
