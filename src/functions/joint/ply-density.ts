import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { compositesPrimer } from "../../tables/laminate-sources";
import { anyFraction, fibre, resin } from "./layer";

export const plyDensity = defineFunction({
  name: "PLY.DENSITY",
  title: "Density of a laminate",
  args: { fraction: anyFraction, fibre, resin },
  steps: [
    {
      kind: "algebra",
      symbol: "rho",
      formula: "1 / (fraction / fibre + (1 - fraction) / resin)",
      unit: "kg/dm3",
      why: "a kilogram over the volumes of its fibre and its resin",
    },
  ],
  valid: "No voids.",
  sources: [identity("Volumes of fibre and resin from their masses")],
  examples: [
    {
      given: { fraction: 0.5 },
      expect: 1.634,
      within: 5e-4,
      source: identity("1/(0.5/2.56 + 0.5/1.20) = 1.634"),
    },
    { given: { fraction: 0.8294, fibre: 2.5, resin: 1.2 }, expect: 2.11, within: 1e-3, source: compositesPrimer },
  ],
});
