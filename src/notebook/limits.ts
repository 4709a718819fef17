import { textFault } from "../engine/limits";
import { mostColumns, mostRows } from "../engine/settings";
import { say } from "../words/say";
import { columnName } from "./references";
import { Refusal } from "./refusal";

/** More than this is taken for a mistake: a whole yard's notebook is a hundred times smaller. */
export const most = {
  /** Bytes of one file, and of all files of a zip together. */
  bytes: 20_000_000,
  files: 500,
  pages: 200,
  options: 1000,
  /** Cells of one page. */
  cells: 1_000_000,
  /** Letters of a title and of the name of a page or an option. */
  name: 200,
  note: 100_000,
} as const;

/** @throws Refusal for a text or a formula that is too long or too deep; `where` begins the sentence. */
export function checkText(where: () => string, text: string): void {
  const fault = textFault(text);
  if (fault !== undefined) throw new Refusal(`${where()}: ${fault}.`);
}

/** The same for a cell of a page; row and column from 0. */
export const checkCell = (page: string, row: number, column: number, text: string): void =>
  checkText(() => `${page}, ${columnName(column)}${row + 1}`, text);

/** @throws Refusal when a page of that name, or a file, would have more cells than can be calculated. */
export function checkSize(name: string, rows: number, columns: number): void {
  if (rows <= mostRows && columns <= mostColumns && rows * columns <= most.cells) return;
  throw new Refusal(
    say`${name} would have ${rows} rows and ${columns} columns (allowed ${mostRows} and ${mostColumns}, and ${most.cells} cells).`,
  );
}

/** @throws Refusal for a name that no line can show. */
export function checkLength(what: string, name: string): void {
  if (name.length > most.name) {
    throw new Refusal(say`${what} "${name.slice(0, 40)} …" has ${name.length} letters (allowed ${most.name}).`);
  }
}

/** @throws Refusal for a note that is longer than a person writes. */
export function checkNote(page: string, note: string): void {
  if (note.length > most.note) {
    throw new Refusal(say`The notes of ${page} have ${note.length} letters (allowed ${most.note}); shorten them.`);
  }
}
