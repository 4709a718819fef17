import type { AnyDefinition } from "../../formula/definition";
import { say } from "../../words/say";
import { emptyRow, withPage } from "../edit-cells";
import { addPage } from "../edit-pages";
import { columnsOf, type Notebook, type Page, pageByName, type Row } from "../model";
import { Refusal } from "../refusal";
import { functionColumns, functionPages } from "./function-page";
import { rowsOfFunction, rowsToBeginWith } from "./function-rows";
import { ownFunctions, whyNotNamed } from "./own-functions";

const newPage = (): string => say`Own functions`;

/** The page that takes another function, made where there is none. */
function withFunctionPage(notebook: Notebook): { readonly notebook: Notebook; readonly page: Page } {
  const [last] = functionPages(notebook).slice(-1);
  if (last) return { notebook, page: last };
  const added = addPage(notebook, newPage(), "free");
  const page = pageByName(added, newPage()) as Page;
  const empty = { ...page, rows: [[...functionColumns]] };
  return { notebook: withPage(added, empty), page: empty };
}

/** A notebook with another function, and where its first row stands. */
export interface AddedFunction {
  readonly notebook: Notebook;
  readonly page: string;
  readonly row: number;
}

function added(before: Notebook, name: string, block: readonly Row[]): AddedFunction {
  const reason =
    whyNotNamed(name) ??
    (ownFunctions(before).some((one) => one.name === name)
      ? say`${name} is one of the notebook's own functions already; give another name`
      : undefined);
  if (reason) throw new Refusal(`${reason}.`);
  const { notebook, page } = withFunctionPage(before);
  const width = Math.max(columnsOf(page), functionColumns.length);
  const filled = page.rows.findLastIndex((row) => row.some((text) => text !== "")) + 1;
  // An empty row parts a function from the one before it.
  const rows = [...page.rows.slice(0, filled), ...(filled > 1 ? [emptyRow(width)] : []), ...block];
  const whole = rows.map((row) => (row.length < width ? [...row, ...emptyRow(width - row.length)] : row));
  return { notebook: withPage(notebook, { ...page, rows: whole }), page: page.id, row: whole.length - block.length };
}

/** Writes a function down under another name, as rows that can be changed. @throws Refusal for a name that is not free. */
export const copyFunction = (notebook: Notebook, definition: AnyDefinition, name: string): AddedFunction =>
  added(notebook, name, rowsOfFunction(definition, name));

/** Writes a small function down to begin with. @throws Refusal for a name that is not free. */
export const beginFunction = (notebook: Notebook, name: string): AddedFunction =>
  added(notebook, name, rowsToBeginWith(name));
