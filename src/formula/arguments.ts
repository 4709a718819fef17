import type { UnitText } from "../units/names";
import { Fault } from "./fault";
import type { Given, Value } from "./value";

/** A number with a unit and limits. `any` takes every unit; arguments marked so in one function share it. */
export interface NumberArgument {
  readonly kind?: "number";
  readonly about: string;
  readonly unit: UnitText | "any";
  readonly min?: number;
  readonly max?: number;
  /** The smallest value is not allowed itself. */
  readonly aboveMin?: true;
  readonly whole?: true;
  readonly oneOf?: readonly number[];
  readonly otherwise?: number;
}

/** One of a few words, or any text where no choices are named. */
export interface TextArgument {
  readonly kind: "text";
  readonly about: string;
  readonly choices?: readonly string[];
  readonly otherwise?: string;
}

export interface FlagArgument {
  readonly kind: "flag";
  readonly about: string;
  readonly otherwise?: boolean;
}

/** A size that is named, not measured (`4/0`); a number is taken as its digits. */
export interface KeyArgument {
  readonly kind: "key";
  readonly about: string;
  readonly keys: readonly string[];
  readonly otherwise?: string;
}

/** The numbers of a range of cells, at least one. */
export interface RangeArgument {
  readonly kind: "range";
  readonly about: string;
  readonly unit: UnitText | "any";
  readonly min?: number;
  readonly max?: number;
}

export type Argument = NumberArgument | TextArgument | FlagArgument | KeyArgument | RangeArgument;

/** `halfBreadth` is shown and spoken of as `half breadth`. */
export const words = (name: string): string => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** `halfBreadth` -> value used when the cell is blank or the argument is left out. */
export const defaultOf = (argument: Argument): number | string | boolean | undefined =>
  argument.kind === "range" ? undefined : argument.otherwise;

const unitWord = (unit: UnitText | "any"): string =>
  unit === "1" || unit === "any" ? "" : ` ${unit === "degC" ? "°C" : unit}`;

/** What an argument allows, in words: `0 to 5000 A`. */
export function allowed(argument: Argument): string {
  switch (argument.kind) {
    case "text":
      return argument.choices ? argument.choices.map((choice) => `"${choice}"`).join(" or ") : "any text";
    case "flag":
      return "TRUE or FALSE";
    case "key":
      return `${argument.keys[0]} to ${argument.keys.at(-1)}`;
    default: {
      const unit = unitWord(argument.unit);
      if ("oneOf" in argument && argument.oneOf) return `${argument.oneOf.join(", ")}${unit}`;
      const { min, max } = argument;
      const low = min === undefined ? undefined : `${"aboveMin" in argument ? "above " : ""}${min}`;
      if (low !== undefined && max !== undefined) return `${low} to ${max}${unit}`;
      if (low !== undefined) return `${"aboveMin" in argument ? low : `from ${low}`}${unit}`;
      if (max !== undefined) return `up to ${max}${unit}`;
      return "any number";
    }
  }
}

function checkNumber(name: string, argument: NumberArgument | RangeArgument, value: unknown): number {
  const label = words(name);
  if (typeof value !== "number") {
    const got = typeof value === "string" ? `text "${value}"` : String(value).toUpperCase();
    throw new Fault("kind", `${label}: got ${got}, needs a number`);
  }
  const outside =
    !Number.isFinite(value) ||
    (argument.min !== undefined && value < argument.min) ||
    ("aboveMin" in argument && argument.min !== undefined && value === argument.min) ||
    (argument.max !== undefined && value > argument.max) ||
    ("oneOf" in argument && argument.oneOf !== undefined && !argument.oneOf.includes(value));
  if (outside) {
    throw new Fault("range", `${label}: ${value}${unitWord(argument.unit)} (allowed ${allowed(argument)})`);
  }
  if ("whole" in argument && !Number.isInteger(value)) {
    throw new Fault("kind", `${label}: ${value}, needs a whole number`);
  }
  return value;
}

function checkText(name: string, argument: TextArgument, value: unknown): string {
  if (typeof value !== "string") throw new Fault("kind", `${words(name)}: got ${String(value)}, needs text`);
  if (argument.choices && !argument.choices.includes(value)) {
    throw new Fault("range", `${words(name)}: "${value}" (allowed ${allowed(argument)})`);
  }
  return value;
}

function checkKey(name: string, argument: KeyArgument, value: unknown): string {
  const key = typeof value === "number" ? String(value) : value;
  if (typeof key !== "string") throw new Fault("kind", `${words(name)}: got ${String(value)}, needs a size`);
  if (!argument.keys.includes(key)) {
    throw new Fault("missing", `${words(name)}: ${key} is not in the table (allowed ${allowed(argument)})`);
  }
  return key;
}

/**
 * Holds one argument to its definition; the same check serves cells, terminal, studies and tests.
 *
 * @throws Fault that names the argument, what it got, and what is allowed.
 */
export function checkArgument(name: string, argument: Argument, given: Given | undefined): Value {
  if (given === null || given === undefined || given === "") {
    const otherwise = defaultOf(argument);
    if (otherwise === undefined) throw new Fault("kind", `${words(name)}: blank`);
    return otherwise;
  }
  if (argument.kind === "range") {
    const cells = typeof given === "object" ? given : [given];
    const blank = cells.findIndex((cell) => cell === null || cell === "");
    if (blank >= 0) throw new Fault("kind", `${words(name)}: cell ${blank + 1} of ${cells.length} is blank`);
    return cells.map((cell) => checkNumber(name, argument, cell));
  }
  if (typeof given === "object") {
    throw new Fault("kind", `${words(name)}: got ${given.length} cells, needs one`);
  }
  switch (argument.kind) {
    case "text":
      return checkText(name, argument, given);
    case "key":
      return checkKey(name, argument, given);
    case "flag":
      if (typeof given !== "boolean") {
        throw new Fault("kind", `${words(name)}: got ${JSON.stringify(given)}, needs TRUE or FALSE`);
      }
      return given;
    default:
      return checkNumber(name, argument, given);
  }
}
