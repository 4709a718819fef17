import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";

const strips = identity(
  "Cross-flow drag of strips: ((½−p)⁴ + (½+p)⁴)/4 = (x−p)·((½−p)³ − (½+p)³)/3, x the arm share, p the pivot",
);

export const thrustPivot = defineFunction({
  name: "THRUST.PIVOT",
  title: "Point that a boat pushed at the bow turns about",
  args: {
    armShare: {
      unit: "1",
      about: "thruster ahead of midship over the waterline length",
      min: 0.25,
      max: 0.5,
    },
  },
  steps: [
    // The balance above, multiplied out and by 96: 3 + 48xp + 24p² + 64xp³ − 16p⁴ = 0, in products because powers
    // are slow in a loop. Seven steps of Newton's rule from −0.15 reach the last bit over 0.25 .. 0.5.
    {
      kind: "root",
      symbol: "p",
      start: "-0.15",
      next: "p - (3 + p * (48 * armShare + p * (24 + p * (64 * armShare - 16 * p)))) / (48 * armShare + p * (48 + p * (192 * armShare - 64 * p)))",
      times: 7,
      unit: "1",
      why: "drag of the strips balances the thrust in force and moment, by Newton's rule",
    },
  ],
  valid:
    "Steady turn of a free boat without headway, equal draught and drag along the length. Counted from midship in shares of the length, below 0 aft. Under headway the pivot moves forward.",
  sources: [strips],
  examples: [
    { given: { armShare: 0.5 }, expect: -0.140851, within: 5e-7, source: strips },
    { given: { armShare: 0.4 }, expect: -0.191653, within: 5e-7, source: strips },
    { given: { armShare: 0.25 }, expect: -0.5, within: 0, source: strips },
  ],
});
