import type { Constant } from "../formula/definition";
import { identity } from "../formula/source";

/** Fillets and bevels are drawn in mm and filled from a cup in ml. */
export const mm3PerMl = {
  value: 1000,
  unit: "mm3/ml",
  about: "mm3 in a millilitre",
  source: identity("Definition of the litre, SI Brochure, 9th edition, table 8"),
} as const satisfies Constant;
