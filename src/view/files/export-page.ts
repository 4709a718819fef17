import { pageText } from "../../notebook/files";
import type { LiveNotebook } from "../../notebook/live";
import type { Page } from "../../notebook/model";
import { printPage } from "../../notebook/page-csv";
import { exportRows } from "../../notebook/table-out";

/** The page as its file: what was typed, byte for byte where nothing was changed. */
export const exportTyped = (page: Page): string => pageText(page);

/** The page with values in the place of formulas; an error shows its code. */
export const exportValues = (live: LiveNotebook, page: Page): string =>
  printPage(exportRows(live, page, { holds: "values", decimal: "." }));
