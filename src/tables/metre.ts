import type { Constant } from "../formula/definition";
import { identity } from "../formula/source";

const definition = identity("Definition of the millimetre, SI Brochure, 9th edition, table 7");

/** Lengths on the hull are in mm, densities and speeds in metres: these two carry one into the other. */
export const mmPerM = {
  value: 1000,
  unit: "mm/m",
  about: "mm in a metre",
  source: definition,
} as const satisfies Constant;

export const mm2PerM2 = {
  value: 1e6,
  unit: "mm2/m2",
  about: "mm2 in a square metre",
  source: definition,
} as const satisfies Constant;
