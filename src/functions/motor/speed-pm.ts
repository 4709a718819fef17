import { defineFunction } from "../../formula/define";
import type { Source } from "../../formula/source";
import { identity } from "../../formula/source";
import { startCaution } from "../conductor/cautions";
import { motorArguments } from "./arguments";

const scilab: Source = {
  evidence: "published",
  title: "Scilab Textbook Companion 1445",
  clause: "chapter 8, example 17, torque with the square of speed",
  note: "200 V, 20 A, 0.1 ohm at 1000 rpm; 3.15 ohm in series brings it to 800 rpm",
};

export const motorSpeedPm = defineFunction({
  name: "MOTOR.SPEEDPM",
  title: "Speed of a permanent-magnet thruster motor on a sagging supply",
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
      formula: "2 * open / (k + sqrt(k * k + 4 * a * open))",
      unit: "1",
      why: "positive root of a·s² + k·s = open, in the form that does not cancel",
    },
  ],
  valid:
    "Speed over rated speed, for propeller torque with the square of speed and a magnet's constant field. Current is rated current × s², thrust share s². Sag makes a brushed motor draw less current, not more: a constant-power model has the wrong sign. Brush drop, warm windings and saturation are left out; state the voltage that the rated current belongs to. A stalled motor draws open/(motor + outside).",
  caution: startCaution,
  sources: [identity("voltage balance V = R·I + E with E ∝ speed, current ∝ torque ∝ speed²")],
  examples: [
    {
      given: { open: 200, outside: 3.15, ratedVolts: 200, ratedCurrent: 20, motor: 0.1 },
      expect: 0.8,
      within: 5e-5,
      source: scilab,
    },
    {
      given: { open: 25.2, outside: 0.008, ratedVolts: 24, ratedCurrent: 250, motor: 0.012 },
      expect: Math.sqrt(0.9488),
      within: 5e-5,
      source: identity("5·s² + 21·s = 25.2, thrust share s² = 0.9488"),
    },
  ],
});
