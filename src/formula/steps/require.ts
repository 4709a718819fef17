import { withDecimalSign } from "../../words/decimal-sign";
import { said } from "../../words/say";
import { Fault, type FaultCode } from "../fault";
import type { Act, Scope } from "../scope";

/** A guard: the function refuses with a sentence unless the condition holds. */
export interface Require {
  readonly kind: "require";
  readonly holds: string;
  /** The refusal; a name in braces is replaced by its value: `Reynolds number {Re} is below 4000`. */
  readonly says: string;
  readonly code?: FaultCode;
}

/** Shortens a value for a sentence; four significant digits are enough to recognise it. */
const short = (value: unknown): string =>
  typeof value === "number" ? withDecimalSign(String(Number(value.toPrecision(4)))) : String(value);

export function require(step: Require, scope: Scope): Act {
  const test = scope.test(step.holds);
  const parts = said(step.says)
    .split(/\{(\w+)\}/)
    .map((part, i) => (i % 2 ? scope.at(part) : part));
  return (slots) => {
    if (test(slots)) return;
    const sentence = parts.map((part) => (typeof part === "number" ? short(slots[part]) : part)).join("");
    throw new Fault(step.code ?? "range", sentence);
  };
}
