import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";

export const surveySkew = defineFunction({
  name: "SURVEY.SKEW",
  title: "How far a tube stands out of square",
  args: {
    difference: { unit: "mm", about: "difference of two measures that should be equal", min: -10000, max: 10000 },
    span: { unit: "mm", about: "distance between the places measured", min: 0, aboveMin: true, max: 100000 },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "delta",
      formula: "degrees(atan(difference / span))",
      unit: "deg",
      why: "slope of the tube's axis",
    },
  ],
  valid: "Both measures from the same reference, such as a line square to the keel. The sign follows the difference.",
  sources: [identity("Tangent of an angle")],
  examples: [
    { given: { difference: 5, span: 1000 }, expect: 0.2865, within: 5e-5, source: identity("atan(0.005) = 0.2865°") },
    { given: { difference: -100, span: 100 }, expect: -45, within: 1e-9, source: identity("atan(−1) = −45°") },
  ],
});
