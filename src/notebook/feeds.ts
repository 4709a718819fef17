import { isFormula } from "../engine/content";
import { columnsOf, type Notebook, type Page, type Position, pageById, pageByName, textAt } from "./model";
import { type Reference, referencesOf } from "./references";

/** What cells depend on and what depends on them, over all pages of a notebook. */
export interface Feeds {
  /** The cells that a cell's formula reads, in the order of the formula, ranges expanded, each once. */
  readonly feeding: (at: Position) => readonly Position[];
  /** The cells whose formulas read a cell, by page, row and column. */
  readonly fedBy: (at: Position) => readonly Position[];
}

const keyOf = ({ page, row, column }: Position): string => `${page}\t${row}\t${column}`;

/** The cells of a reference that exist; whole rows and columns end where the page ends. */
export function cellsOf(notebook: Notebook, home: Page, reference: Reference): Position[] {
  const page = reference.page === undefined ? home : pageByName(notebook, reference.page);
  if (!page) return [];
  const { from, to = from } = reference;
  const [top, bottom] = [from.row ?? 0, to.row ?? page.rows.length - 1].sort((a, b) => a - b) as [number, number];
  const [left, right] = [from.column ?? 0, to.column ?? columnsOf(page) - 1].sort((a, b) => a - b) as [number, number];
  const cells: Position[] = [];
  for (let row = top; row <= Math.min(bottom, page.rows.length - 1); row++) {
    for (let column = left; column <= Math.min(right, columnsOf(page) - 1); column++) {
      cells.push({ page: page.id, row, column });
    }
  }
  return cells;
}

function feeding(notebook: Notebook, at: Position): readonly Position[] {
  const page = pageById(notebook, at.page);
  const text = page ? textAt(page, at.row, at.column) : "";
  if (!page || !isFormula(text)) return [];
  const cells = referencesOf(text).flatMap((reference) => cellsOf(notebook, page, reference));
  return [...new Map(cells.map((cell) => [keyOf(cell), cell])).values()];
}

function readers(notebook: Notebook): ReadonlyMap<string, readonly Position[]> {
  const found = new Map<string, Position[]>();
  for (const page of notebook.pages) {
    page.rows.forEach((cells, row) => {
      cells.forEach((text, column) => {
        if (!isFormula(text)) return;
        const reader = { page: page.id, row, column };
        for (const cell of feeding(notebook, reader)) {
          const key = keyOf(cell);
          const known = found.get(key);
          if (known) known.push(reader);
          else found.set(key, [reader]);
        }
      });
    });
  }
  return found;
}

const known = new WeakMap<Notebook, Feeds>();

/** The feeds of a notebook, read from its texts; kept for as long as the notebook is. */
export function feedsOf(notebook: Notebook): Feeds {
  const old = known.get(notebook);
  if (old) return old;
  let read: ReadonlyMap<string, readonly Position[]> | undefined;
  const feeds: Feeds = {
    feeding: (at) => feeding(notebook, at),
    fedBy: (at) => {
      read ??= readers(notebook);
      return read.get(keyOf(at)) ?? [];
    },
  };
  known.set(notebook, feeds);
  return feeds;
}
