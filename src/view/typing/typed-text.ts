import { isFormula, plainNumberOf } from "../../engine/content";
import { readFormula } from "../../notebook/typed-formula";
import { decimalSign } from "../../words/decimal-sign";

/**
 * A typing that reads two ways: one and two hundred and thirty-four thousandths, or one thousand two hundred and
 * thirty-four. In a formula the sign is a decimal sign, or parts two arguments.
 */
export interface DoubtfulTyping {
  readonly kind: "ask";
  readonly asPoint: string;
  readonly asGroups: string;
  readonly isFormula?: true;
}

/** What a person's typing becomes in the cell. */
export type Typed = { readonly kind: "text"; readonly text: string } | DoubtfulTyping;

const text = (value: string): Typed => ({ kind: "text", text: value });

const spaces = /[\u00a0\u202f\u2009]/g;

/** `92` percent -> `0.92`, by moving the point, so that no digit comes in that was not typed. */
function hundredth(number: string): string {
  const [, sign = "", whole = "", fraction = ""] = /^([+-]?)(\d*)\.?(\d*)$/.exec(number) ?? [];
  const padded = whole.padStart(3, "0");
  const shifted = `${padded.slice(0, -2)}.${padded.slice(-2)}${fraction}`
    .replace(/^0+(?=\d)/, "")
    .replace(/\.?0+$/, "");
  return `${sign === "-" ? "-" : ""}${shifted === "" ? "0" : shifted}`;
}

/** The number with a decimal point that a typing with commas or groups stands for, or both where it has two meanings. */
function pointed(typed: string): Typed | undefined {
  const [, sign = "", body = ""] = /^([+\-\u2212]?)([\d.,\s]+)$/.exec(typed) ?? [];
  if (body === "") return undefined;
  const minus = sign === "" || sign === "+" ? "" : "-";
  const number = (digits: string): Typed | undefined =>
    plainNumberOf(minus + digits) === undefined ? undefined : text(minus + digits);
  if (/^\d{1,3}( \d{3})+([.,]\d+)?$/.test(body)) return number(body.replaceAll(" ", "").replace(",", "."));
  if (/\s/.test(body)) return undefined;
  if (/^\d*\.?\d*$/.test(body)) return minus === sign ? undefined : number(body);
  if (/^\d{1,3}(,\d{3}){2,}(\.\d*)?$/.test(body) || /^\d{1,3}(,\d{3})+\.\d*$/.test(body))
    return number(body.replaceAll(",", ""));
  if (/^\d{1,3}(\.\d{3})+,\d+$/.test(body)) return number(body.replaceAll(".", "").replace(",", "."));
  if (/^[1-9]\d{0,2},\d{3}$/.test(body)) {
    return { kind: "ask", asPoint: minus + body.replace(",", "."), asGroups: minus + body.replace(",", "") };
  }
  return /^\d*,\d+$/.test(body) ? number(body.replace(/^,/, "0,").replace(",", ".")) : undefined;
}

/** What was typed with comma and point as in English, whatever the person's decimal sign. */
const withPointFirst = (typed: string): string =>
  decimalSign() === "." ? typed : typed.replace(/[.,]/g, (sign) => (sign === "." ? "," : "."));

/** A formula as it is stored; asked about where a comma reads two ways. */
export function readTypedFormula(typed: string): Typed {
  const read = readFormula(typed);
  return typeof read === "string"
    ? text(read)
    : { kind: "ask", asPoint: read.asDecimals, asGroups: read.asArguments, isFormula: true };
}

/**
 * Reads what was typed into a cell that may hold a number: `92%` is 0.92, `1,5` is 1.5, a minus sign from print is a
 * minus; `1,234` is asked about. Where the person's decimal sign is a comma, comma and point change places: `1.234` is
 * asked about. Formulas come out as they are stored, everything else stays as it was typed.
 */
export function readTyped(typed: string): Typed {
  if (isFormula(typed)) return readTypedFormula(typed);
  if (typed.startsWith("'")) return text(typed);
  const trimmed = withPointFirst(typed.trim().replace(spaces, " "));
  if (plainNumberOf(trimmed) !== undefined) return text(trimmed);
  const share = /^(.*\d)\s?%$/.exec(trimmed);
  const number = pointed(share ? (share[1] ?? "") : trimmed);
  if (!share) return number ?? text(typed);
  const plain = number ?? text(share[1] ?? "");
  if (plain.kind === "ask")
    return { kind: "ask", asPoint: hundredth(plain.asPoint), asGroups: hundredth(plain.asGroups) };
  return /^[+-]?\d*\.?\d*$/.test(plain.text) ? text(hundredth(plain.text)) : text(typed);
}
