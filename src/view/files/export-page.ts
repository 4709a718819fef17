import { pageText } from "../../notebook/files";
import type { LiveNotebook } from "../../notebook/live";
import type { Page } from "../../notebook/model";
import { printPage } from "../../notebook/page-csv";

/** Text that another program would run as a formula gets an apostrophe; real numbers never do. */
const guarded = (text: string): string => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text);

/** The page as its file: what was typed, byte for byte where nothing was changed. */
export const exportTyped = (page: Page): string => pageText(page);

/** The page with values in the place of formulas; an error shows its code. */
export function exportValues(live: LiveNotebook, page: Page): string {
  const cell = (row: number, column: number): string => {
    const value = live.value({ page: page.id, row, column });
    switch (value.kind) {
      case "number":
        return String(value.value);
      case "flag":
        return value.value ? "TRUE" : "FALSE";
      case "text":
        return guarded(value.text);
      case "error":
        return value.code;
      default:
        return "";
    }
  };
  return printPage(page.rows.map((row, r) => row.map((_, c) => cell(r, c))));
}
