import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";

export const plyFraction = defineFunction({
  name: "PLY.FRACTION",
  title: "Fibre fraction from resin to glass",
  args: {
    ratio: { unit: "1", about: "resin to glass by mass", min: 0, max: 20 },
  },
  steps: [{ kind: "algebra", symbol: "psi", formula: "1 / (1 + ratio)", unit: "1", why: "glass over glass and resin" }],
  valid: "Masses, not volumes. The trade rounds: 2.5:1 is called 30 % glass, 1.25:1 45 %.",
  sources: [identity("Definition of the fibre fraction by mass")],
  examples: [
    { given: { ratio: 2.5 }, expect: 0.2857, within: 5e-5, source: identity("1/3.5 = 0.2857") },
    { given: { ratio: 1.25 }, expect: 0.4444, within: 5e-5, source: identity("1/2.25 = 0.4444") },
  ],
});
