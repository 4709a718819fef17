import fc from "fast-check";
import { compile, type Unit, unit } from "mathjs";
import { expect } from "vitest";
import type { NumberArgument } from "../../src/formula/arguments";
import { callFunction, inOrder } from "../../src/formula/call";
import { type AnyDefinition, resultUnit } from "../../src/formula/definition";
import { type UnitText, unitNotation } from "../../src/units/names";

export type Numbers = Readonly<Record<string, number>>;

/** Calls a function with arguments by name. */
export const callByName = (definition: AnyDefinition, given: Readonly<Record<string, unknown>>): number =>
  callFunction(definition, inOrder(definition, given)) as number;

interface Options {
  /** Narrower limits than the function's own, by argument. */
  readonly within?: Readonly<Record<string, readonly [number, number]>>;
  /** Inputs that the function refuses are left to other tests. */
  readonly where?: (given: Numbers) => boolean;
  /** 1e-9 for algebra, 1e-8 for roots and integrals. */
  readonly relative?: number;
  /** What the tolerance is relative to where the result can cancel to nothing. */
  readonly scale?: (given: Numbers) => number;
}

function arbitrary(argument: NumberArgument, limits: readonly [number, number] | undefined): fc.Arbitrary<number> {
  const [min, max] = limits ?? [argument.min ?? -1e6, argument.max ?? 1e6];
  if (argument.oneOf) return fc.constantFrom(...argument.oneOf);
  if (argument.whole) return fc.integer({ min, max });
  // Even over the range, both ends included: fast-check's own doubles are mostly tiny or subnormal.
  const parts = 2 ** 31 - 1;
  const first = !limits && argument.aboveMin ? 1 : 0;
  return fc.integer({ min: first, max: parts }).map((i) => min + (i / parts) * (max - min));
}

/** Holds a function against a second calculation over 400 random inputs within its limits. */
export function agrees(
  definition: AnyDefinition,
  second: (given: Numbers) => number,
  { within = {}, where = () => true, relative = 1e-9, scale = () => 0 }: Options = {},
): void {
  const inputs = Object.fromEntries(
    Object.entries(definition.args)
      .filter(([, argument]) => argument.kind === undefined || argument.kind === "number")
      .map(([name, argument]) => [name, arbitrary(argument as NumberArgument, within[name])]),
  );
  fc.assert(
    fc.property(fc.record(inputs), (given) => {
      fc.pre(where(given));
      const ours = callByName(definition, given);
      const theirs = second(given);
      const allowed = relative * Math.max(Math.abs(theirs), scale(given));
      expect(Math.abs(ours - theirs), `${definition.name} gave ${ours}, expected ${theirs}`).toBeLessThanOrEqual(
        allowed,
      );
    }),
    { numRuns: 400, seed: 20 },
  );
}

const inUnit = (value: number, text: UnitText | "any"): number | Unit =>
  text === "any" || unitNotation[text] === "1" ? value : unit(value, unitNotation[text]);

/**
 * The same relation written for the units library: every argument goes in as a quantity, the result comes out
 * in the unit that the function declares, so a slip of 1000 in the function shows.
 */
export function byUnits(definition: AnyDefinition, expression: string): (given: Numbers) => number {
  const compiled = compile(expression);
  const text = resultUnit(definition) as UnitText;
  return (given) => {
    const scope = Object.fromEntries(
      Object.entries(given).map(([name, value]) => [
        // The units library keeps the word "end" for itself.
        name === "end" ? "end_" : name,
        inUnit(value, (definition.args[name] as NumberArgument).unit),
      ]),
    );
    const answer: number | Unit = compiled.evaluate(scope);
    if (typeof answer === "number") return answer;
    return unitNotation[text] === "1" ? answer.toNumber("") : answer.toNumber(unitNotation[text]);
  };
}
