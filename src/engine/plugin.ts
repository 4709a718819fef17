import {
  CellError,
  EmptyValue,
  ErrorType,
  FunctionArgumentType,
  type FunctionMetadata,
  FunctionPlugin,
  type FunctionPluginDefinition,
  HyperFormula,
  SimpleRangeValue,
} from "hyperformula";
import { callFunction } from "../formula/call";
import type { AnyDefinition } from "../formula/definition";
import { Fault, type FaultCode } from "../formula/fault";
import type { Answer, Given } from "../formula/value";
import { say } from "../words/say";

type Call = Parameters<FunctionPlugin["runFunction"]>;

const errorTypes: Readonly<Record<FaultCode, ErrorType>> = {
  kind: ErrorType.VALUE,
  range: ErrorType.NUM,
  missing: ErrorType.NA,
};

/** An error in an argument is handed on as it is, so that its first cell stays known. */
class Passed {
  constructor(readonly error: CellError) {}
}

function scalar(value: unknown): number | string | boolean | null {
  if (value instanceof CellError) throw new Passed(value);
  if (value === EmptyValue || value === undefined || value === null) return null;
  // The engine keeps a percentage or a date as an object around its number.
  if (typeof value === "object" && "val" in value) return value.val as number;
  return value as number | string | boolean;
}

const given = (value: unknown): Given =>
  value instanceof SimpleRangeValue ? value.data.flat().map(scalar) : scalar(value);

/** The one place where a named function meets the engine: nothing is thrown into it, nothing unset returned. */
function answer(definition: AnyDefinition, values: readonly unknown[]): Answer | CellError {
  try {
    // The engine pads with the spare parameter; only what was written counts.
    return callFunction(definition, values.map(given));
  } catch (problem) {
    if (problem instanceof Passed) return problem.error;
    if (problem instanceof Fault) return new CellError(errorTypes[problem.code], problem.sentence);
    const cause = problem instanceof Error ? problem.message : String(problem);
    return new CellError(ErrorType.ERROR, say`${definition.name} failed in itself: ${cause}`);
  }
}

/**
 * Every parameter is optional and takes anything, and one spare takes what is too much: so all limits, blanks
 * and counts are judged by the definition, with its own sentences.
 */
const metadata = (definition: AnyDefinition, method: string): FunctionMetadata => ({
  method,
  parameters: [...Object.keys(definition.args), "spare"].map(() => ({
    argumentType: FunctionArgumentType.ANY,
    optionalArg: true,
  })),
  repeatLastArgs: 1,
});

/** A function of a notebook's own: its definition, or the sentence that it answers while it has a mistake. */
export type OwnCall =
  | { readonly name: string; readonly definition: AnyDefinition }
  | { readonly name: string; readonly sentence: string };

/** One plugin for a whole catalogue of definitions. */
function catalogueFunctions(
  definitions: readonly AnyDefinition[],
  refused: readonly OwnCall[] = [],
): FunctionPluginDefinition {
  class CatalogueFunctions extends FunctionPlugin {
    static override implementedFunctions: Record<string, FunctionMetadata> = {};
    static override aliases = {};
  }
  definitions.forEach((definition, i) => {
    const method = `named${i}`;
    CatalogueFunctions.implementedFunctions[definition.name] = metadata(definition, method);
    Object.defineProperty(CatalogueFunctions.prototype, method, {
      value(this: CatalogueFunctions, ast: { args: Call[0] }, state: Call[1]) {
        const written = ast.args.length;
        return this.runFunction(ast.args, state, this.metadata(definition.name), (...values: unknown[]) =>
          answer(definition, values.slice(0, written)),
        );
      },
    });
  });
  refused.forEach((own, i) => {
    const method = `refused${i}`;
    CatalogueFunctions.implementedFunctions[own.name] = {
      method,
      parameters: [{ argumentType: FunctionArgumentType.ANY, optionalArg: true }],
      repeatLastArgs: 1,
    };
    Object.defineProperty(CatalogueFunctions.prototype, method, {
      value: () => new CellError(ErrorType.NAME, "sentence" in own ? own.sentence : ""),
    });
  });
  return CatalogueFunctions;
}

/**
 * Builds an engine that knows a notebook's own functions beside the shipped ones. The engine takes its functions from a
 * list of the whole process when it is built, so they are in that list for so long and no longer.
 */
export function withOwnFunctions<T>(own: readonly OwnCall[], build: () => T): T {
  if (own.length === 0) return build();
  const plugin = catalogueFunctions(
    own.flatMap((one) => ("definition" in one ? one.definition : [])),
    own.filter((one) => !("definition" in one)),
  );
  HyperFormula.registerFunctionPlugin(plugin, { enGB: Object.fromEntries(own.map(({ name }) => [name, name])) });
  try {
    return build();
  } finally {
    HyperFormula.unregisterFunctionPlugin(plugin);
  }
}

/** Makes the functions known to the engine; the engine keeps them for the whole process. */
export function registerFunctions(definitions: readonly AnyDefinition[]): void {
  const names = Object.fromEntries(definitions.map(({ name }) => [name, name]));
  HyperFormula.registerFunctionPlugin(catalogueFunctions(definitions), { enGB: names });
}
