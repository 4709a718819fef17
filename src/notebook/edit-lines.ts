import { isFormula } from "../engine/content";
import { say } from "../words/say";
import { emptyRow, pageOf } from "./edit-cells";
import { checkCell, checkSize } from "./limits";
import { columnsOf, isOptionPage, type Notebook, type Page, type Row } from "./model";
import { functionColumns, hasHeader, isFunctionPage } from "./own/function-page";
import { Refusal } from "./refusal";
import { type Cut, cutFormula } from "./structure";

/** Rewrites every formula of the notebook; rows without a change are shared. @throws Refusal when one grows too long. */
export function mapFormulas(notebook: Notebook, change: (formula: string, page: Page) => string): Notebook {
  let touched = false;
  const pages = notebook.pages.map((page) => {
    let pageTouched = false;
    const rows = page.rows.map((row, r) => {
      let rowTouched = false;
      const cells = row.map((text, column) => {
        if (!isFormula(text)) return text;
        const next = change(text, page);
        if (next === text) return text;
        // What follows may have grown longer than a formula can be.
        checkCell(page.name, r, column, next);
        rowTouched = true;
        return next;
      });
      if (rowTouched) pageTouched = true;
      return rowTouched ? cells : row;
    });
    if (pageTouched) touched = true;
    return pageTouched ? { ...page, rows } : page;
  });
  return touched ? { ...notebook, pages } : notebook;
}

/** Makes a cut on one page's own rows; the formulas are the caller's. */
export function cutRows(rows: readonly Row[], cut: Cut, columns: number): readonly Row[] {
  if (cut.axis === "row") {
    return cut.count > 0
      ? [...rows.slice(0, cut.at), ...Array.from({ length: cut.count }, () => emptyRow(columns)), ...rows.slice(cut.at)]
      : [...rows.slice(0, cut.at), ...rows.slice(cut.at - cut.count)];
  }
  return rows.map((row) =>
    cut.count > 0
      ? [...row.slice(0, cut.at), ...emptyRow(cut.count), ...row.slice(cut.at)]
      : [...row.slice(0, cut.at), ...row.slice(cut.at - cut.count)],
  );
}

/** Lets rows or columns come or go on one page, and every formula of the notebook follow. */
function cutPage(notebook: Notebook, id: string, cut: Cut): Notebook {
  const page = pageOf(notebook, id);
  const followed = mapFormulas(notebook, (formula, home) => cutFormula(formula, home.name, page.name, cut));
  return {
    ...followed,
    pages: followed.pages.map((one) =>
      one.id === id ? { ...one, rows: cutRows(one.rows, cut, columnsOf(page)) } : one,
    ),
  };
}

function checkRows(page: Page, at: number, count: number): void {
  const first = hasHeader(page) ? 1 : 0;
  if (at < first || at > page.rows.length) {
    throw new Refusal(
      say`${page.name}: row ${at + 1} cannot be changed here (allowed ${first + 1} to ${page.rows.length}).`,
    );
  }
  if (count > 0) checkSize(page.name, page.rows.length + count, columnsOf(page));
  if (page.rows.length + count <= first) {
    throw new Refusal(say`${page.name}: the last row cannot be removed; empty its cells instead.`);
  }
}

/** Inserts empty rows before row `at`; references follow. @throws Refusal at the header or past the limit. */
export function insertRows(notebook: Notebook, id: string, at: number, count = 1): Notebook {
  checkRows(pageOf(notebook, id), at, count);
  return cutPage(notebook, id, { axis: "row", at, count });
}

/** Removes rows; references to them read `#REF!`. @throws Refusal at the header or for the last row. */
export function removeRows(notebook: Notebook, id: string, at: number, count = 1): Notebook {
  const page = pageOf(notebook, id);
  const most = Math.min(count, page.rows.length - at);
  checkRows(page, at, -most);
  return cutPage(notebook, id, { axis: "row", at, count: -most });
}

/** Removes the rows of several groups as one change, from the bottom up, so that no group shifts another. */
export function removeRowGroups(
  notebook: Notebook,
  id: string,
  groups: readonly { readonly at: number; readonly count: number }[],
): Notebook {
  return [...groups]
    .sort((a, b) => b.at - a.at)
    .reduce((result, { at, count }) => removeRows(result, id, at, count), notebook);
}

function checkColumns(page: Page, at: number, count: number): void {
  if (isOptionPage(page)) {
    throw new Refusal(say`${page.name}: its columns are the hull options; add or remove an option instead.`);
  }
  if (at < functionColumns.length && isFunctionPage(page)) {
    throw new Refusal(
      say`${page.name}: its first ${functionColumns.length} columns hold the parts of functions; columns can come and go behind them.`,
    );
  }
  const columns = columnsOf(page);
  if (at < 0 || at > columns || columns + count < 1) {
    throw new Refusal(say`${page.name} has ${columns} columns; this cannot be done at column ${at + 1}.`);
  }
  if (count > 0) checkSize(page.name, page.rows.length, columns + count);
}

/** Inserts empty columns on a free sheet. @throws Refusal on an option page. */
export function insertColumns(notebook: Notebook, id: string, at: number, count = 1): Notebook {
  checkColumns(pageOf(notebook, id), at, count);
  return cutPage(notebook, id, { axis: "column", at, count });
}

/** Removes columns of a free sheet. @throws Refusal on an option page or for the last column. */
export function removeColumns(notebook: Notebook, id: string, at: number, count = 1): Notebook {
  const page = pageOf(notebook, id);
  const most = Math.min(count, columnsOf(page) - at);
  checkColumns(page, at, -most);
  return cutPage(notebook, id, { axis: "column", at, count: -most });
}
