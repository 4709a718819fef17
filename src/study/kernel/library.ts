// Past 150 lines: the built-in functions of the engine, one after the other.
import { numberLibrary } from "./number-library";
import { isError, type Plain } from "./plain";

/**
 * What the engine would have to decide: a text that might be read as a number or a date. The kernel does not
 * guess; whoever runs it asks the engine for this one set of inputs.
 */
export class Beyond {
  constructor(readonly reason: string) {}
}

const hasDigit = /\d/;

/** Lower case without accents: how texts are matched against a criterion. */
const folded = (text: string): string =>
  text
    .toLowerCase()
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "");

const collator = new Intl.Collator("en", { sensitivity: "base", caseFirst: "lower", ignorePunctuation: false });

/** What a text is as a number: nothing as 0, words as an error; digits are left to the engine. */
function numberOfText(text: string): number {
  if (text === "") return 0;
  if (hasDigit.test(text)) throw new Beyond(`text "${text}" stands where a number is due`);
  return Number.NaN;
}

const number = (value: Plain): number => {
  if (typeof value === "number") return value;
  if (value === null) return 0;
  return typeof value === "string" ? numberOfText(value) : Number(value);
};

const truth = (value: Plain): number => {
  if (typeof value === "boolean") return value ? 1 : 0;
  if (value === null || value === "") return 0;
  if (typeof value === "number") return isError(value) ? value : value === 0 ? 0 : 1;
  const word = value.toUpperCase();
  return word === "TRUE" ? 1 : word === "FALSE" ? 0 : Number.NaN;
};

const text = (value: Plain): string | number => {
  if (typeof value === "string") return value;
  if (value === null) return "";
  if (typeof value === "number") return isError(value) ? value : String(value);
  return value ? "TRUE" : "FALSE";
};

const rank = (value: Plain): number =>
  value === null ? 0 : typeof value === "number" ? 1 : typeof value === "string" ? 2 : 3;
const filled = (value: Plain, other: Plain): Plain => {
  if (value !== null) return value;
  return other === null ? null : typeof other === "string" ? "" : typeof other === "number" ? 0 : false;
};
const order = (left: number, right: number): number => (left < right ? -1 : left > right ? 1 : 0);

/** -1, 0 or 1 as the engine orders two values, NaN for an error. */
function compared(a: Plain, b: Plain): number {
  if (isError(a) || isError(b)) return Number.NaN;
  const dated = (value: Plain) => typeof value === "number" || (typeof value === "string" && hasDigit.test(value));
  if ((typeof a === "string" || typeof b === "string") && dated(a) && dated(b) && a !== b) {
    throw new Beyond(`"${a}" and "${b}" might be compared as dates`);
  }
  const [left, right] = [filled(a, b), filled(b, a)];
  if (typeof left === "string" && typeof right === "string") return left === right ? 0 : collator.compare(left, right);
  if (typeof left === typeof right && left !== null && right !== null) return order(Number(left), Number(right));
  return order(rank(left), rank(right));
}

/** By words and value; a study asks the same few questions again and again. */
const answers = new Map<string, Map<string, number>>();
const mostAnswers = 1000;

function saysText(value: string, words: string): number {
  let known = answers.get(words);
  if (!known) {
    known = new Map();
    answers.set(words, known);
  }
  let answer = known.get(value);
  if (answer === undefined) {
    answer = collator.compare(value, words) === 0 ? 1 : 0;
    if (known.size >= mostAnswers) known.clear();
    known.set(value, answer);
  }
  return answer;
}

/** Equal to a text without digits, so that no date can be meant. */
function says(value: Plain, words: string): number {
  if (value === words) return 1;
  if (typeof value === "string") return saysText(value, words);
  if (value === null) return words === "" ? 1 : 0;
  return isError(value) ? Number.NaN : 0;
}

const holds = (one: number, test: (sign: number) => boolean): number => (isError(one) ? one : test(one) ? 1 : 0);

/** Numbers of a list as SUM takes them from cells: text, flags and blanks are passed over, an error counts. */
const numbersOf = (items: readonly Plain[]): number[] => items.filter((item) => typeof item === "number");
const fold = (items: readonly Plain[], start: number, step: (sum: number, one: number) => number): number =>
  numbersOf(items).reduce(step, start);

const criterion: Readonly<Record<string, (value: number, limit: number) => boolean>> = {
  "<": (value, limit) => value < limit,
  "<=": (value, limit) => value <= limit,
  ">": (value, limit) => value > limit,
  ">=": (value, limit) => value >= limit,
  "=": (value, limit) => value === limit,
  "<>": (value, limit) => value !== limit,
};

/** Whether one cell meets a criterion with a number; only `=` and `<>` look at anything but numbers. */
function meets(value: Plain, relation: string, limit: number): boolean {
  if (typeof value === "number" && !isError(value)) return criterion[relation]?.(value, limit) ?? false;
  if (typeof value === "string" && value !== "" && (relation === "=" || relation === "<>") && hasDigit.test(value)) {
    throw new Beyond(`text "${value}" might be counted as a number`);
  }
  return relation === "<>";
}

const dayLength = 86_400_000;
/** Day 0 of the engine's calendar. */
const dayZero = Date.UTC(1899, 11, 30);

let lastDate: { readonly words: string; readonly day: number } | undefined;

function dateValue(value: Plain): number {
  const words = text(value);
  if (typeof words === "number") return words;
  // The dates of a notebook hardly change in a study.
  if (lastDate?.words !== words) lastDate = { words, day: dayOf(words) };
  return lastDate.day;
}

