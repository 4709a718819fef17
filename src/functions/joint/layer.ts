import type { NumberArgument, TextArgument } from "../../formula/arguments";
import type { Constant } from "../../formula/definition";
import { identity } from "../../formula/source";

// Arguments of a single layer of laminate, so that limits, defaults and words are the same in every function.

export const fabric = {
  unit: "g/m2",
  about: "dry reinforcement",
  min: 0,
  max: 20000,
} as const satisfies NumberArgument;

export const fraction = {
  unit: "1",
  about: "fibre mass over laminate mass",
  min: 0.15,
  max: 0.75,
} as const satisfies NumberArgument;

/** Where only volumes or densities are asked for, leaner and richer laminates than a hull's make sense too. */
export const anyFraction = {
  unit: "1",
  about: "fibre mass over laminate mass",
  min: 0.01,
  max: 0.99,
} as const satisfies NumberArgument;

export const fibre = {
  unit: "kg/dm3",
  about: "fibre density; E-glass 2.56",
  min: 0.9,
  max: 3,
  otherwise: 2.56,
} as const satisfies NumberArgument;

export const resin = {
  unit: "kg/dm3",
  about: "cured resin density; polyester 1.20, epoxy about 1.15",
  min: 0.9,
  max: 2,
  otherwise: 1.2,
} as const satisfies NumberArgument;

export const surface = {
  kind: "text",
  about: "how it is laid up",
  choices: ["simple", "complex", "vacuum"],
  otherwise: "simple",
} as const satisfies TextArgument;

export const gPerKg = {
  value: 1000,
  unit: "g/kg",
  about: "grams in a kilogram",
  source: identity("Definition of the gram, SI Brochure, 9th edition"),
} as const satisfies Constant;
