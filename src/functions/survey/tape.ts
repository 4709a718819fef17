import type { NumberArgument } from "../../formula/arguments";

// Arguments of a point that is fixed by two tapes from two marks.

export const fromFirst = {
  unit: "mm",
  about: "tape from the first mark to the point",
  min: 0,
  max: 100000,
} as const satisfies NumberArgument;

export const fromSecond = {
  unit: "mm",
  about: "tape from the second mark to the point",
  min: 0,
  max: 100000,
} as const satisfies NumberArgument;

export const base = {
  unit: "mm",
  about: "distance between the two marks",
  min: 0,
  aboveMin: true,
  max: 100000,
} as const satisfies NumberArgument;
