import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { backingPatch, isoOtherFibres, isoPlyThickness } from "../../tables/laminate-sources";
import { fabric, fibre, fraction, gPerKg, resin } from "./layer";

export const plyThickness = defineFunction({
  name: "PLY.THICKNESS",
  title: "Thickness of one ply",
  args: { fabric, fraction, fibre, resin },
  constants: { gPerKg },
  steps: [
    { kind: "algebra", symbol: "w", formula: "fabric / gPerKg", unit: "kg/m2", why: "dry reinforcement in kilograms" },
    {
      kind: "algebra",
      symbol: "t",
      formula: "w * (1 / fibre + (1 - fraction) / (fraction * resin))",
      unit: "mm",
      why: "volume of fibre and of resin on a square metre; a dm3 on a m2 is a mm",
    },
  ],
  valid:
    "No voids. At 2.56 and 1.20 it is the standard's glass and polyester formula. For the thickness wanted take the " +
    "fraction of a simple surface; for the resin to buy take that of a complex one, which a joint in a bow locker is.",
  sources: [isoPlyThickness, identity("Rule of mixtures: 2.56·1.20 = 3.072 and 2.56 − 1.20 = 1.36")],
  examples: [
    { given: { fabric: 450, fraction: 0.3 }, expect: 1.0508, within: 5e-5, source: isoPlyThickness },
    {
      given: { fabric: 1000, fraction: 0.5, fibre: 1.8 },
      expect: 1.3889,
      within: 5e-5,
      source: isoOtherFibres,
    },
    {
      given: { fabric: 1373.19, fraction: 0.3 },
      expect: 3.2,
      within: 0.05,
      source: { ...backingPatch, note: "three layers of mat of 1.5 oz/ft2 print 3.2 mm" },
    },
    {
      given: { fabric: 600, fraction: 0.5, fibre: 2.56, resin: 1.15 },
      expect: 0.7561,
      within: 5e-5,
      source: identity("0.6·(1/2.56 + 1/1.15) = 0.7561"),
    },
  ],
});
