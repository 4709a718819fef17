import type { UnitText } from "../../units/names";
import type { Act, Scope } from "../scope";

/** A plain formula over what came before it. */
export interface Algebra {
  readonly kind: "algebra";
  readonly symbol: string;
  readonly formula: string;
  readonly unit: UnitText | "any";
  readonly why: string;
}

export function algebra(step: Algebra, scope: Scope): Act {
  const run = scope.run(step.formula);
  const own = scope.add(step.symbol);
  return (slots) => {
    slots[own] = run(slots);
  };
}
