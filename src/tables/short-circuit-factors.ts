import type { Source } from "../formula/source";
import { defineTable } from "../formula/table";
import { iec60364Protective } from "./electrical-sources";

const shipCable: Source = {
  evidence: "published",
  title: "Short-circuit table of a public ship cable data sheet",
  note: "I = 146·S/√t, read with the values for 35 to 120 mm2",
};

/**
 * Factor k for copper: a conductor of S mm2 stands k·S/√t amperes for t seconds, from the loaded temperature
 * to the one its insulation survives.
 */
export const shortCircuitFactors = defineTable({
  title: "Short-circuit factors of copper conductors",
  source: iec60364Protective,
  key: { name: "insulation", about: "insulation and size" },
  columns: {
    loaded: { unit: "degC", about: "before the fault" },
    survived: { unit: "degC", about: "after the fault" },
    k: { unit: "A s0.5/mm2", about: "factor" },
  },
  rows: [
    ["PVC 70 °C, to 300 mm2", 70, 160, 115],
    ["PVC 70 °C, above 300 mm2", 70, 140, 103],
    ["PVC 90 °C, to 300 mm2", 90, 160, 100],
    ["PVC 90 °C, above 300 mm2", 90, 140, 86],
    ["XLPE or EPR 90 °C", 90, 250, 143],
    ["rubber 60 °C", 60, 200, 141],
    ["rubber 85 °C", 85, 220, 134],
    ["silicone 180 °C", 180, 350, 132],
    ["ship cable XLPE 85 °C", 85, 250, 146],
  ],
  rowSources: { "ship cable XLPE 85 °C": shipCable },
});
