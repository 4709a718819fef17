import { say } from "../words/say";
import type { Arithmetic, Comparison, Expression, MathName } from "./expression";
import { UnknownName } from "./unknown-name";
import type { Value } from "./value";

/** Values by position: arguments, constants, symbols in order. */
export type Slots = Value[];
export type Run = (slots: Slots) => number;
export type Test = (slots: Slots) => boolean;

/** Finds the position of a name, or undefined where it is not defined yet. */
export type Places = ReadonlyMap<string, number>;

const mathFunctions: Readonly<Record<MathName, (a: number, b: number) => number>> = {
  sqrt: Math.sqrt,
  abs: Math.abs,
  ceil: Math.ceil,
  floor: Math.floor,
  exp: Math.exp,
  ln: Math.log,
  log10: Math.log10,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  asin: Math.asin,
  acos: Math.acos,
  atan: Math.atan,
  // Same order of operations as the engine's RADIANS and DEGREES, so that unfolded cells agree to the last bit.
  radians: (a) => a * (Math.PI / 180),
  degrees: (a) => a * (180 / Math.PI),
  min: (a, b) => Math.min(a, b),
  max: (a, b) => Math.max(a, b),
};

const combine: Readonly<Record<Arithmetic, (left: Run, right: Run) => Run>> = {
  "+": (left, right) => (s) => left(s) + right(s),
  "-": (left, right) => (s) => left(s) - right(s),
  "*": (left, right) => (s) => left(s) * right(s),
  "/": (left, right) => (s) => left(s) / right(s),
  "^": (left, right) => (s) => left(s) ** right(s),
};

const relate: Readonly<Record<Comparison, (left: Run, right: Run) => Test>> = {
  "<": (left, right) => (s) => left(s) < right(s),
  "<=": (left, right) => (s) => left(s) <= right(s),
  ">": (left, right) => (s) => left(s) > right(s),
  ">=": (left, right) => (s) => left(s) >= right(s),
  "==": (left, right) => (s) => left(s) === right(s),
  "!=": (left, right) => (s) => left(s) !== right(s),
};

/**
 * Turns a tree into a function of the slots.
 *
 * @throws Error for a name that is not defined before its use, or a comparison where a number is due.
 */
export function runnable(expression: Expression, places: Places): Run {
  switch (expression.kind) {
    case "number": {
      const { value } = expression;
      return () => value;
    }
    case "name": {
      if (expression.name === "pi") return () => Math.PI;
      const place = places.get(expression.name);
      if (place === undefined) throw new UnknownName(expression.name);
      return (s) => s[place] as number;
    }
    case "minus": {
      const of = runnable(expression.of, places);
      return (s) => -of(s);
    }
    case "binary":
      return combine[expression.op](runnable(expression.left, places), runnable(expression.right, places));
    case "call": {
      const fn = mathFunctions[expression.name];
      const [first, second] = expression.args.map((arg) => runnable(arg, places));
      if (!first) throw new Error(say`${expression.name} needs an argument`);
      return second ? (s) => fn(first(s), second(s)) : (s) => fn(first(s), 0);
    }
    case "choice": {
      const test = testable(expression.test, places);
      const then = runnable(expression.then, places);
      const otherwise = runnable(expression.otherwise, places);
      return (s) => (test(s) ? then(s) : otherwise(s));
    }
    default:
      throw new Error(say`a condition stands where a number is due`);
  }
}

/** Turns a condition into a function of the slots; a bare name is read as a flag. */
export function testable(expression: Expression, places: Places): Test {
  switch (expression.kind) {
    case "compare":
      return relate[expression.op](runnable(expression.left, places), runnable(expression.right, places));
    case "logic": {
      const left = testable(expression.left, places);
      const right = testable(expression.right, places);
      return expression.op === "and" ? (s) => left(s) && right(s) : (s) => left(s) || right(s);
    }
    case "name": {
      const place = places.get(expression.name);
      if (place === undefined) throw new UnknownName(expression.name);
      return (s) => s[place] === true;
    }
    default:
      throw new Error(say`a number stands where a condition is due`);
  }
}
