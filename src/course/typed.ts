import { convertUnit } from "../units/convert";
import { decimalSign } from "../words/decimal-sign";
import { say } from "../words/say";
import { shownUnit } from "./shown";

/** What a trainee typed for a number. */
export type Typed =
  | { readonly kind: "blank" }
  | {
      readonly kind: "number";
      readonly value: number;
      /** Figures that were written, zeros at the end of a whole number left out. */
      readonly figures: number;
      /** The other number that a comma before three digits may stand for. */
      readonly other?: number;
    }
  | { readonly kind: "text"; readonly why: string };

const written = /^([+-]?)(\d[\d' ]*|)((?:[.,]\d+)*)(?:[eE]([+-]?\d+))?\s*(.*)$/;

const unitSigns: readonly (readonly [RegExp, string])[] = [
  [/²/g, "2"],
  [/³/g, "3"],
  [/^°\s*C$/, "degC"],
  [/^°$/, "deg"],
  [/Ω/g, "ohm"],
];

/** Digits with marks between them as a number, and as another one where the mark may part thousands. */
function readDigits(whole: string, rest: string): { value: number; other?: number; digits: string } | undefined {
  const front = whole.replace(/[' ]/g, "");
  const parts = rest.match(/[.,]\d+/g) ?? [];
  if (front === "" && parts.length === 0) return undefined;
  const [first = "", ...more] = parts;
  if (more.length === 0) {
    const digits = `${front || "0"}${first.replace(",", ".")}`;
    const thousands =
      (first.startsWith(",") || decimalSign() === ",") && first.length === 4 && /^[1-9]\d{0,2}$/.test(front);
    return { value: Number(digits), digits, ...(thousands && { other: Number(`${front}${first.slice(1)}`) }) };
  }
  // Several marks: the last one is the decimal sign if it differs from the others, which part thousands.
  const last = parts.at(-1) as string;
  const marks = new Set(parts.slice(0, -1).map((part) => part[0]));
  if (marks.size > 1 || parts.slice(0, -1).some((part) => part.length !== 4)) return undefined;
  if (marks.has(last[0]) && last.length !== 4) return undefined;
  const end = marks.has(last[0]) ? last.slice(1) : `.${last.slice(1)}`;
  const digits = `${front}${parts
    .slice(0, -1)
    .map((part) => part.slice(1))
    .join("")}${end}`;
  return { value: Number(digits), digits };
}

function figuresIn(digits: string): number {
  const bare = digits.includes(".") ? digits.replace(".", "") : digits.replace(/0+$/, "");
  return Math.max(1, bare.replace(/^0+/, "").length);
}

/**
 * Reads a number as people type it: `1514.7`, `1 514,7`, `1.5 kN` where newtons are asked for.
 *
 * @param unit unit text of the answer; what is typed with another unit of the same kind is converted.
 */
export function readTyped(text: string, unit: string): Typed {
  const plain = text
    .trim()
    .replace(/^'/, "")
    .replace(/[−–]/g, "-")
    .replace(/[\u00A0\u2009\u202F]/g, " ")
    .trim();
  if (plain === "") return { kind: "blank" };
  const [, sign = "", whole = "", rest = "", power = "0", tail = ""] = written.exec(plain) ?? [];
  const digits = readDigits(whole.trim(), rest);
  if (!digits) return { kind: "text", why: say`"${plain}" is no number` };
  const scale = (sign === "-" ? -1 : 1) * 10 ** Number(power);
  const figures = figuresIn(digits.digits);
  const from = unitSigns.reduce((name, [mark, word]) => name.replace(mark, word), tail.trim());
  // A count may be typed with what is counted: `9 plies`; a plain number takes no unit that could be converted.
  const convert = (value: number) =>
    from === "" || from === unit || (unit === "1" && !/%/.test(from)) ? value : convertUnit(value, from, unit);
  const value = convert(digits.value * scale);
  if (typeof value === "string" || !Number.isFinite(value)) {
    return { kind: "text", why: say`"${plain}" is not given in${shownUnit(unit) || say` a plain number`}` };
  }
  if (digits.other === undefined) return { kind: "number", value, figures };
  const other = convert(digits.other * scale);
  return { kind: "number", value, figures, ...(typeof other === "number" && { other }) };
}
