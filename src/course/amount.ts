import { plainNumberOf } from "../engine/content";
import { say } from "../words/say";
import type { Scalar } from "./scalar";

/** What a number is drawn from: even steps between two ends, both of them possible, or a list. */
export type Amount =
  | {
      readonly kind: "steps";
      readonly from: number;
      readonly step: number;
      readonly count: number;
      readonly digits: number;
    }
  | { readonly kind: "list"; readonly choices: readonly Scalar[] };

const number = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)`;
const stepsText = new RegExp(`^(${number})\\s+to\\s+(${number})(?:\\s+by\\s+(${number}))?$`);

const digitsOf = (text: string): number => text.split(".")[1]?.length ?? 0;

/** The parts of `one of 35; 50; 70`, or undefined where the text does not begin so. */
export function listOf(text: string): readonly string[] | undefined {
  const list = /^one of\s+(.+)$/.exec(text.trim())?.[1];
  return list?.split(";").map((part) => part.trim());
}

/**
 * Reads `18 to 30 by 0.5` (a step of 1 when left out) or `one of 35; 50; 70`.
 *
 * @returns the amount, or a sentence that says what is wrong.
 */
export function readAmount(text: string): Amount | string {
  const list = listOf(text);
  if (list) {
    if (list.length < 2 || list.includes(""))
      return say`a list needs at least two entries with a semicolon between them`;
    if (new Set(list).size < list.length) return say`the list names an entry twice`;
    return { kind: "list", choices: list.map((part) => plainNumberOf(part) ?? part) };
  }
  const [, first, last, by = "1"] = stepsText.exec(text.trim()) ?? [];
  if (first === undefined || last === undefined) {
    return say`"${text}" cannot be drawn from; write 18 to 30 by 0.5, or one of 35; 50; 70`;
  }
  const [from, to, step] = [Number(first), Number(last), Number(by)];
  const steps = (to - from) / step;
  if (!(step > 0) || !(steps >= 1)) return say`"${text}" must rise by a step above 0`;
  if (Math.abs(steps - Math.round(steps)) > 1e-9) return say`"${text}": ${last} is not reached in steps of ${by}`;
  return {
    kind: "steps",
    from,
    step,
    count: Math.round(steps) + 1,
    digits: Math.max(...[first, last, by].map(digitsOf)),
  };
}

/** How many different values there are. */
export const countOf = (amount: Amount): number => (amount.kind === "list" ? amount.choices.length : amount.count);

/** The value at a place from 0; steps are decimal, so that 0.1 + 2 × 0.1 is 0.3 and nothing beside it. */
export function amountAt(amount: Amount, place: number): Scalar {
  if (amount.kind === "list") return amount.choices[place] as Scalar;
  return Number((amount.from + place * amount.step).toFixed(amount.digits)) + 0;
}
