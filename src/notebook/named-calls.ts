import { type Parsed, partsOf } from "../engine/parsed";
import type { CellValue } from "../engine/value";
import type { AnyDefinition } from "../formula/definition";
import { explainCall } from "../formula/explain";
import type { Explanation } from "../formula/explanation";
import type { Given } from "../formula/value";
import { say } from "../words/say";
import { countsNow, partValues } from "./counts-now";
import { cellFormula, namedFormula, valuedFormula } from "./formula-words";
import type { LiveNotebook } from "./live";
import type { Position } from "./model";
import type { FindFunction } from "./named-function";

/** One call of a named function in a cell, with the values that its arguments have there. */
export interface NamedCall {
  readonly name: string;
  /** In cell addresses, in names of quantities, and with the numbers put in. */
  readonly cells: string;
  readonly names: string;
  readonly numbers: string;
  /** False in a branch of a choice that is not taken now. */
  readonly used: boolean;
  /** Undefined when an argument is an error, which then is the result. */
  readonly explanation: Explanation | undefined;
  /** The sentence of the argument's error, or of the function's own refusal. */
  readonly refusal: string | undefined;
}

interface Failed {
  readonly sentence: string;
}

const isFailed = (given: Given | Failed): given is Failed =>
  typeof given === "object" && given !== null && "sentence" in given;

function givenOf(value: CellValue): number | string | boolean | null | Failed {
  switch (value.kind) {
    case "blank":
      return null;
    case "number":
    case "flag":
      return value.value;
    case "text":
      return value.text;
    case "error":
      return { sentence: value.from ? say`${value.sentence} (from ${value.from})` : value.sentence };
  }
}

function argumentOf(live: LiveNotebook, parsed: Parsed): Given | Failed {
  const cells = partValues(live, parsed).map(givenOf);
  const failed = cells.find((cell) => isFailed(cell));
  if (failed !== undefined) return failed;
  return cells.length === 1 ? (cells[0] as Given) : (cells as readonly (number | string | boolean | null)[]);
}

/** The calls of named functions in a formula, inner ones before those that use them. */
export function namedCalls(live: LiveNotebook, home: Position, parsed: Parsed, find: FindFunction): NamedCall[] {
  const calls: NamedCall[] = [];
  const walk = (one: Parsed, used: boolean): void => {
    const counts = one.kind === "call" ? countsNow(live, one) : () => true;
    partsOf(one).forEach((part, i) => {
      walk(part, used && counts(i));
    });
    const definition = one.kind === "call" ? find(one.name) : undefined;
    if (one.kind === "call" && definition) calls.push(explained(live, home, one, definition, used));
  };
  walk(parsed, true);
  return calls;
}

function explained(
  live: LiveNotebook,
  home: Position,
  call: Extract<Parsed, { kind: "call" }>,
  definition: AnyDefinition,
  used: boolean,
): NamedCall {
  const given = call.args.map((argument) => argumentOf(live, argument));
  const failed = given.find(isFailed);
  const explanation = failed ? undefined : explainCall(definition, given as Given[]);
  return {
    name: definition.name,
    cells: cellFormula(live.notebook, call),
    names: namedFormula(live.notebook, home, call),
    numbers: valuedFormula(live, call),
    used,
    explanation,
    refusal: failed?.sentence ?? explanation?.refusal?.sentence,
  };
}
