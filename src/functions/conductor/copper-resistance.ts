import { defineFunction } from "../../formula/define";
import type { Source } from "../../formula/source";
import { identity } from "../../formula/source";
import { iec60028 } from "../../tables/electrical-sources";
import { alpha, referenceTemperature, resistivity } from "./copper";
import { temperature } from "./run-arguments";

const wireTable: Source = {
  evidence: "published",
  title: "Georgia State University, HyperPhysics, American wire gauge",
  clause: "ohms in 1000 ft at 20 °C",
};

export const copperResistance = defineFunction({
  name: "COPPER.RESISTANCE",
  title: "Resistance of a copper bar or solid wire",
  args: {
    area: { unit: "mm2", about: "true cross-section", min: 0, aboveMin: true, max: 10000 },
    run: { unit: "m", about: "length of conductor out and back", min: 0, max: 10000 },
    temperature,
  },
  constants: { rho: resistivity, alpha, T20: referenceTemperature },
  steps: [
    {
      kind: "algebra",
      symbol: "R",
      formula: "rho * run / area * (1 + alpha * (temperature - T20))",
      unit: "ohm",
      why: "resistivity, length over cross-section, temperature",
    },
  ],
  valid:
    "Pure annealed copper of known cross-section, about -20 to 150 °C: busbars, solid wire, gauges by AWG.AREA. Stranding and tinning add 2 to 19 %; for a cable sold by mm2 use CONDUCTOR.RESISTANCE, because a nominal size is defined by its resistance.",
  sources: [iec60028],
  examples: [
    { given: { area: 53.4751, run: 304.8 }, expect: 0.0983, within: 5e-5, source: wireTable },
    { given: { area: 107.2193, run: 304.8 }, expect: 0.049, within: 5e-4, source: wireTable },
    {
      given: { area: 50, run: 29, temperature: 75 },
      expect: 0.0121615,
      within: 5e-9,
      source: identity("29/(58·50)·(1 + 0.00393·55)"),
    },
  ],
});
