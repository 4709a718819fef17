import { defineFunction } from "../../formula/define";
import type { Source } from "../../formula/source";
import { identity } from "../../formula/source";
import { iec60364Protective } from "../../tables/electrical-sources";
import { liveCaution } from "./cautions";

const shipCableTable: Source = {
  evidence: "published",
  title: "Short-circuit table of a public ship cable data sheet",
  note: "85 to 250 °C, printed in kA to one decimal",
};

export const conductorWithstand = defineFunction({
  name: "CONDUCTOR.WITHSTAND",
  title: "Fault current that a conductor stands",
  args: {
    area: { unit: "mm2", about: "cross-section of one conductor", min: 0, aboveMin: true, max: 1000 },
    seconds: { unit: "s", about: "until the fuse has cleared", min: 0, aboveMin: true, max: 5 },
    k: { unit: "1", about: "factor of copper and insulation, A√s/mm2", min: 20, max: 250, otherwise: 115 },
  },
  constants: {
    each: {
      value: 1,
      unit: "A s0.5/mm2",
      about: "unit of k",
      source: iec60364Protective,
    },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "I",
      formula: "k * each * area / sqrt(seconds)",
      unit: "A",
      why: "all heat stays in the copper",
    },
  ],
  valid:
    "Faults of at most 5 s. k is 115 for PVC of 70 °C, 100 of 90 °C, 143 for cross-linked polyethylene; about 87 by calculation for a 105 °C PVC boat cable. Use the fuse's total clearing time. With legs side by side each must stand the fault alone. Look also at the least fault current, of a cold or weak battery: it may blow a large fuse too slowly.",
  caution: liveCaution,
  sources: [iec60364Protective],
  examples: [
    { given: { area: 50, seconds: 1, k: 146 }, expect: 7300, within: 50, source: shipCableTable },
    { given: { area: 50, seconds: 3, k: 146 }, expect: 4200, within: 50, source: shipCableTable },
    { given: { area: 50, seconds: 4 }, expect: 2875, within: 1e-9, source: identity("115·50/√4") },
  ],
});