function dayOf(words: string): number {
  if (!hasDigit.test(words)) return Number.NaN;
  const parts = /^(\d{4})-(\d\d)-(\d\d)$/.exec(words);
  const time = parts ? Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3])) : Number.NaN;
  if (Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== words || Number(parts?.[1]) < 1901) {
    throw new Beyond(`"${words}" is a date in a way of its own`);
  }
  return (time - dayZero) / dayLength;
}

/** So near to midnight, a few seconds, the engine may round a time up into the next day. */
const lastOfDay = 1 - 1e-4;

function dateText(value: number): string | number {
  if (isError(value)) return value;
  if (!(value >= 367 && value <= 2_900_000) || value % 1 > lastOfDay) throw new Beyond(`${value} as a date`);
  return new Date(dayZero + Math.floor(value) * dayLength).toISOString().slice(0, 10);
}

/** Up to so many digits, printing a number's digits and printing the number itself give the same. */
const exactDigits = 1e15;

/** A number with so many digits after the point, as TEXT with `0` or `0.00` prints it. */
function digitsText(value: number, digits: number): string | number {
  if (isError(value)) return value;
  const fixed = value.toFixed(digits);
  if (digits <= 6 && Math.abs(value) * 10 ** digits < exactDigits) {
    return fixed.startsWith("-") && Number(fixed) === 0 ? fixed.slice(1) : fixed;
  }
  const [whole = "", part = ""] = String(Number(fixed)).split(".");
  // Beyond 21 digits a power of ten follows the point; it is left there, as the engine leaves it.
  return `${whole}${digits === 0 ? "" : "."}${part.padEnd(digits, "0")}`;
}

function textJoin(delimiter: Plain, leavesOut: number, items: readonly Plain[]): string | number {
  const between = text(delimiter);
  const texts = items.map(text);
  if (typeof between === "number" || isError(leavesOut) || texts.some(isError)) return Number.NaN;
  const joined = (leavesOut === 1 ? texts.filter((one) => one !== "") : texts).join(between);
  return joined.length > 32_767 ? Number.NaN : joined;
}

/** The functions that nodes of kind `help` name; every one takes and gives `Plain` values or lists of them. */
export const library = {
  ...numberLibrary,
  number,
  truth,
  text,
  join: (left: Plain, right: Plain): Plain => {
    const [a, b] = [text(left), text(right)];
    return typeof a === "number" ? a : typeof b === "number" ? b : a + b;
  },
  ordered: (a: Plain, b: Plain, relation: string): number =>
    holds(compared(a, b), (sign) => criterion[relation]?.(sign, 0) ?? false),
  says,
  exact: (a: Plain, b: Plain): number => {
    const [left, right] = [text(a), text(b)];
    return isError(left) || isError(right) ? Number.NaN : left === right ? 1 : 0;
  },
  isNumber: (value: Plain): number => (typeof value === "number" && !isError(value) ? 1 : 0),
  isText: (value: Plain): number => (typeof value === "string" ? 1 : 0),
  isFlag: (value: Plain): number => (typeof value === "boolean" ? 1 : 0),
  isBlank: (value: Plain): number => (value === null ? 1 : 0),
  isError: (value: Plain): number => (isError(value) ? 1 : 0),
  ifError: (value: Plain, otherwise: Plain): Plain => (isError(value) ? otherwise : value),
  /** Conditions from cells: texts that are neither TRUE nor FALSE are passed over. */
  allOf: (items: readonly Plain[]): number => {
    const truths = items.filter((item) => typeof item !== "string" || !isError(truth(item))).map(truth);
    return truths.some(isError) ? Number.NaN : Math.min(1, ...truths);
  },
  someOf: (items: readonly Plain[]): number => {
    const truths = items.filter((item) => typeof item !== "string" || !isError(truth(item))).map(truth);
    return truths.some(isError) ? Number.NaN : Math.max(0, ...truths);
  },
  sumOf: (items: readonly Plain[], start: number): number => fold(items, start, (sum, one) => sum + one),
  productOf: (items: readonly Plain[], start: number): number => fold(items, start, (sum, one) => sum * one),
  leastOf: (items: readonly Plain[]): number => {
    const numbers = numbersOf(items);
    return numbers.length === 0 ? 0 : Math.min(...numbers);
  },
  mostOf: (items: readonly Plain[]): number => {
    const numbers = numbersOf(items);
    return numbers.length === 0 ? 0 : Math.max(...numbers);
  },
  averageOf: (items: readonly Plain[]): number => {
    const numbers = numbersOf(items);
    const mean = numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
    return Number.isFinite(mean) ? mean : Number.NaN;
  },
  countOf: (items: readonly Plain[]): number =>
    items.filter((item) => typeof item === "number" && !isError(item)).length,
  filledOf: (items: readonly Plain[]): number => items.filter((item) => item !== null).length,
  blanksOf: (items: readonly Plain[]): number => items.filter((item) => item === null).length,
  countIf: (items: readonly Plain[], relation: string, limit: number): number =>
    items.filter((item) => meets(item, relation, limit)).length,
  countWords: (items: readonly Plain[], words: string, wanted: boolean): number =>
    items.filter((item) => (typeof item === "string" && folded(item) === words) === wanted).length,
  dateValue,
  dateText,
  digitsText,
  textJoin,
} as const;
