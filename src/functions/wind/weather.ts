import type { NumberArgument } from "../../formula/arguments";

// Arguments that the functions of this folder share.

export const windSpeed = {
  unit: "m/s",
  about: "mean wind",
  min: 0,
  max: 80,
} as const satisfies NumberArgument;

export const lateralArea = {
  unit: "m2",
  about: "lateral area above water, rig included",
  min: 0,
  max: 5000,
} as const satisfies NumberArgument;

export const sideCoefficient = {
  unit: "1",
  about: "side force of a beam wind on the lateral area",
  min: 0.3,
  max: 2,
  otherwise: 0.9,
} as const satisfies NumberArgument;

export const airDensity = {
  unit: "kg/m3",
  about: "density of the air",
  min: 1,
  max: 1.5,
  otherwise: 1.225,
} as const satisfies NumberArgument;

/** What all wind forces here leave out. */
export const steadyWind =
  "Steady wind; a gust of 1.4 times the mean pushes twice as hard. Either the forecast wind (10 m) with WIND.HEIGHT, or the wind measured on deck without it, never both.";
