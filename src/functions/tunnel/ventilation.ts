import { defineFunction } from "../../formula/define";
import { ventilationCurve } from "../../tables/hydraulics-sources";
import { axisDepth, diameter } from "./bore";

export const tunnelVentilation = defineFunction({
  name: "TUNNEL.VENTILATION",
  title: "Thrust left when the propeller draws air (from memory)",
  args: { axisDepth: { ...axisDepth, about: "tunnel axis below the still waterline", min: 0 }, diameter },
  constants: {
    full: { value: 1.3, unit: "1", about: "depth in radii with no loss", source: ventilationCurve },
    dry: { value: 0.675, unit: "1", about: "loss with the axis at the surface", source: ventilationCurve },
    slope: { value: 0.769, unit: "1", about: "1/1.3 as the curve writes it", source: ventilationCurve },
    bend: { value: 1.258, unit: "1", about: "exponent of the curve", source: ventilationCurve },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "x",
      formula: "axisDepth / (diameter / 2)",
      unit: "1",
      why: "axis depth in radii of the tube",
    },
    {
      kind: "algebra",
      symbol: "beta",
      formula: "x >= full ? 1 : 1 - dry * (1 - slope * x)^bend",
      unit: "1",
      why: "no loss from 1.3 radii down, a curve above",
    },
  ],
  valid:
    "The curve is from memory and not confirmed: no copy that prints it was found. It is for moderately loaded open propellers; a thruster at full power draws air from deeper, so 1.3 radii is a floor and not a target.",
  sources: [ventilationCurve],
  examples: [
    { given: { axisDepth: 0, diameter: 200 }, expect: 0.325, within: 5e-4, source: ventilationCurve },
    { given: { axisDepth: 50, diameter: 200 }, expect: 0.6334, within: 5e-5, source: ventilationCurve },
    { given: { axisDepth: 100, diameter: 200 }, expect: 0.8932, within: 5e-5, source: ventilationCurve },
    { given: { axisDepth: 130, diameter: 200 }, expect: 1, within: 0, source: ventilationCurve },
  ],
});
