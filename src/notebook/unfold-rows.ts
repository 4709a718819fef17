import { contentOf } from "../engine/content";
import { type Argument, allowed, defaultOf, words } from "../formula/arguments";
import type { AnyDefinition } from "../formula/definition";
import type { CellOf, UnfoldedRow } from "../formula/unfold/unfold";
import { say } from "../words/say";
import type { CallText } from "./row-calls";

/** The name of the row that says whether the branch is taken; no symbol holds a blank. */
const branchTaken = "branch taken";

/** A row that comes into the place of a call. */
export interface StepRow {
  /** By which the formulas of other rows ask for it. */
  readonly name: string;
  readonly title: string;
  readonly unit: string;
  readonly basis: string;
  /** What its cell holds for one call; `cellOf` says where a row stands. */
  readonly text: (call: CallText, cellOf: CellOf) => string;
}

const oneCell = /^(?:'(?:[^']|'')+'!|[\p{L}_][\p{L}\p{N}_]*!)?\$?[A-Za-z]{1,3}\$?[1-9]\d*$/u;
/** What is typed for a formula: a plain number or word as such. */
function typed(formula: string): string {
  const word = /^"([^"]*)"$/.exec(formula)?.[1];
  if (word !== undefined && contentOf(word).kind === "text" && !word.startsWith("'")) return word;
  return contentOf(formula).kind === "number" ? formula : `=${formula}`;
}

const literal = (value: number | string | boolean): string =>
  typeof value === "string" ? `"${value.replaceAll('"', '""')}"` : String(value).toUpperCase();

/** An argument as a formula of its own; what is left out or blank takes the default, as in the call. */
function argumentFormula(argument: Argument, given: string): string {
  const otherwise = defaultOf(argument) as number | string | boolean | undefined;
  if (given === "") return otherwise === undefined ? "NA()" : literal(otherwise);
  if (otherwise === undefined || !oneCell.test(given)) return given;
  return `IF(${given}="",${literal(otherwise)},${given})`;
}

/** The arguments that need a row: all but those that are plain references wherever the call stands. */
function argumentRows(definition: AnyDefinition, calls: readonly CallText[]): StepRow[] {
  return Object.entries(definition.args).flatMap(([name, argument], place) => {
    const given = (call: CallText) => call.args[place] ?? "";
    if (defaultOf(argument) === undefined && calls.every((call) => oneCell.test(given(call)))) return [];
    return {
      name,
      title: argument.about.charAt(0).toUpperCase() + argument.about.slice(1),
      unit: "unit" in argument ? argument.unit : "",
      basis: say`${words(name)} of ${definition.name}; allowed ${allowed(argument)}`,
      text: (call) => typed(argumentFormula(argument, given(call))),
    };
  });
}

const branchRow = ({ name }: AnyDefinition): StepRow => ({
  name: branchTaken,
  title: say`The branch with ${name} is taken`,
  unit: "",
  basis: say`where it is not, the rows of its steps are not used`,
  text: ({ taken }) => `=${taken ?? "TRUE()"}`,
});

/** The same row, which says that it is not used while the branch of its call is not taken. */
const inBranch = (row: StepRow): StepRow => ({
  ...row,
  text: (call, cellOf) => {
    const text = row.text(call, cellOf);
    return text.startsWith("=") ? `=IF(${cellOf(branchTaken)},${text.slice(1)},${literal(say`not used`)})` : text;
  },
});

/**
 * The rows that stand for the calls of a function in a row: its arguments and steps, and in front of them, where a call
 * stands in a branch, one that says whether that is taken.
 *
 * @param ownUnit of the row with the calls, for what has any unit.
 */
export function stepRows(
  definition: AnyDefinition,
  unfolded: readonly UnfoldedRow[],
  calls: readonly CallText[],
  ownUnit: string,
): StepRow[] {
  const steps = unfolded.map(
    ({ name, title, unit, basis, formula }): StepRow => ({
      name,
      title,
      unit,
      basis,
      text: (_, cellOf) => typed(formula(cellOf)),
    }),
  );
  const rows = [...argumentRows(definition, calls), ...steps].map((row) =>
    row.unit === "any" ? { ...row, unit: ownUnit } : row,
  );
  return calls.some(({ taken }) => taken !== undefined) ? [branchRow(definition), ...rows.map(inBranch)] : rows;
}
