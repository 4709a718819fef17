import { say } from "../words/say";
import { defaultOf } from "./arguments";
import { checkArgument } from "./check-argument";
import type { AnyDefinition } from "./definition";
import { Fault } from "./fault";
import type { Slots } from "./run";
import { type Act, Scope } from "./scope";
import { prepareStep } from "./steps";
import type { Answer, Given, Value } from "./value";

interface Program {
  readonly acts: readonly Act[];
  readonly constants: readonly number[];
  readonly result: number;
  readonly names: readonly string[];
}

const programs = new WeakMap<AnyDefinition, Program>();

/** Reads a definition's steps once; later calls reuse them. @throws Error when a step cannot be read. */
export function program(definition: AnyDefinition): Program {
  const known = programs.get(definition);
  if (known) return known;
  const scope = new Scope();
  try {
    for (const name of Object.keys(definition.args)) scope.add(name);
    const constants = Object.entries(definition.constants ?? {}).map(([name, { value }]) => {
      scope.add(name);
      return value;
    });
    const acts = definition.steps.map((step) => prepareStep(step, scope));
    const last = definition.steps.findLast((step) => step.kind !== "require");
    if (!last || !("symbol" in last)) throw new Error(say`no step gives a result`);
    const made = { acts, constants, result: scope.at(last.symbol), names: scope.names };
    programs.set(definition, made);
    return made;
  } catch (cause) {
    throw new Error(`${definition.name}: ${cause instanceof Error ? cause.message : String(cause)}`);
  }
}

function checkAll(definition: AnyDefinition, given: readonly Given[]): Value[] {
  const args = Object.entries(definition.args);
  if (given.length > args.length) {
    throw new Fault("kind", say`${definition.name}: takes ${args.length} arguments, got ${given.length}`);
  }
  return args.map(([name, argument], i) => checkArgument(name, argument, given[i]));
}

function run(definition: AnyDefinition, given: readonly Given[]): Slots {
  const { acts, constants } = program(definition);
  const slots: Slots = [...checkAll(definition, given), ...constants];
  for (const act of acts) act(slots);
  return slots;
}

/**
 * Calls a named function with arguments in the order of its definition; blank (`null`) takes the default.
 *
 * @throws Fault that names the argument or the step, for wrong input, no solution or no entry in a table.
 */
export function callFunction(definition: AnyDefinition, given: readonly Given[]): Answer {
  const answer = run(definition, given)[program(definition).result] as Answer;
  if (typeof answer === "number" && !Number.isFinite(answer)) {
    throw new Fault("range", say`${definition.name}: no finite result for these inputs`);
  }
  // A cell has no minus zero.
  return typeof answer === "number" ? answer + 0 : answer;
}

/** Every name of a call with its value: arguments, constants, symbols. @throws Fault as `callFunction`. */
export function traceFunction(definition: AnyDefinition, given: readonly Given[]): ReadonlyMap<string, Value> {
  const slots = run(definition, given);
  return new Map(program(definition).names.map((name, place) => [name, slots[place] as Value]));
}

/** Arguments by name, put in the order of the definition; what is left out is blank. */
export function inOrder(definition: AnyDefinition, given: Readonly<Record<string, unknown>>): Given[] {
  return Object.entries(definition.args).map(
    ([name, argument]) => (given[name] ?? defaultOf(argument) ?? null) as Given,
  );
}
