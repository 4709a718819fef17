import { defineFunction } from "../../formula/define";
import type { Source } from "../../formula/source";
import { identity } from "../../formula/source";
import { liveCaution } from "../conductor/cautions";

const distributionGuide: Source = {
  evidence: "published",
  title: "Worked case of a public guide to direct-current distribution",
  note: "110 cells of 0.5 mohm; the guide prints 4.37 kA, the quotient is 4.36; four strings 17.5 kA",
};

export const supplyFault = defineFunction({
  name: "SUPPLY.FAULT",
  title: "Current into a dead short",
  args: {
    volts: { unit: "V", about: "of the battery at rest", min: 0, max: 1000 },
    resistance: { unit: "ohm", about: "all of the loop: battery, links, cable", min: 0, aboveMin: true, max: 1000 },
  },
  steps: [{ kind: "algebra", symbol: "I", formula: "volts / resistance", unit: "A", why: "Ohm's law" }],
  valid:
    "Steady value. Hold a breaking capacity against the larger of this with the warm battery (about 0.4 of its cold resistance) and ten times its ampere-hours; small sealed batteries of high rate give more. Hold the fuse's clearing time against the least: cold battery and the whole cable. A 32 V strip fuse to ISO 8820-5 breaks 2 kA only, so breaking capacity is a check of its own.",
  caution: liveCaution,
  sources: [identity("Ohm's law")],
  examples: [
    { given: { volts: 240, resistance: 0.055 / 4 }, expect: 17500, within: 50, source: distributionGuide },
    { given: { volts: 12.6, resistance: 0.0083077 }, expect: 1500, within: 50, source: identity("12.6 V/8.31 mohm") },
    { given: { volts: 24, resistance: 0.012 }, expect: 2000, within: 1e-9, source: identity("24 V/12 mohm") },
  ],
});
