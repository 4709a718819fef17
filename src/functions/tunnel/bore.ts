import type { NumberArgument } from "../../formula/arguments";

// Arguments that the functions of this folder share, so that their limits and words are the same everywhere.
// Axes: x forward, y outboard, z up, origin on the tunnel axis at the centreplane.

export const diameter = {
  unit: "mm",
  about: "tunnel diameter",
  min: 50,
  max: 1000,
} as const satisfies NumberArgument;

export const axisDepth = {
  unit: "mm",
  about: "tunnel axis below the still waterline; below 0 the axis is out of the water",
  min: -5000,
  max: 20000,
} as const satisfies NumberArgument;

export const entrance = {
  unit: "deg",
  about: "half-angle of the waterline at tunnel height against the centreline",
  min: 0,
  max: 70,
} as const satisfies NumberArgument;

export const flare = {
  unit: "deg",
  about: "transverse section from vertical, outward going up",
  min: -20,
  max: 60,
} as const satisfies NumberArgument;

export const halfBreadth = {
  unit: "mm",
  about: "half-breadth of the hull at the tunnel axis",
  min: 0,
  max: 10000,
} as const satisfies NumberArgument;

export const around = {
  unit: "deg",
  about: "place on the tube: 0 top, 90 forward, 180 bottom, 270 aft",
  min: -360,
  max: 360,
} as const satisfies NumberArgument;

export const seaDensity = {
  unit: "kg/m3",
  about: "water density; 1025 is the usual round figure for the sea",
  min: 950,
  max: 1100,
  otherwise: 1025,
} as const satisfies NumberArgument;
