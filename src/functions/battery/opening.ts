import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { batteryAir as rule } from "../../tables/electrical-sources";
import { gasCaution } from "../conductor/cautions";

export const batteryOpening = defineFunction({
  name: "BATTERY.OPENING",
  title: "Size of each of two vents of a battery space",
  args: { air: { unit: "m3/h", about: "as BATTERY.AIR gives it", min: 0, max: 10000 } },
  constants: { each: { value: 28, unit: "cm2 h/m3", about: "free area for each m3/h", source: rule } },
  steps: [
    {
      kind: "algebra",
      symbol: "A",
      formula: "each * air",
      unit: "cm2",
      why: "natural draught through one opening low and one high",
    },
  ],
  valid:
    "Free area of each of two openings, low on one side and high on the other, to the open air; a grille takes part of it away. Natural draught only. Rules for petrol vapour are other rules.",
  caution: gasCaution,
  sources: [rule],
  examples: [
    { given: { air: 0.96 }, expect: 26.88, within: 1e-9, source: identity("28·0.96") },
    { given: { air: 2.4 }, expect: 67.2, within: 1e-9, source: identity("28·2.4") },
  ],
});
