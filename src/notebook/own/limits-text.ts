import type { Argument, NumberArgument } from "../../formula/arguments";

/** Limits as a row of a function page says them; undefined for what only the shipped function can say. */
export function limitsText(argument: Argument): string | undefined {
  switch (argument.kind) {
    case "flag":
      return "TRUE or FALSE";
    case "text":
      return argument.choices?.map((choice) => `"${choice}"`).join(" or ") ?? "any text";
    case "key":
    case "range":
      return undefined;
    default: {
      const { min, max, aboveMin, whole, oneOf } = argument;
      if (oneOf) return oneOf.join(" or ");
      const low = min === undefined ? "" : aboveMin ? `above ${min}` : max === undefined ? `from ${min}` : `${min}`;
      const high = max === undefined ? "" : min === undefined ? `up to ${max}` : ` to ${max}`;
      return `${`${low}${high}` || "any number"}${whole ? ", whole" : ""}`;
    }
  }
}

type Limits = Pick<NumberArgument, "min" | "max" | "aboveMin" | "whole" | "oneOf">;

const number = "[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?";
const forms: readonly (readonly [RegExp, (found: RegExpExecArray) => Limits])[] = [
  [/^(?:any number)?$/, () => ({})],
  [new RegExp(`^from (${number})$`), ([, low]) => ({ min: Number(low) })],
  [new RegExp(`^above (${number})$`), ([, low]) => ({ min: Number(low), aboveMin: true })],
  [new RegExp(`^up to (${number})$`), ([, high]) => ({ max: Number(high) })],
  [new RegExp(`^(${number}) to (${number})$`), ([, low, high]) => ({ min: Number(low), max: Number(high) })],
  [
    new RegExp(`^above (${number}) to (${number})$`),
    ([, low, high]) => ({ min: Number(low), aboveMin: true, max: Number(high) }),
  ],
  [new RegExp(`^(${number}(?: or ${number})+)$`), ([list = ""]) => ({ oneOf: list.split(" or ").map(Number) })],
];

const wholeNumber = new RegExp(`^${number}$`);

/** A number with a decimal point, of any number of digits; undefined for anything else. */
export const decimalOf = (text: string): number | undefined =>
  wholeNumber.test(text) && Number.isFinite(Number(text)) ? Number(text) : undefined;

/** How limits may be written, for the sentence that refuses others. */
export const limitForms =
  '0 to 5000, above 0 to 10, from 0, up to 10, 35 or 50 or 70, 1 to 8, whole, "port" or "starboard"';

/** Reads the limits of a number; undefined for another way of writing. */
export function numberLimits(text: string): Limits | undefined {
  const [, bare = "", whole] = /^(.*?)\s*(,\s*whole)?$/.exec(text.trim()) ?? [];
  for (const [pattern, read] of forms) {
    const found = pattern.exec(bare);
    if (!found) continue;
    const limits = read(found);
    if (limits.min !== undefined && limits.max !== undefined && limits.min > limits.max) return undefined;
    return whole ? { ...limits, whole: true } : limits;
  }
  return undefined;
}

/** The words of `"port" or "starboard"`; empty for any text, undefined for another way of writing. */
export function textChoices(text: string): readonly string[] | undefined {
  if (/^(?:any text)?$/.test(text.trim())) return [];
  const parts = text.trim().split(/\s+or\s+/);
  return parts.every((one) => /^"[^"]+"$/.test(one)) ? parts.map((one) => one.slice(1, -1)) : undefined;
}

/** A value as it is typed into a formula: number, text in quotation marks, TRUE or FALSE; undefined for anything else. */
export function literalOf(text: string): number | string | boolean | undefined {
  if (/^(?:TRUE|FALSE)$/i.test(text)) return text.toUpperCase() === "TRUE";
  if (/^"[^"]*"$/.test(text)) return text.slice(1, -1);
  return decimalOf(text);
}

/** The other way round. */
export const literalText = (value: unknown): string =>
  typeof value === "string" ? `"${value}"` : typeof value === "boolean" ? String(value).toUpperCase() : String(value);
