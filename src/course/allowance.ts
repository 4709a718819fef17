import { plainNumberOf } from "../engine/content";
import { numberText } from "../formula/number-text";
import { withDecimalSign } from "../words/decimal-sign";
import { say } from "../words/say";
import { listOf } from "./amount";
import type { Scalar } from "./scalar";
import { shownUnit } from "./shown";

/** What counts as right: a share of the right number, so much either way, the very number, or one of some words. */
export type Allowance =
  | { readonly kind: "share"; readonly share: number }
  | { readonly kind: "size"; readonly size: number }
  | { readonly kind: "exact" }
  | { readonly kind: "choice"; readonly choices: readonly string[] };

/** Rounding of computers, not of people. */
const dust = 1e-9;

/**
 * Reads `1 %`, `3` or `3 mm` (in the answer's own unit), `exact`, or `one of fits; does not fit`.
 *
 * @returns the allowance, or a sentence that says what is wrong.
 */
export function readAllowance(text: string, unit: string): Allowance | string {
  const choices = listOf(text);
  if (choices) {
    const small = choices.map((choice) => choice.toLowerCase());
    if (choices.length < 2 || choices.includes("")) return say`give at least two choices with a semicolon between them`;
    return new Set(small).size < small.length ? say`two choices are the same` : { kind: "choice", choices };
  }
  if (text.trim() === "exact") return { kind: "exact" };
  const [, digits = "", mark = ""] = /^(\S+?)\s*(%|[^\d\s.].*)?$/.exec(text.trim()) ?? [];
  const value = plainNumberOf(digits);
  if (value === undefined || !(value > 0) || !["", "%", unit].includes(mark)) {
    return say`"${text}" does not say what is right; write 1 %, 3 ${unit}, exact, or one of fits; does not fit`;
  }
  return mark === "%" ? { kind: "share", share: value / 100 } : { kind: "size", size: value };
}

/** How far from a number another may be and still stand for it. */
export function reach(allowance: Allowance, about: number): number {
  const grain = dust * Math.max(1, Math.abs(about));
  if (allowance.kind === "share") return allowance.share * Math.abs(about) + grain;
  return allowance.kind === "size" ? allowance.size + grain : grain;
}

const sameWords = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

/** Whether a value stands for another: within reach of a number, or the same words. */
export function standsFor(allowance: Allowance, value: Scalar, other: Scalar): boolean {
  if (allowance.kind === "choice") return sameWords(String(value), String(other));
  if (typeof value !== "number" || typeof other !== "number") return false;
  return Math.abs(value - other) <= reach(allowance, other);
}

/** Whether no answer could stand for both values. */
export function canBeTold(allowance: Allowance, value: Scalar, other: Scalar): boolean {
  if (allowance.kind === "choice") return !sameWords(String(value), String(other));
  if (typeof value !== "number" || typeof other !== "number") return value !== other;
  return Math.abs(value - other) > reach(allowance, value) + reach(allowance, other);
}

/** Figures to give, so that rounding takes no more than half of a share. */
export const figuresFor = (share: number): number => Math.max(1, Math.ceil(1 - Math.log10(share) - dust));

/** The place to round to, so that rounding takes no more than half of a size: the power of ten at or below it. */
export const placeFor = (size: number): number => 10 ** Math.floor(Math.log10(size) + dust);

/** A right value, rounded as the trainee is asked to. */
export function asAsked(allowance: Allowance, value: Scalar): string {
  if (typeof value !== "number") return value;
  if (allowance.kind === "share")
    return withDecimalSign(String(Number(value.toPrecision(figuresFor(allowance.share)))));
  if (allowance.kind !== "size") return numberText(value);
  const place = placeFor(allowance.size);
  return withDecimalSign((Math.round(value / place) * place).toFixed(Math.max(0, -Math.round(Math.log10(place)))));
}

/** What the trainee is told of rounding and of what counts as right. */
export function allowanceWords(allowance: Allowance, unit: string): string {
  switch (allowance.kind) {
    case "share":
      return say`${figuresFor(allowance.share)} figures or more; ${numberText(allowance.share * 100)} % either way is right`;
    case "size": {
      const of = shownUnit(unit);
      return say`to ${numberText(placeFor(allowance.size))}${of} or finer; ${numberText(allowance.size)}${of} either way is right`;
    }
    case "exact":
      return say`the exact number`;
    case "choice":
      return say`one of: ${allowance.choices.join(" / ")}`;
  }
}
