import { setCells } from "../../src/notebook/edit-cells";
import { insertRows } from "../../src/notebook/edit-lines";
import { writeNotebook } from "../../src/notebook/files";
import { lead, type Notebook, pageByName } from "../../src/notebook/model";
import { columnName } from "../../src/notebook/references";

/** One change as a person makes it: a number typed, a row put in above, or the last step taken back. */
export type Deed =
  | { readonly kind: "type"; readonly page: string; readonly key: string; readonly text: string }
  | { readonly kind: "insert"; readonly page: string; readonly key: string }
  | { readonly kind: "undo" };

/** What the notebook must be after a number of deeds: all states back to the first, the present one last. */
export type States = readonly [Notebook, ...Notebook[]];

export const present = (states: States): Notebook => states.at(-1) as Notebook;

const option = 5;

/** Row and column from 0 of a row's cell in the second option. */
export function cellOfKey(
  notebook: Notebook,
  page: string,
  key: string,
): { row: number; column: number; name: string } {
  const row = pageByName(notebook, page)?.rows.findIndex((cells) => cells[lead.key] === key) ?? -1;
  if (row < 1) throw new Error(`There is no ${page}.${key}.`);
  return { row, column: option, name: `${columnName(option)}${row + 1}` };
}

/** The states after one more deed, by the same edits that the terminal uses. */
export function statesAfter(states: States, deed: Deed): States {
  const notebook = present(states);
  if (deed.kind === "undo") return states.length > 1 ? (states.slice(0, -1) as unknown as States) : states;
  const page = pageByName(notebook, deed.page);
  if (!page) throw new Error(`There is no page ${deed.page}.`);
  const { row, column } = cellOfKey(notebook, deed.page, deed.key);
  const after =
    deed.kind === "type"
      ? setCells(notebook, [{ page: page.id, row, column, text: deed.text }])
      : insertRows(notebook, page.id, row);
  // What reads so already is no step.
  return allText(after) === allText(notebook) ? states : [...states, after];
}

/** All files as one text, to be compared. */
export const allText = (notebook: Notebook): string => JSON.stringify([...writeNotebook(notebook)].sort());
