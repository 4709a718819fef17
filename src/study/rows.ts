import { optionColumn } from "../notebook/edit-options";
import {
  firstOption,
  isOptionPage,
  lead,
  type Notebook,
  optionsOf,
  type Page,
  type Position,
  textAt,
} from "../notebook/model";
import { Refusal } from "../notebook/refusal";
import { rowKind } from "../notebook/rows";
import { say } from "../words/say";

/** A row of an option page, the same line for every option. */
export interface StudyRow {
  /** `Supply.run` */
  readonly name: string;
  readonly page: Page;
  readonly row: number;
}

const wild = (pattern: string): RegExp =>
  new RegExp(`^${pattern.replace(/[.+?^${}()|[\]\\]/g, "\\$&").replaceAll("*", ".*")}$`, "i");

/** A screen of studies asks for them at every stroke of a key. */
const known = new WeakMap<Notebook, readonly StudyRow[]>();

/** All rows with a key, page by page. */
export function keyedRows(notebook: Notebook): readonly StudyRow[] {
  const before = known.get(notebook);
  if (before) return before;
  const rows = notebook.pages.filter(isOptionPage).flatMap((page) =>
    page.rows.flatMap((cells, row) => {
      const key = cells[lead.key] ?? "";
      return row > 0 && key !== "" ? [{ name: `${page.name}.${key}`, page, row }] : [];
    }),
  );
  known.set(notebook, rows);
  return rows;
}

/**
 * The rows that a pattern names: `Supply.run`, `Compare.*`, `*.price_*`; several are parted by commas.
 *
 * @throws Refusal when one of them names no row.
 */
export function rowsNamed(notebook: Notebook, patterns: string): StudyRow[] {
  const all = keyedRows(notebook);
  const found = patterns.split(",").flatMap((part) => {
    const pattern = part.trim();
    const asked = wild(pattern);
    const rows = all.filter(({ name }) => asked.test(name));
    if (rows.length === 0) {
      const pages = notebook.pages.filter(isOptionPage).map(({ name }) => name);
      throw new Refusal(
        say`"${pattern}" names no row; write Page.key, with * for any letters, for example Compare.* (pages: ${pages.join(", ")}).`,
      );
    }
    return rows;
  });
  return [...new Map(found.map((row) => [row.name, row])).values()];
}

/** A formula that only repeats a cell of another page. */
const repeats = /^=\s*(?:'[^']+'|[\p{L}_][\p{L}\p{N}_]*)!\$?[A-Z]+\$?\d+\s*$/u;

/** The checks of all pages; a check that only repeats another page's is left out. */
export const checkRows = (notebook: Notebook): StudyRow[] =>
  keyedRows(notebook).filter(
    ({ page, row }) => rowKind(page, row) === "check" && !repeats.test(textAt(page, row, firstOption)),
  );

/** The cell of a row for an option. */
export const cellOf = ({ page, row }: StudyRow, column: number): Position => ({ page: page.id, row, column });

/** The column of an option, or of the first one. @throws Refusal that lists the options. */
export const columnOf = (notebook: Notebook, option: string | undefined): number =>
  option === undefined ? firstOption : optionColumn(notebook, option);

export const optionName = (notebook: Notebook, column: number): string =>
  optionsOf(notebook)[column - firstOption] ?? "";

export const quantityOf = ({ page, row }: StudyRow): string => textAt(page, row, lead.quantity);
export const unitOf = ({ page, row }: StudyRow): string => textAt(page, row, lead.unit);
