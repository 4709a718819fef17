import { isFormula } from "../engine/content";
import { noParse } from "../engine/parsed";
import type { CellValue } from "../engine/value";
import { type CellName, cellName } from "./cell-name";
import { feedsOf } from "./feeds";
import { namedFormula, valuedFormula } from "./formula-words";
import type { LiveNotebook } from "./live";
import { firstOption, type Position, pageById } from "./model";
import { type NamedCall, namedCalls } from "./named-calls";
import type { FindFunction } from "./named-function";
import { rowEntry } from "./row-entry";

/** A cell with its value, as one part of another's working. */
export interface NamedValue extends CellName {
  readonly value: CellValue;
  /** Inside the plausible limits of its row; undefined where there are none or the value is no number. */
  readonly plausible: boolean | undefined;
}

/** The formula of a cell, written three ways. */
export interface WrittenFormula {
  /** As it was typed, without `=`. */
  readonly cells: string;
  /** `Voltage lost = CONDUCTOR.DROP(Current while running, ...)`; undefined when the engine does not show it. */
  readonly names: string | undefined;
  /** The same with the numbers put in. */
  readonly numbers: string | undefined;
}

/** What is known of an input's value. */
export interface InputLimits {
  readonly low: number | undefined;
  readonly likely: number | undefined;
  readonly high: number | undefined;
  readonly choices: readonly (string | number)[] | undefined;
  /** Undefined where no limits are given or the value is no number. */
  readonly plausible: boolean | undefined;
}

/** How a cell comes to its value, as data. */
export interface Working extends NamedValue {
  readonly kind: "input" | "result" | "empty";
  /** Exactly what was typed. */
  readonly text: string;
  readonly formula: WrittenFormula | undefined;
  /** The cells that the formula reads. */
  readonly parts: readonly NamedValue[];
  /** The named functions in the formula, inner ones first. */
  readonly calls: readonly NamedCall[];
  readonly limits: InputLimits | undefined;
  /** The cells whose formulas read this one. */
  readonly usedBy: readonly NamedValue[];
  /** Why something is not shown. */
  readonly note: string | undefined;
}

function limitsOf(live: LiveNotebook, at: Position, value: CellValue): InputLimits | undefined {
  const page = pageById(live.notebook, at.page);
  const entry = page && at.column >= firstOption ? rowEntry(live.notebook, page, at.row) : undefined;
  if (!entry) return undefined;
  const { low, likely, high, choices } = entry;
  if (low === undefined && likely === undefined && high === undefined && !choices) return undefined;
  const judged = value.kind === "number" && (low !== undefined || high !== undefined);
  const plausible = judged
    ? value.value >= (low ?? Number.NEGATIVE_INFINITY) && value.value <= (high ?? Number.POSITIVE_INFINITY)
    : undefined;
  return { low, likely, high, choices, plausible };
}

/**
 * The working of a cell: what it is, how its formula reads in words and with numbers, every step of the named
 * functions in it, what feeds it and what it feeds.
 *
 * @returns undefined when the page is gone.
 */
export function workingOf(live: LiveNotebook, at: Position, find: FindFunction = live.find): Working | undefined {
  const { notebook } = live;
  const named = (one: Position): NamedValue[] => {
    const name = cellName(notebook, one);
    const value = live.value(one);
    return name ? [{ ...name, value, plausible: limitsOf(live, one, value)?.plausible }] : [];
  };
  const [self] = named(at);
  if (!self) return undefined;
  const text = live.text(at);
  const calculated = isFormula(text);
  const parsed = calculated ? live.parsed(at) : undefined;
  const feeds = feedsOf(notebook);
  const title = self.quantity ? `${self.quantity} = ` : "";
  return {
    ...self,
    kind: calculated ? "result" : text === "" ? "empty" : "input",
    text,
    formula: calculated
      ? {
          cells: text.slice(1),
          names: parsed && title + namedFormula(notebook, at, parsed),
          numbers: parsed && title + valuedFormula(live, parsed),
        }
      : undefined,
    parts: feeds.feeding(at).flatMap(named),
    calls: parsed ? namedCalls(live, at, parsed, find) : [],
    limits: text !== "" ? limitsOf(live, at, self.value) : undefined,
    usedBy: feeds.fedBy(at).flatMap(named),
    note: calculated && !live.showsFormulas ? noParse : undefined,
  };
}
