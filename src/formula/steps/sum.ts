import type { UnitText } from "../../units/names";
import type { Act, Scope } from "../scope";

/** A sum of `term` for `index` = 0 .. count − 1. `most` bounds the count, so that it can be laid out in cells. */
export interface Sum {
  readonly kind: "sum";
  readonly symbol: string;
  readonly index: string;
  readonly count: string;
  readonly most: number;
  readonly term: string;
  readonly unit: UnitText;
  readonly why: string;
}

export function sum(step: Sum, scope: Scope): Act {
  const count = scope.run(step.count);
  const index = scope.add(step.index);
  const term = scope.run(step.term);
  const own = scope.add(step.symbol);
  return (slots) => {
    const n = count(slots);
    let total = 0;
    for (let i = 0; i < n; i++) {
      slots[index] = i;
      total += term(slots);
    }
    slots[own] = total;
  };
}
