import { displayNumber } from "../notebook/display";
import { say } from "../words/say";
import type { Plain } from "./kernel/plain";

/** A number with its unit, as a sentence says it. */
export const quantityWords = (value: number, unit: string): string =>
  `${displayNumber(value)}${unit === "" || unit === "1" || unit === "margin" ? "" : ` ${unit}`}`;

/** Any value, as a sentence says it. */
export function valueWords(value: Plain, unit: string): string {
  if (typeof value === "number") return Number.isNaN(value) ? say`no result` : quantityWords(value, unit);
  if (value === null) return "blank";
  return typeof value === "boolean" ? (value ? "TRUE" : "FALSE") : `"${value}"`;
}

/** `a`, `a and b`, `a, b and c`. */
export function listWords(words: readonly string[]): string {
  const [last = "", ...before] = [...words].reverse();
  return before.length === 0 ? last : say`${before.reverse().join(", ")} and ${last}`;
}
