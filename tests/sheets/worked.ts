import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { readFolder } from "../../src/cli/folder";
import type { CellValue } from "../../src/engine/value";
import { LiveNotebook } from "../../src/notebook/live";
import { firstOption, isOptionPage, lead, type Notebook, type Page } from "../../src/notebook/model";
import { positionOf, type RowKind, readAddress, rowKind } from "../../src/notebook/rows";

const sheets = resolve(import.meta.dirname, "../../sheets");

/** A course has tasks for pages and a test of its own. */
function isCourse(name: string): boolean {
  const about: { pages: readonly { kind?: string }[] } = JSON.parse(
    readFileSync(join(sheets, name, "notebook.json"), "utf8"),
  );
  return about.pages.some(({ kind }) => kind === "task");
}

/** The folders of all worked notebooks. */
export const workedFolders: readonly string[] = readdirSync(sheets).filter(
  (name) => existsSync(join(sheets, name, "notebook.json")) && !isCourse(name),
);

export const folderPath = (name: string): string => join(sheets, name);

export const readWorked = (name: string): Notebook => readFolder(folderPath(name));

export const openWorked = (name: string): LiveNotebook => new LiveNotebook(readWorked(name));

/** The value of `Supply.drop@Cruiser`. */
export const valueAt = (live: LiveNotebook, address: string): CellValue =>
  live.value(positionOf(live.notebook, readAddress(address)));

/** A row with a key on an option page. */
export interface KeyedRow {
  readonly page: Page;
  readonly row: number;
  readonly kind: RowKind;
  /** `Supply.drop`. */
  readonly name: string;
  readonly basis: string;
  /** What was typed, option by option. */
  readonly texts: readonly string[];
}

/** All rows with a key, in the order of the pages. */
export const keyedRows = (notebook: Notebook): readonly KeyedRow[] =>
  notebook.pages.filter(isOptionPage).flatMap((page) =>
    page.rows.flatMap((cells, row) =>
      row === 0 || !cells[lead.key]
        ? []
        : [
            {
              page,
              row,
              kind: rowKind(page, row),
              name: `${page.name}.${cells[lead.key]}`,
              basis: cells[lead.basis] ?? "",
              texts: cells.slice(firstOption),
            },
          ],
    ),
  );
