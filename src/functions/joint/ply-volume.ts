import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { compositesPrimer } from "../../tables/laminate-sources";
import { anyFraction, fibre, resin } from "./layer";

export const plyVolume = defineFunction({
  name: "PLY.VOLUME",
  title: "Fibre share of a laminate's volume",
  args: { fraction: anyFraction, fibre, resin },
  steps: [
    {
      kind: "algebra",
      symbol: "f",
      formula: "fraction / fibre",
      unit: "dm3/kg",
      why: "fibre in a kilogram of laminate",
    },
    {
      kind: "algebra",
      symbol: "r",
      formula: "(1 - fraction) / resin",
      unit: "dm3/kg",
      why: "resin in a kilogram of laminate",
    },
    { kind: "algebra", symbol: "V", formula: "f / (f + r)", unit: "1", why: "fibre over all" },
  ],
  valid: "No voids.",
  sources: [identity("Volumes of fibre and resin from their masses")],
  examples: [
    {
      given: { fraction: 0.5 },
      expect: 0.3191,
      within: 5e-5,
      source: identity("(0.5/2.56)/(0.5/2.56 + 0.5/1.20) = 0.3191"),
    },
    { given: { fraction: 0.8294, fibre: 2.5, resin: 1.2 }, expect: 0.7, within: 1e-4, source: compositesPrimer },
  ],
});
