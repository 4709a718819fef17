import type { Argument, NumberArgument } from "../../formula/arguments";
import { program } from "../../formula/call";
import { checkArgument } from "../../formula/check-argument";
import type { AnyDefinition } from "../../formula/definition";
import { Fault } from "../../formula/fault";
import type { Slots } from "../../formula/run";
import type { Answer, Given } from "../../formula/value";
import { isError, type Plain } from "./plain";
import { type Written, written } from "./written";

type GetGiven = () => Plain | readonly Plain[];

const isPlainNumber = (argument: Argument): argument is NumberArgument =>
  (argument.kind === undefined || argument.kind === "number") && !argument.oneOf && !argument.whole;

/** The cheap part of the check of a number; what it does not pass is judged by `checkArgument`. */
function quick(argument: NumberArgument): (value: number) => boolean {
  const low = argument.min ?? -Number.MAX_VALUE;
  const high = argument.max ?? Number.MAX_VALUE;
  return argument.aboveMin ? (value) => value > low && value <= high : (value) => value >= low && value <= high;
}

const hasError = (given: Plain | readonly Plain[]): boolean =>
  typeof given === "object" && given !== null ? given.some(isError) : isError(given as Plain);

/**
 * A call of a named function from its own steps; NaN where it refuses. Its slots are kept from call to call.
 *
 * @param surelyNumber for each argument, whether it can be nothing but a number or an error.
 */
export function callBySteps(
  definition: AnyDefinition,
  given: readonly GetGiven[],
  surelyNumber: readonly boolean[],
): () => Answer {
  const { acts, constants, result, names } = program(definition);
  const args = Object.entries(definition.args);
  const slots: Slots = Array.from({ length: names.length }, () => 0);
  constants.forEach((value, i) => {
    slots[args.length + i] = value;
  });
  const takes = args.map(([name, argument], i) => {
    const get = given[i] ?? (() => null);
    const check = (value: Plain | readonly Plain[]) => {
      if (hasError(value)) throw new Fault("kind", "");
      return checkArgument(name, argument, value as Given);
    };
    if (!surelyNumber[i] || !isPlainNumber(argument)) return () => check(get());
    const passes = quick(argument);
    return () => {
      const value = get() as number;
      return passes(value) ? value : check(value);
    };
  });
  return () => {
    try {
      for (let i = 0; i < takes.length; i++) slots[i] = (takes[i] as () => Slots[number])();
      for (const act of acts) act(slots);
    } catch (cause) {
      if (cause instanceof Fault) return Number.NaN;
      throw cause;
    }
    const answer = slots[result] as Answer;
    return typeof answer === "number" ? answer - answer + answer : answer;
  };
}

const none: GetGiven = () => null;

/** Calls with few arguments are written out, so that nothing is packed into a list for them. */
function callWritten(fn: Written, given: readonly GetGiven[]): () => Answer {
  const [a = none, b = none, c = none, d = none, e = none, f = none] = given;
  switch (given.length) {
    case 1:
      return () => fn(a());
    case 2:
      return () => fn(a(), b());
    case 3:
      return () => fn(a(), b(), c());
    case 4:
      return () => fn(a(), b(), c(), d());
    case 5:
      return () => fn(a(), b(), c(), d(), e());
    case 6:
      return () => fn(a(), b(), c(), d(), e(), f());
    default:
      return () => fn(...given.map((get) => get()));
  }
}

/** A call of a named function: as plain code where the build has written it, else from its steps. */
export function namedCall(
  definition: AnyDefinition,
  given: readonly GetGiven[],
  surelyNumber: readonly boolean[],
): () => Answer {
  const fn = written.get(definition.name);
  return fn ? callWritten(fn, given) : callBySteps(definition, given, surelyNumber);
}
