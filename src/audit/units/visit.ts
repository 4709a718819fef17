import type { Parsed, ParsedCell } from "../../engine/parsed";
import type { FindFunction } from "../../notebook/named-function";
import type { Judge } from "./judge";
import type { Measure } from "./measure";

/** What surrounds a formula: the units of what it reads, and how its parts are called in a sentence. */
export interface Surroundings {
  readonly cell: (at: ParsedCell) => Measure;
  /** The cells of a range that exist, row by row. */
  readonly cells: (from: ParsedCell, to: ParsedCell) => readonly (readonly ParsedCell[])[];
  readonly named: (name: string) => Measure;
  readonly words: (part: Parsed) => string;
  /** A text that a part stands for: typed, or in the cell that it refers to. */
  readonly text: (part: Parsed) => string | undefined;
  readonly find: FindFunction;
  /** Whether typed thousands, 60 and the like may carry one unit into another. */
  readonly conversions: boolean;
}

/** A walk over a formula, as the rules for single functions see it. */
export interface Visit {
  readonly judge: Judge;
  readonly around: Surroundings;
  readonly words: (part: Parsed) => string;
  readonly measure: (part: Parsed) => Measure;
  readonly power: (a: Measure, b: Measure, names: readonly [string, string]) => Measure;
}

export type Call = Extract<Parsed, { kind: "call" }>;

/** How a function treats the units of its arguments: the unit of its result. */
export type Rule = (visit: Visit, call: Call) => Measure;
