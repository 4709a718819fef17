import type { UnitText } from "../../units/names";
import type { Act, Scope } from "../scope";

/** A sum of `term` over the cells of a range argument; `each` is the cell's number. */
export interface Total {
  readonly kind: "total";
  readonly symbol: string;
  readonly over: string;
  readonly each: string;
  readonly term: string;
  readonly unit: UnitText;
  readonly why: string;
}

export function total(step: Total, scope: Scope): Act {
  const over = scope.at(step.over);
  const each = scope.add(step.each);
  const term = scope.run(step.term);
  const own = scope.add(step.symbol);
  return (slots) => {
    let sum = 0;
    for (const value of slots[over] as readonly number[]) {
      slots[each] = value;
      sum += term(slots);
    }
    slots[own] = sum;
  };
}
