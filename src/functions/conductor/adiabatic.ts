import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { iec60949, its90 } from "../../tables/electrical-sources";
import { heatCaution } from "./cautions";
import { adiabaticConstant, meltingPoint, zeroResistance } from "./copper";

const checked = (arithmetic: string) => identity(`(234.5 + start)·exp((I/(226·S))²·t) - 234.5: ${arithmetic}`);

export const conductorAdiabatic = defineFunction({
  name: "CONDUCTOR.ADIABATIC",
  title: "Temperature of a conductor that loses no heat",
  args: {
    area: { unit: "mm2", about: "cross-section", min: 0, aboveMin: true, max: 1000 },
    current: { unit: "A", about: "in this conductor", min: 0, max: 100000 },
    seconds: { unit: "s", about: "length of the run or of the fault", min: 0, max: 3600 },
    start: { unit: "degC", about: "conductor at the start", min: -40, max: 250, otherwise: 30 },
  },
  constants: { K: adiabaticConstant, zero: zeroResistance, melting: meltingPoint },
  steps: [
    {
      kind: "algebra",
      symbol: "x",
      formula: "current / (K * area) * current / (K * area) * seconds",
      unit: "1",
      why: "growth of the resistance, as a logarithm",
    },
    {
      kind: "algebra",
      symbol: "hot",
      formula: "(start - zero) * exp(x)",
      unit: "K",
      why: "temperature counted from where copper's resistance would vanish",
    },
    {
      kind: "require",
      holds: "zero + hot <= melting",
      says: "current: {current} A for {seconds} s would take the copper past its melting point ({melting} °C); take a larger conductor or a shorter time",
    },
    { kind: "algebra", symbol: "T", formula: "zero + hot", unit: "degC", why: "back to °C" },
  ],
  valid:
    "Upper bound: all heat stays in the copper. True to a few per cent up to 5 s; for a run of minutes it is the careful end and CONDUCTOR.WARM the likely one. Start a fault from the loaded temperature and use the fuse's total clearing time. Refused past copper's melting point; insulation is gone long before.",
  caution: heatCaution,
  sources: [iec60949, its90],
  examples: [
    { given: { area: 50, current: 300, seconds: 180 }, expect: 65.78, within: 5e-3, source: checked("x = 0.12687") },
    { given: { area: 35, current: 300, seconds: 180 }, expect: 108.17, within: 5e-3, source: checked("x = 0.25892") },
    {
      given: { area: 95, current: 400, seconds: 300, start: 40 },
      expect: 70.13,
      within: 5e-3,
      source: checked("x = 0.10413"),
    },
  ],
});
