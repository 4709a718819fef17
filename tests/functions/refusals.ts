import { expect } from "vitest";
import { defaultOf, type NumberArgument, words } from "../../src/formula/arguments";
import { callFunction, inOrder } from "../../src/formula/call";
import type { AnyDefinition } from "../../src/formula/definition";
import { Fault, type FaultCode } from "../../src/formula/fault";

type Given = Readonly<Record<string, unknown>>;

/** What a call is refused with. @throws Error when it is not refused. */
function refusalOf(definition: AnyDefinition, given: Given): Fault {
  try {
    callFunction(definition, inOrder(definition, given));
  } catch (cause) {
    if (cause instanceof Fault) return cause;
    throw cause;
  }
  throw new Error(`${definition.name} took ${JSON.stringify(given)}`);
}

/** Expects a refusal of a kind whose sentence begins with the argument's words. */
export function refuses(definition: AnyDefinition, given: Given, code: FaultCode, sentence: string | RegExp): void {
  const fault = refusalOf(definition, given);
  expect(fault.code, fault.sentence).toBe(code);
  if (typeof sentence === "string") expect(fault.sentence).toBe(sentence);
  else expect(fault.sentence).toMatch(sentence);
}

/** Blank, text and values past each limit, argument by argument, with everything else as in a good call. */
export function refusesEveryBadArgument(definition: AnyDefinition, good: Given): void {
  callFunction(definition, inOrder(definition, good));
  for (const [name, argument] of Object.entries(definition.args)) {
    const label = words(name);
    if (defaultOf(argument) === undefined) {
      refuses(definition, { ...good, [name]: null }, "kind", `${label}: blank`);
    }
    if (argument.kind !== undefined && argument.kind !== "number") continue;
    const { min, max, aboveMin } = argument as NumberArgument;
    refuses(definition, { ...good, [name]: "x" }, "kind", `${label}: got text "x", needs a number`);
    const outside = new RegExp(`^${label}: .+ \\(allowed .+\\)$`);
    if (min !== undefined) refuses(definition, { ...good, [name]: min - 1 }, "range", outside);
    if (aboveMin) refuses(definition, { ...good, [name]: min }, "range", outside);
    if (max !== undefined) refuses(definition, { ...good, [name]: max + 1 }, "range", outside);
  }
}
