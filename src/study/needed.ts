import { isFormula } from "../engine/content";
import {
  columnsOf,
  firstOption,
  isOptionPage,
  lead,
  type Notebook,
  type Page,
  type Position,
  pageByName,
  textAt,
} from "../notebook/model";
import { isFunctionPage } from "../notebook/own/function-page";
import { type Corner, referencesOf } from "../notebook/references";

interface Reached {
  /** Cells by page. */
  readonly cells: ReadonlyMap<string, ReadonlySet<number>>;
  /** A blank cell is looked at that another cell's result might spill into. */
  readonly couldSpill: boolean;
}

/** The part of a notebook that some cells hang on. */
export interface Needed {
  readonly notebook: Notebook;
  readonly couldSpill: boolean;
}

/** A cell of a page as one number. */
const placeOf = (page: Page, row: number, column: number): number => row * columnsOf(page) + column;

/** Rows or columns from one corner to another, inside the page. */
function span(from: number | undefined, to: number | undefined, size: number): readonly [number, number] {
  const [a, b] = [from ?? 0, to ?? size - 1];
  return [Math.min(a, b), Math.min(Math.max(a, b), size - 1)];
}

/** Every cell that some cells hang on, by the references in the texts of their formulas; they themselves belong to it. */
function reached(notebook: Notebook, cells: readonly Position[]): Reached {
  const found = new Map(notebook.pages.map(({ id }) => [id, new Set<number>()]));
  const waiting: { readonly page: Page; readonly row: number; readonly column: number }[] = [];
  const whole = new Set<Page>();
  const take = (page: Page, row: number, column: number): void => {
    const place = placeOf(page, row, column);
    const known = found.get(page.id);
    if (!known || known.has(place)) return;
    known.add(place);
    const text = textAt(page, row, column);
    if (isFormula(text)) waiting.push({ page, row, column });
    else if (text === "" && textAt(page, row, lead.key) === "" && !whole.has(page)) {
      // A blank cell may show a part of another cell's result: whatever could spill into it has to be there.
      whole.add(page);
      page.rows.forEach((line, r) => {
        line.forEach((other, c) => {
          if (isFormula(other)) take(page, r, c);
        });
      });
    }
  };
  const takeBlock = (page: Page, from: Corner, to: Corner): void => {
    const [top, bottom] = span(from.row, to.row, page.rows.length);
    const [left, right] = span(from.column, to.column, columnsOf(page));
    for (let row = top; row <= bottom; row++)
      for (let column = left; column <= right; column++) take(page, row, column);
  };
  for (const { page: id, row, column } of cells) {
    const page = notebook.pages.find((one) => one.id === id);
    if (page) take(page, row, column);
  }
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    for (const { page: name, from, to } of referencesOf(textAt(next.page, next.row, next.column))) {
      const page = name === undefined ? next.page : pageByName(notebook, name);
      if (page) takeBlock(page, from, to ?? from);
    }
  }
  return { cells: found, couldSpill: whole.size > 0 };
}

/**
 * The notebook with the cells alone that some cells hang on, all others blank: it calculates them the same in a part of
 * the time. Names, keys and units stay.
 */
export function onlyNeeded(notebook: Notebook, cells: readonly Position[]): Needed {
  const { cells: needed, couldSpill } = reached(notebook, cells);
  const pages = notebook.pages.map((page) => {
    if (isFunctionPage(page)) return page;
    const own = needed.get(page.id);
    const kept = isOptionPage(page) ? firstOption : 0;
    const rows = page.rows.map((texts, row) =>
      texts.map((text, column) => (row === 0 || column < kept || own?.has(placeOf(page, row, column)) ? text : "")),
    );
    return { ...page, rows };
  });
  return { notebook: { ...notebook, pages }, couldSpill };
}
