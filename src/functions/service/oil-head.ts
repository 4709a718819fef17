import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { waterCaution } from "../conductor/cautions";

const rule = identity("oil column of depth + head presses at the seal as hard as water of that depth");

export const oilHead = defineFunction({
  name: "OIL.HEAD",
  title: "Least height of the oil header above the waterline",
  args: {
    depth: { unit: "mm", about: "waterline down to the shaft's seal, deep condition", min: 0, max: 20000 },
    oil: { unit: "kg/m3", about: "density of the oil", min: 700, max: 1100, otherwise: 890 },
    water: { unit: "kg/m3", about: "density of the water", min: 990, max: 1050, otherwise: 1025 },
  },
  steps: [
    {
      kind: "require",
      holds: "oil <= water",
      says: "oil: {oil} kg/m3 is heavier than the water's {water} kg/m3 (allowed 700 up to the water's)",
    },
    {
      kind: "algebra",
      symbol: "h",
      formula: "depth * (water / oil - 1)",
      unit: "mm",
      why: "oil is lighter, so its column must be longer",
    },
  ],
  valid:
    "Balance at rest: at this height oil and sea press alike, so put the header higher, and no higher than the seal's builder allows. Take the deepest loading and the heel in use; density of the oil at its working temperature.",
  caution: waterCaution,
  sources: [rule],
  examples: [
    { given: { depth: 500 }, expect: 76, within: 0.5, source: identity("500·(1025/890 - 1)") },
    { given: { depth: 800 }, expect: 121, within: 0.5, source: identity("800·(1025/890 - 1)") },
    { given: { depth: 1000 }, expect: 152, within: 0.5, source: identity("1000·(1025/890 - 1)") },
  ],
});
