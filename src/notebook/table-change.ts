import { leadColumns, type Page, type Row } from "./model";
import { functionColumns, isFunctionPage } from "./own/function-page";

/** What becomes of the first row of an incoming table. */
export const headers = ["kept", "dropped", "replaced"] as const;
export type Header = (typeof headers)[number];

/**
 * The rows with their first row kept, left out, or with the page's own header in its place. A header that is put in
 * gives the table its width.
 */
export function withHeader(rows: readonly Row[], header: Header, page: Page): readonly Row[] {
  if (header === "kept") return rows;
  const [own] = page.rows;
  const rest = rows.slice(1);
  if (header === "dropped" || !own) return rest;
  return [own, ...rest.map((row) => own.map((_, column) => row[column] ?? ""))];
}

/** The usual treatment: a table for an option page or a function page that has as many columns but other names gets the page's own header. */
export function likelyHeader(rows: readonly Row[], page: Page): Header {
  const [first] = rows;
  const [own] = page.rows;
  const names = isFunctionPage(page) ? functionColumns : leadColumns;
  const isNamed = names.every((name, column) => own?.[column] === name);
  const isSame = names.every((name, column) => first?.[column] === name);
  return isNamed && !isSame && first?.length === own?.length ? "replaced" : "kept";
}

/** What an incoming table changes on a page. */
export interface TableChange {
  /** Cells that read otherwise, those of lines that come or go included when they hold anything. */
  readonly cells: number;
  /** Lines that come (positive) or go (negative). */
  readonly rows: number;
  readonly columns: number;
}

export function tableChange(before: readonly Row[], after: readonly Row[]): TableChange {
  const width = (rows: readonly Row[]) => rows[0]?.length ?? 0;
  const columns = Math.max(width(before), width(after));
  let cells = 0;
  for (let row = 0; row < Math.max(before.length, after.length); row++) {
    for (let column = 0; column < columns; column++) {
      if ((before[row]?.[column] ?? "") !== (after[row]?.[column] ?? "")) cells++;
    }
  }
  return { cells, rows: after.length - before.length, columns: width(after) - width(before) };
}
