import type { UnitText } from "../../units/names";
import { say } from "../../words/say";
import { Fault } from "../fault";
import type { Act, Scope } from "../scope";

/** One of several formulas, picked by a text argument. */
export interface Choose {
  readonly kind: "choose";
  readonly symbol: string;
  /** The argument that decides. */
  readonly by: string;
  readonly cases: Readonly<Record<string, string>>;
  readonly unit: UnitText;
  readonly why: string;
}

export function choose(step: Choose, scope: Scope): Act {
  const by = scope.at(step.by);
  const cases = new Map(Object.entries(step.cases).map(([word, formula]) => [word, scope.run(formula)]));
  const own = scope.add(step.symbol);
  return (slots) => {
    const run = cases.get(String(slots[by]));
    if (!run) throw new Fault("range", say`${step.by}: "${String(slots[by])}" is not a choice`);
    slots[own] = run(slots);
  };
}
