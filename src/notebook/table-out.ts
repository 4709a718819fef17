import Papa from "papaparse";
import type { LiveNotebook } from "./live";
import type { Page, Row } from "./model";
import { exportTyped, exportValue } from "./table-cells";
import type { TableShape } from "./table-in";

/** How a page is written for another program. */
export interface TableForm extends Pick<TableShape, "separator" | "decimal"> {
  /** What was typed, formulas included, or the results in their place. */
  readonly holds: "typed" | "values";
  /** Whether a byte order mark stands first, by which some programs tell UTF-8. */
  readonly mark: boolean;
}

/** The cells of a page as another program gets them. */
export function exportRows(
  live: Pick<LiveNotebook, "value">,
  page: Page,
  { holds, decimal }: Pick<TableForm, "holds" | "decimal">,
): Row[] {
  return page.rows.map((cells, row) =>
    cells.map((text, column) =>
      holds === "typed" ? exportTyped(text, decimal) : exportValue(live.value({ page: page.id, row, column }), decimal),
    ),
  );
}

/** Rows as the text of a file: a line feed ends each, quotes stand only where they are needed. */
export function printTable(rows: readonly Row[], { separator, mark }: Pick<TableForm, "separator" | "mark">): string {
  const text = Papa.unparse(rows as string[][], { delimiter: separator, newline: "\n" });
  return `${mark ? "\uFEFF" : ""}${text}\n`;
}
