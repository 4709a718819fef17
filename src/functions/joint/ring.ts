import type { NumberArgument } from "../../formula/arguments";

// Arguments of the joint round the hole, so that limits and words are the same in every function.

export const diameter = {
  unit: "mm",
  about: "outer diameter of the tube",
  min: 50,
  max: 1000,
} as const satisfies NumberArgument;

export const edge = {
  unit: "mm",
  about: "length of the hole's edge, once round",
  min: 0,
  aboveMin: true,
  max: 20000,
} as const satisfies NumberArgument;

export const width = {
  unit: "mm",
  about: "width of the band",
  min: 0,
  max: 2000,
} as const satisfies NumberArgument;

export const thickness = {
  unit: "mm",
  about: "thickness of the laminate",
  min: 0,
  max: 200,
} as const satisfies NumberArgument;

export const ratio = {
  unit: "1",
  about: "length of the bevel for one of thickness; 12 below water is common",
  min: 1,
  max: 100,
} as const satisfies NumberArgument;

export const radius = {
  unit: "mm",
  about: "radius of the fillet",
  min: 0,
  max: 200,
} as const satisfies NumberArgument;
