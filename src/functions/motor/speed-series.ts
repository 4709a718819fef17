import { defineFunction } from "../../formula/define";
import type { Source } from "../../formula/source";
import { identity } from "../../formula/source";
import { startCaution } from "../conductor/cautions";
import { motorArguments } from "./arguments";

const fanLoad: Source = {
  evidence: "published",
  title: "Public worked exercise, series motor with fan load",
  note: "200 V, 10 A, 5 ohm at 250 rpm: 44 V and 4 A at 100 rpm",
};

const seriesResistor: Source = {
  evidence: "published",
  title: "Public worked exercise, series motor with added resistance",
  note: "200 V, 15 A, 0.08 ohm at 1500 rpm: 19.96 ohm and 7.5 A at 750 rpm",
};

export const motorSpeedSeries = defineFunction({
  name: "MOTOR.SPEEDSERIES",
  title: "Speed of a series-wound thruster motor on a sagging supply",
  args: motorArguments,
  steps: [
    {
      kind: "algebra",
      symbol: "k",
      formula: "ratedVolts - motor * ratedCurrent",
      unit: "V",
      why: "voltage that turns the motor at its rated point",
    },
    {
      kind: "require",
      holds: "k > 0",
      says: "motor: {motor} ohm at {ratedCurrent} A takes all of the rated {ratedVolts} V, allowed is less than their quotient",
    },
    {
      kind: "algebra",
      symbol: "a",
      formula: "(motor + outside) * ratedCurrent",
      unit: "V",
      why: "lost in all resistances at rated current",
    },
    {
      kind: "algebra",
      symbol: "s",
      formula: "2 * open / (a + sqrt(a * a + 4 * k * open))",
      unit: "1",
      why: "positive root of k·s² + a·s = open, in the form that does not cancel",
    },
  ],
  valid:
    "Speed over rated speed, for propeller torque with the square of speed and a field that follows the current. Current is rated current × s, thrust share s². Sag makes a brushed motor draw less current, not more: a constant-power model has the wrong sign. Iron saturation brings a real series motor nearer to MOTOR.SPEEDPM; brush drop and warm windings are left out. A stalled motor draws open/(motor + outside).",
  caution: startCaution,
  sources: [identity("voltage balance V = R·I + E with E ∝ speed·current, current² ∝ torque ∝ speed²")],
  examples: [
    {
      given: { open: 44, outside: 0, ratedVolts: 200, ratedCurrent: 10, motor: 5 },
      expect: 0.4,
      within: 1e-9,
      source: fanLoad,
    },
    {
      given: { open: 200, outside: 19.96, ratedVolts: 200, ratedCurrent: 15, motor: 0.08 },
      expect: 0.5,
      within: 1e-9,
      source: seriesResistor,
    },
  ],
});
