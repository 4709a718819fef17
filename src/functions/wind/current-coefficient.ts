import { defineFunction } from "../../formula/define";
import { crossFlow } from "../../tables/cross-flow";
import { hoerner } from "../../tables/weather-sources";

export const currentCoefficient = defineFunction({
  name: "CURRENT.COEFFICIENT",
  title: "Cross-flow drag of a hull by beam and draught",
  args: {
    beam: { unit: "m", about: "beam at the waterline", min: 0, aboveMin: true, max: 100 },
    draught: { unit: "m", about: "mean draught of the hull body", min: 0, aboveMin: true, max: 30 },
  },
  constants: {
    least: { value: 0.0108623, unit: "1", about: "first point of the curve", source: hoerner },
    most: { value: 4.00309, unit: "1", about: "last point of the curve", source: hoerner },
  },
  steps: [
    { kind: "algebra", symbol: "x", formula: "beam / (2 * draught)", unit: "1", why: "beam over twice the draught" },
    {
      kind: "require",
      holds: "x >= least and x <= most",
      code: "missing",
      says: "beam: {beam} m on a draught of {draught} m gives {x} as beam over twice the draught; the curve runs from {least} to {most}",
    },
    {
      kind: "between",
      symbol: "C",
      points: { table: crossFlow, column: "drag" },
      at: "x",
      unit: "1",
      why: "straight line between points read off the curve",
    },
  ],
  valid: "Ship sections in deep water, square to the flow; keel, skeg and rudder are not in it.",
  sources: [hoerner],
  examples: [
    { given: { beam: 1.30807, draught: 0.5 }, expect: 0.759941, within: 1e-9, source: hoerner },
    { given: { beam: 4.00309, draught: 0.5 }, expect: 0.559315, within: 1e-9, source: hoerner },
  ],
});
