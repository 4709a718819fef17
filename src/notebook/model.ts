import type { About } from "./about";

/**
 * A page as its file holds it: every cell is exactly what was typed. All rows have the same length.
 *
 * Pages are values: an edit makes a new page and shares the rows it leaves alone.
 */
export interface Page {
  /** Stays when the page is renamed or moved; never written to a file. */
  readonly id: string;
  readonly name: string;
  /** Name of the CSV file, without a folder. */
  readonly file: string;
  readonly rows: readonly Row[];
  /** The file's own bytes, given back on saving as long as the rows are the ones it held. */
  readonly source?: { readonly text: string; readonly rows: readonly Row[] };
}

export type Row = readonly string[];

/** A whole notebook. Never changed in place: `edit.ts` makes a new one. */
export interface Notebook {
  readonly about: About;
  readonly pages: readonly Page[];
  /** The bytes of notebook.json, given back on saving as long as `about` is what it held. */
  readonly source?: { readonly text: string; readonly about: About };
}

/** A cell: page by id, row and column from 0. Row 0 is line 1 of the file. */
export interface Position {
  readonly page: string;
  readonly row: number;
  readonly column: number;
}

/** The columns that stand before the options. */
export const leadColumns = ["Quantity", "Key", "Unit", "Basis"] as const;
export const lead = { quantity: 0, key: 1, unit: 2, basis: 3 } as const;
export const firstOption = leadColumns.length;

/** Whether a page has the header of an option page; all other pages are free sheets. */
export const isOptionPage = (page: Pick<Page, "rows">): boolean =>
  leadColumns.every((name, column) => page.rows[0]?.[column] === name);

/** The hull options, the same on every option page. */
export function optionsOf(notebook: Notebook): readonly string[] {
  const page = notebook.pages.find(isOptionPage);
  return page?.rows[0]?.slice(firstOption) ?? [];
}

export const columnsOf = (page: Pick<Page, "rows">): number => page.rows[0]?.length ?? 0;

export const textAt = (page: Page, row: number, column: number): string => page.rows[row]?.[column] ?? "";

export const pageById = (notebook: Notebook, id: string): Page | undefined =>
  notebook.pages.find((page) => page.id === id);

export const pageByName = (notebook: Notebook, name: string): Page | undefined =>
  notebook.pages.find((page) => page.name.toLowerCase() === name.toLowerCase());

let pagesMade = 0;
/** An id for a page that comes into being. */
export const newPageId = (): string => `page-${++pagesMade}`;
