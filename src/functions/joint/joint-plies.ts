import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { mm2PerM2 } from "../../tables/metre";
import { resinVapour } from "./cautions";
import { diameter, edge } from "./ring";

export const jointPlies = defineFunction({
  name: "JOINT.PLIES",
  title: "Fabric of all plies of one joint",
  args: {
    diameter,
    edge,
    first: { unit: "mm", about: "leg of the first ply on hull and tube", min: 0, aboveMin: true, max: 1000 },
    step: { unit: "mm", about: "what each further ply reaches beyond the last", min: 0, max: 200 },
    count: { unit: "1", about: "plies", whole: true, min: 1, max: 60 },
  },
  constants: { mm2PerM2 },
  steps: [
    {
      kind: "sum",
      symbol: "A",
      index: "i",
      count: "count",
      most: 60,
      term: "pi * diameter * (first + i * step) + edge * (first + i * step) + pi * (first + i * step) * (first + i * step)",
      unit: "mm2",
      why: "band on the tube and band on the hull, ply by ply",
    },
    { kind: "algebra", symbol: "area", formula: "A / mm2PerM2", unit: "m2", why: "in square metres" },
  ],
  valid:
    "One end, one side of the shell, both legs alike; a job has up to four. Check that the longest leg fits between " +
    "the two hull sides and short of the motor's saddle. Net area, without laps and offcuts.",
  caution: resinVapour,
  sources: [identity("Steiner on the hull, a cylinder on the tube: Σ πDf + Pf + πf²")],
  examples: [
    {
      given: { diameter: 200, edge: 628.3185307, first: 50, step: 25, count: 1 },
      expect: 0.07069,
      within: 2e-5,
      source: identity("(π·200·50 + π·200·50 + π·50²) mm2 = 0.07069 m2"),
    },
    {
      given: { diameter: 200, edge: 628.3185307, first: 50, step: 25, count: 4 },
      expect: 0.54585,
      within: 1e-4,
      source: identity("sum over legs of 50, 75, 100, 125 mm"),
    },
  ],
});
