import type { EngineCell } from "../engine/engine";
import { columnsOf, type Notebook, type Page } from "./model";

/** Whether two notebooks have the same pages of the same size, so that single cells tell them apart. */
export const sameShape = (a: Notebook, b: Notebook): boolean =>
  a.pages.length === b.pages.length &&
  a.pages.every((page, i) => {
    const other = b.pages[i] as Page;
    return (
      page.id === other.id &&
      page.name === other.name &&
      page.rows.length === other.rows.length &&
      columnsOf(page) === columnsOf(other)
    );
  });

/** A cell with the text that is to be written into it. */
export type Written = EngineCell & { readonly text: string };

/** The cells whose text differs between two notebooks of the same shape. */
export function changedTexts(before: Notebook, after: Notebook): Written[] {
  const cells: Written[] = [];
  after.pages.forEach((page, sheet) => {
    const old = before.pages[sheet] as Page;
    if (old.rows === page.rows) return;
    page.rows.forEach((cellsOfRow, row) => {
      const oldRow = old.rows[row] ?? [];
      if (oldRow === cellsOfRow) return;
      cellsOfRow.forEach((text, column) => {
        if (text !== oldRow[column]) cells.push({ sheet, row, column, text });
      });
    });
  });
  return cells;
}
