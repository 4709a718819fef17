import { defineFunction } from "../../formula/define";
import { carryingCurrent } from "../../tables/carrying-current";
import {
  cfr183EngineSpace,
  cfr183EngineSpaceOthers,
  cfr183Protection,
  cfr183Table5,
} from "../../tables/electrical-sources";
import { engineSpaceFactors } from "../../tables/engine-space";
import { heatCaution } from "./cautions";

const gauges = carryingCurrent.rows.map(([gauge]) => String(gauge)).reverse();

export const conductorCarry = defineFunction({
  name: "CONDUCTOR.CARRY",
  title: "Current that a boat cable may carry, by gauge",
  args: {
    gauge: { kind: "key", about: "American wire gauge, 4/0 to 18", keys: gauges },
    insulation: {
      unit: "degC",
      about: "temperature rating of the insulation",
      oneOf: [60, 75, 80, 90, 105, 125, 200],
      otherwise: 105,
    },
    engineSpace: { kind: "flag", about: "whether the run passes through an engine space", otherwise: false },
  },
  steps: [
    {
      kind: "lookup",
      symbol: "amps",
      table: carryingCurrent,
      key: "gauge",
      column: {
        by: "insulation",
        of: { "60": "60", "75": "75", "80": "80", "90": "90", "105": "105", "125": "125", "200": "200" },
      },
      unit: "A",
      why: "in 30 °C",
    },
    {
      kind: "lookup",
      symbol: "factor",
      table: engineSpaceFactors,
      key: "insulation",
      column: "factor",
      unit: "1",
      why: "what is left in an engine space at 50 °C",
    },
    {
      kind: "algebra",
      symbol: "I",
      formula: "engineSpace ? amps * factor : amps",
      unit: "A",
      why: "the factor counts in an engine space only",
    },
  ],
  valid:
    "Stranded copper, one circuit, continuous current; short surges are not covered by the limit. There is no metric column: never read 50 mm2 as 1/0. 33 CFR 183.455 allows a fuse of up to 150 % of this current below 50 V, other rules none above it: choose one on the page and show which. The engine-space factors other than 0.85 are from memory.",
  caution: heatCaution,
  sources: [cfr183Table5, cfr183EngineSpace, cfr183EngineSpaceOthers, cfr183Protection],
  examples: [
    { given: { gauge: "1/0" }, expect: 285, within: 0, source: cfr183Table5 },
    { given: { gauge: "1/0", engineSpace: true }, expect: 242, within: 0.5, source: cfr183EngineSpace },
    { given: { gauge: "4/0", engineSpace: true }, expect: 378, within: 0.5, source: cfr183EngineSpace },
    { given: { gauge: "2/0", insulation: 60 }, expect: 225, within: 0, source: cfr183Table5 },
  ],
});
