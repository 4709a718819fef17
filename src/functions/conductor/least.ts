import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { conductorResistance } from "../../tables/conductor-resistance";
import { iec60028 } from "../../tables/electrical-sources";
import { iec60228 } from "../../tables/sources";
import { heatCaution } from "./cautions";
import { alpha, metresPerKm, referenceTemperature } from "./copper";
import { current, parallel, run, temperature } from "./run-arguments";

export const conductorLeast = defineFunction({
  name: "CONDUCTOR.LEAST",
  title: "Smallest conductor that keeps a voltage drop",
  args: {
    current,
    run,
    drop: { unit: "V", about: "largest drop allowed in the run", min: 0, aboveMin: true, max: 100 },
    temperature,
    parallel,
  },
  constants: { alpha, T20: referenceTemperature, metresPerKm },
  steps: [
    {
      kind: "first",
      symbol: "S",
      table: conductorResistance,
      // The operations stand in the order of CONDUCTOR.DROP, so that a drop equal to the limit passes to the last bit.
      where: "flexible / metresPerKm * run * (1 + alpha * (temperature - T20)) / parallel * current <= drop",
      take: "size",
      none: "drop: no size up to 400 mm2 keeps within it; take more legs side by side, a shorter run or a higher voltage",
      unit: "mm2",
      why: "first size whose drop is not above the limit, class 5",
    },
  ],
  valid:
    "Flexible plain copper (class 5) by voltage alone: hold the answer against CONDUCTOR.CARRY or CONDUCTOR.CARRYSHIP and against the fault as well. Wire lists for a 3 % drop that go round come out one size thinner in 10 of 98 places than the formula they rest on.",
  caution: heatCaution,
  sources: [iec60228, iec60028],
  examples: [
    {
      given: { current: 300, run: 10, drop: 1.2 },
      expect: 50,
      within: 0,
      source: identity("35 mm2 loses 300·0.554/1000·10 = 1.662 V, 50 mm2 1.158 V"),
    },
    {
      given: { current: 300, run: 10, drop: 1.2, temperature: 50 },
      expect: 70,
      within: 0,
      source: identity("at 50 °C 50 mm2 loses 1.295 V, 70 mm2 300·0.272/1000·10·1.1179 = 0.912 V"),
    },
  ],
});
