import { lead, type Notebook, textAt } from "../notebook/model";
import { rowEntry } from "../notebook/row-entry";
import { rowKind } from "../notebook/rows";
import { type Chain, chainOf, type FormulaSource, plainOf } from "./kernel/chain";
import type { Plain } from "./kernel/plain";
import { cellOf, quantityOf, type StudyRow, unitOf } from "./rows";

/** A typed cell that a study may vary, with what the notebook says of its row. */
export interface StudyInput {
  /** `Supply.run` */
  readonly name: string;
  readonly quantity: string;
  readonly unit: string;
  readonly value: Plain;
  /** Plausible limits, where the notebook has them. */
  readonly low: number | undefined;
  readonly likely: number | undefined;
  readonly high: number | undefined;
  /** What may be chosen, where the row is picked from a list. */
  readonly choices: readonly Plain[] | undefined;
}

export interface StudyResult {
  readonly name: string;
  readonly quantity: string;
  readonly unit: string;
  /** A margin: at least 0 holds. */
  readonly isCheck: boolean;
}

/** What a study runs on: one option's inputs and the results that are asked for, in the order of its chain. Plain data. */
export interface Subject {
  readonly chain: Chain;
  readonly inputs: readonly StudyInput[];
  readonly results: readonly StudyResult[];
}

function inputOf(notebook: Notebook, { cell, name, value }: Chain["inputs"][number]): StudyInput {
  const page = notebook.pages[cell.sheet];
  const entry = page && rowEntry(notebook, page, cell.row);
  return {
    name,
    quantity: page ? textAt(page, cell.row, lead.quantity) : "",
    unit: page ? textAt(page, cell.row, lead.unit) : "",
    value,
    low: entry?.low,
    likely: entry?.likely,
    high: entry?.high,
    choices: entry?.choices?.map((choice) => plainOf(String(choice))),
  };
}

/**
 * The subject of a study: some rows of one option. Checks that do not apply to the option are left out.
 *
 * @throws Refusal when the chain cannot be followed.
 */
export function subjectOf(source: FormulaSource, column: number, rows: readonly StudyRow[]): Subject {
  const { notebook } = source;
  const asked = rows.filter(({ page, row }) => rowKind(page, row) !== "check" || textAt(page, row, column) !== "");
  const chain = chainOf(
    source,
    column,
    asked.map((row) => cellOf(row, column)),
  );
  return {
    chain,
    inputs: chain.inputs.map((input) => inputOf(notebook, input)),
    results: asked.map((row) => ({
      name: row.name,
      quantity: quantityOf(row),
      unit: unitOf(row),
      isCheck: rowKind(row.page, row.row) === "check",
    })),
  };
}

/** The inputs as they stand in the notebook. */
export const valuesOf = (subject: Subject): Plain[] => subject.inputs.map(({ value }) => value);
