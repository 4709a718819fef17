import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { mm2PerM2 } from "../../tables/metre";
import { glassDust } from "./cautions";
import { edge, width } from "./ring";

const steiner = identity("Steiner: area of the strip outside a convex curve, P·w + π·w²");

export const jointHullBand = defineFunction({
  name: "JOINT.HULLBAND",
  title: "Band on the hull round the hole",
  args: { edge, width },
  constants: { mm2PerM2 },
  steps: [
    {
      kind: "algebra",
      symbol: "A",
      formula: "edge * width + pi * width * width",
      unit: "mm2",
      why: "edge times width, and the corners that the turn adds up to a whole circle",
    },
    { kind: "algebra", symbol: "area", formula: "A / mm2PerM2", unit: "m2", why: "in square metres" },
  ],
  valid:
    "Outside a convex edge on a skin that is nearly flat. The band must end short of frames, stem and the other side.",
  caution: glassDust,
  sources: [steiner],
  examples: [
    {
      given: { edge: 628.3185307, width: 50 },
      expect: 0.0392699,
      within: 5e-8,
      source: identity("π(150² − 100²) mm2 = 0.0392699 m2, a ring round a circle of 100 mm"),
    },
  ],
});
