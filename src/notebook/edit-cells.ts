import { contentOf } from "../engine/content";
import { betweenNumbers, withDecimalSign } from "../words/decimal-sign";
import { say } from "../words/say";
import { checkSize, checkCell as checkText } from "./limits";
import { columnsOf, firstOption, isOptionPage, lead, type Notebook, type Page, type Position, type Row } from "./model";
import { functionColumns, headerSentence, isFunctionPage } from "./own/function-page";
import { Refusal } from "./refusal";
import { moveRowEntry, rowAddress } from "./row-entry";

export interface CellText extends Position {
  readonly text: string;
}

/** The page of that id. @throws Refusal when it is gone. */
export function pageOf(notebook: Notebook, id: string): Page {
  const page = notebook.pages.find((one) => one.id === id);
  if (!page) throw new Refusal(say`This page is no longer in the notebook; open another.`);
  return page;
}

export function withPage(notebook: Notebook, page: Page): Notebook {
  return { ...notebook, pages: notebook.pages.map((one) => (one.id === page.id ? page : one)) };
}

export const emptyRow = (columns: number): Row => Array.from({ length: columns }, () => "");

/** A page made at least so large; option pages grow by rows only. */
function grown(page: Page, rows: number, columns: number): Page {
  if (rows <= page.rows.length && columns <= columnsOf(page)) return page;
  if (columns > columnsOf(page) && isOptionPage(page)) {
    const options = columnsOf(page) - firstOption;
    throw new Refusal(say`${page.name} has ${options} options, and this needs more columns; add an option first.`);
  }
  const width = Math.max(columns, columnsOf(page));
  checkSize(page.name, Math.max(rows, page.rows.length), width);
  const widened = page.rows.map((row) => (row.length < width ? [...row, ...emptyRow(width - row.length)] : row));
  const added = Array.from({ length: Math.max(0, rows - page.rows.length) }, () => emptyRow(width));
  return { ...page, rows: [...widened, ...added] };
}

function checkKey(page: Page, row: number, key: string): void {
  if (key === "") return;
  if (!/^[\p{L}_][\p{L}\p{N}_]*$/u.test(key)) {
    throw new Refusal(say`Key "${key}" on ${page.name}, row ${row + 1}: a key is one word of letters, digits and _.`);
  }
  const other = page.rows.findIndex((cells, i) => i > 0 && i !== row && cells[lead.key] === key);
  if (other >= 0) {
    throw new Refusal(say`Key "${key}" is already on ${page.name}, row ${other + 1}; a key names one row of its page.`);
  }
}

function checkChoice(notebook: Notebook, page: Page, { row, column, text }: CellText): void {
  if (column < firstOption || text === "" || contentOf(text).kind === "formula") return;
  const address = rowAddress(page, row);
  const choices = address === undefined ? undefined : notebook.about.rows?.[address]?.choices;
  if (choices && !choices.some((choice) => String(choice) === text)) {
    throw new Refusal(
      say`${address ?? ""}: "${withDecimalSign(text)}" is not a choice (allowed ${choices.map((choice) => withDecimalSign(String(choice))).join(betweenNumbers())}).`,
    );
  }
}

function checkCell(notebook: Notebook, page: Page, cell: CellText): void {
  checkText(page.name, cell.row, cell.column, cell.text);
  if (cell.row === 0 && cell.column < functionColumns.length && isFunctionPage(page)) {
    throw new Refusal(headerSentence(page));
  }
  if (!isOptionPage(page)) return;
  if (cell.row === 0) throw new Refusal(say`Row 1 of ${page.name} names the columns; rename the option instead.`);
  if (cell.column === lead.key) checkKey(page, cell.row, cell.text);
  checkChoice(notebook, page, cell);
}

/**
 * Writes the texts of cells on one or more pages; pages grow where needed.
 *
 * @throws Refusal for a header cell of an option page or a function page, a key used twice, a value that is not among a row's choices, or a page
 * that cannot grow so far.
 */
export function setCells(notebook: Notebook, cells: readonly CellText[]): Notebook {
  const pages = [...new Set(cells.map((cell) => cell.page))];
  return pages.reduce((result, id) => {
    const start = pageOf(result, id);
    const ofPage = cells.filter((cell) => cell.page === id);
    const rows = Math.max(...ofPage.map((cell) => cell.row + 1));
    const columns = Math.max(...ofPage.map((cell) => cell.column + 1));
    const page = grown(start, rows, columns);
    const written: Row[] = [...page.rows];
    let next = result;
    let changed = page !== start;
    for (const cell of ofPage) {
      const row = written[cell.row] as Row;
      const old = row[cell.column];
      if (old === cell.text) continue;
      checkCell(next, { ...page, rows: written }, cell);
      if (cell.column === lead.key && isOptionPage(page)) next = moveRowEntry(next, page.name, old ?? "", cell.text);
      written[cell.row] = row.with(cell.column, cell.text);
      changed = true;
    }
    return changed ? withPage(next, { ...page, rows: written }) : next;
  }, notebook);
}
