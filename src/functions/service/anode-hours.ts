import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { dnvAnodes } from "../../tables/electrical-sources";
import { startCaution } from "../conductor/cautions";

export const anodeHours = defineFunction({
  name: "ANODE.HOURS",
  title: "Hours until an anode is used up",
  args: {
    mass: { unit: "g", about: "of anode that may be used", min: 0, max: 1000000 },
    current: { unit: "A", about: "that it gives", min: 0, aboveMin: true, max: 1000 },
    capacity: { unit: "Ah/kg", about: "zinc 780, aluminium 2000", min: 100, max: 3000, otherwise: 780 },
  },
  constants: { gPerKg: { value: 1000, unit: "g/kg", about: "grams in a kg", source: identity("SI") } },
  steps: [
    {
      kind: "algebra",
      symbol: "t",
      formula: "mass / gPerKg * capacity / current",
      unit: "h",
      why: "charge in the metal over current",
    },
  ],
  valid:
    "All of the mass given, at one steady current; change an anode at half its mass. A live terminal that touches the motor's case can take an anode in a day or two, then the leg behind it: hours instead of months point to a fault. The capacity of zinc is from memory of the named text.",
  caution: startCaution,
  sources: [dnvAnodes, identity("charge = current × time")],
  examples: [
    { given: { mass: 100, current: 1 }, expect: 78, within: 1e-9, source: identity("0.1 kg × 780 Ah/kg / 1 A") },
    {
      given: { mass: 561.52, current: 0.05 },
      expect: 8760,
      within: 0.5,
      source: identity("a year at 50 mA: 0.8 × 701.9 g × 780 Ah/kg / 0.05 A"),
    },
  ],
});
