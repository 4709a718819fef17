import { convertUnit } from "../../units/convert";
import { Fault } from "../fault";
import type { Act, Scope } from "../scope";

/** The same quantity in another unit, by the units library. */
export interface Convert {
  readonly kind: "convert";
  readonly symbol: string;
  readonly value: string;
  readonly from: string;
  readonly to: string;
  readonly unit: "any";
  readonly why: string;
}

export function convert(step: Convert, scope: Scope): Act {
  const value = scope.at(step.value);
  const from = scope.at(step.from);
  const to = scope.at(step.to);
  const own = scope.add(step.symbol);
  return (slots) => {
    const answer = convertUnit(slots[value] as number, String(slots[from]), String(slots[to]));
    if (typeof answer === "string") throw new Fault("missing", answer);
    slots[own] = answer;
  };
}
