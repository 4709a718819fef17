import type { UnitText } from "../../units/names";
import type { Act, Scope } from "../scope";

/** A root by a fixed number of steps of a rule `next`, which may use the symbol itself. */
export interface Root {
  readonly kind: "root";
  readonly symbol: string;
  readonly start: string;
  readonly next: string;
  readonly times: number;
  readonly unit: UnitText;
  readonly why: string;
}

export function root(step: Root, scope: Scope): Act {
  const start = scope.run(step.start);
  const own = scope.add(step.symbol);
  const next = scope.run(step.next);
  return (slots) => {
    slots[own] = start(slots);
    for (let i = 0; i < step.times; i++) slots[own] = next(slots);
  };
}
