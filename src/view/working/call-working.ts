import type { CellValue } from "../../engine/value";
import { explainCall } from "../../formula/explain";
import type { Explanation } from "../../formula/explanation";
import type { Given } from "../../formula/value";
import { catalogue } from "../../functions";
import type { LiveNotebook } from "../../notebook/live";
import type { Page } from "../../notebook/model";
import { argumentTexts, scanCalls } from "../typing/scan-calls";

/** One call of a named function in a formula, worked through. */
export interface CallWorking {
  /** The arguments as they stand in the formula. */
  readonly written: readonly string[];
  /** Undefined when an argument has no value; `refusal` says why. */
  readonly explanation: Explanation | undefined;
  readonly title: string;
  readonly name: string;
  readonly refusal: string | undefined;
}

const byName = new Map(catalogue.map((definition) => [definition.name as string, definition]));

class NoValue {
  constructor(readonly sentence: string) {}
}

/** What a calculated value hands to a function. */
function given(value: CellValue): Given | NoValue {
  switch (value.kind) {
    case "blank":
      return null;
    case "number":
    case "flag":
      return value.value;
    case "error":
      return new NoValue(value.from ? `${value.sentence} (from ${value.from})` : value.sentence);
    default:
      return value.text;
  }
}

function givenBy(live: LiveNotebook, text: string, home: Page): Given | NoValue {
  if (text === "") return null;
  const cells = live.calculate(`=${text}`, home.id).flat().map(given);
  const failed = cells.find((cell) => cell instanceof NoValue);
  if (failed) return failed;
  return cells.length === 1 ? (cells[0] as Given) : (cells as (number | string | boolean | null)[]);
}

/** The calls of named functions in a formula, in the order in which they stand; none when it has none. */
export function callsWorked(live: LiveNotebook, home: Page, formula: string): CallWorking[] {
  return scanCalls(formula).flatMap((call) => {
    const definition = byName.get(call.name);
    if (!definition || call.close === undefined) return [];
    const written = argumentTexts(formula, call);
    const values = written.map((text) => givenBy(live, text, home));
    const failed = values.find((value) => value instanceof NoValue);
    const explanation = failed ? undefined : explainCall(definition, values as Given[]);
    const refusal = failed?.sentence ?? explanation?.refusal?.sentence;
    return [{ written, explanation, title: definition.title, name: definition.name, refusal }];
  });
}
