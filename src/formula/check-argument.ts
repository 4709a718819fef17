import { say } from "../words/say";
import {
  type Argument,
  allowed,
  defaultOf,
  type KeyArgument,
  type NumberArgument,
  type RangeArgument,
  type TextArgument,
  unitWord,
  words,
} from "./arguments";
import { Fault } from "./fault";
import type { Given, Value } from "./value";

function checkNumber(name: string, argument: NumberArgument | RangeArgument, value: unknown): number {
  const label = words(name);
  if (typeof value !== "number") {
    const got = typeof value === "string" ? say`text "${value}"` : String(value).toUpperCase();
    throw new Fault("kind", say`${label}: got ${got}, needs a number`);
  }
  const outside =
    !Number.isFinite(value) ||
    (argument.min !== undefined && value < argument.min) ||
    ("aboveMin" in argument && argument.min !== undefined && value === argument.min) ||
    (argument.max !== undefined && value > argument.max) ||
    ("oneOf" in argument && argument.oneOf !== undefined && !argument.oneOf.includes(value));
  if (outside) {
    throw new Fault("range", say`${label}: ${value}${unitWord(argument.unit)} (allowed ${allowed(argument)})`);
  }
  if ("whole" in argument && !Number.isInteger(value)) {
    throw new Fault("kind", say`${label}: ${value}, needs a whole number`);
  }
  return value;
}

function checkText(name: string, argument: TextArgument, value: unknown): string {
  if (typeof value !== "string") throw new Fault("kind", say`${words(name)}: got ${String(value)}, needs text`);
  if (argument.choices && !argument.choices.includes(value)) {
    throw new Fault("range", say`${words(name)}: "${value}" (allowed ${allowed(argument)})`);
  }
  return value;
}

function checkKey(name: string, argument: KeyArgument, value: unknown): string {
  const key = typeof value === "number" ? String(value) : value;
  if (typeof key !== "string") throw new Fault("kind", say`${words(name)}: got ${String(value)}, needs a size`);
  if (!argument.keys.includes(key)) {
    throw new Fault("missing", say`${words(name)}: ${key} is not in the table (allowed ${allowed(argument)})`);
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
    if (otherwise === undefined) throw new Fault("kind", say`${words(name)}: blank`);
    return otherwise;
  }
  if (argument.kind === "range") {
    const cells = typeof given === "object" ? given : [given];
    const blank = cells.findIndex((cell) => cell === null || cell === "");
    if (blank >= 0) throw new Fault("kind", say`${words(name)}: cell ${blank + 1} of ${cells.length} is blank`);
    return cells.map((cell) => checkNumber(name, argument, cell));
  }
  if (typeof given === "object") {
    throw new Fault("kind", say`${words(name)}: got ${given.length} cells, needs one`);
  }
  switch (argument.kind) {
    case "text":
      return checkText(name, argument, given);
    case "key":
      return checkKey(name, argument, given);
    case "flag":
      if (typeof given !== "boolean") {
        throw new Fault("kind", say`${words(name)}: got ${JSON.stringify(given)}, needs TRUE or FALSE`);
      }
      return given;
    default:
      return checkNumber(name, argument, given);
  }
}
