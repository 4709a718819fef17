import { isFormula } from "../engine/content";
import { sameShape } from "./difference";
import { columnsOf, type Notebook, type Page, type Position, pageById, pageByName, type Row, textAt } from "./model";
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

/** A formula of a row and what it refers to. */
interface Reading {
  readonly column: number;
  readonly references: readonly Reference[];
}

// Rows are shared from one state of a notebook to the next, so that an edit reads one row anew and not them all.
const readings = new WeakMap<Row, readonly Reading[]>();

function readingsOf(row: Row): readonly Reading[] {
  const old = readings.get(row);
  if (old) return old;
  const found = row.flatMap((text, column) => (isFormula(text) ? [{ column, references: referencesOf(text) }] : []));
  readings.set(row, found);
  return found;
}

/** The readers of every cell: by page, then by the cell's place in reading order. */
type Readers = ReadonlyMap<string, ReadonlyMap<number, readonly Position[]>>;

function readers(notebook: Notebook): Readers {
  const widths = new Map(notebook.pages.map((page) => [page.id, columnsOf(page)]));
  const found = new Map(notebook.pages.map(({ id }) => [id, new Map<number, Position[]>()]));
  for (const page of notebook.pages) {
    page.rows.forEach((cells, row) => {
      for (const { column, references } of readingsOf(cells)) {
        const reader = { page: page.id, row, column };
        for (const reference of references) {
          for (const cell of cellsOf(notebook, page, reference)) {
            const places = found.get(cell.page);
            const place = cell.row * (widths.get(cell.page) ?? 0) + cell.column;
            const known = places?.get(place);
            if (!known) places?.set(place, [reader]);
            else if (known.at(-1) !== reader) known.push(reader);
          }
        }
      }
    });
  }
  return found;
}

/** The formulas that refer to a single cell of which something is true; blocks are not looked into. */
export function readersOfCells(
  notebook: Notebook,
  test: (page: Page, row: number, column: number) => boolean,
): readonly Position[] {
  const pages = new Map(notebook.pages.map((page) => [page.name.toLowerCase(), page]));
  const found: Position[] = [];
  for (const home of notebook.pages) {
    for (const [row, cells] of home.rows.entries()) {
      for (const { column, references } of readingsOf(cells)) {
        const reads = references.some(({ page: name, from, to }) => {
          const page = name === undefined ? home : pages.get(name.toLowerCase());
          if (!page || to || from.row === undefined || from.column === undefined) return false;
          return test(page, from.row, from.column);
        });
        if (reads) found.push({ page: home.id, row, column });
      }
    }
  }
  return found;
}

/** Whether all formulas of two notebooks stand in the same places and refer to the same cells. */
function readAlike(a: Notebook, b: Notebook): boolean {
  return (
    sameShape(a, b) &&
    a.pages.every((page, i) =>
      page.rows.every((row, line) => {
        const other = b.pages[i]?.rows[line];
        if (other === row) return true;
        return other !== undefined && readingsOf(row).length === 0 && readingsOf(other).length === 0;
      }),
    )
  );
}

/** The last readers that were read: another number in an input leaves them as they are. */
let last: { readonly of: Notebook; readonly readers: Readers } | undefined;

function readersOf(notebook: Notebook): Readers {
  const found = last && readAlike(last.of, notebook) ? last.readers : readers(notebook);
  last = { of: notebook, readers: found };
  return found;
}

const known = new WeakMap<Notebook, Feeds>();

/** The feeds of a notebook, read from its texts; kept for as long as the notebook is. */
export function feedsOf(notebook: Notebook): Feeds {
  const old = known.get(notebook);
  if (old) return old;
  let read: Readers | undefined;
  const feeds: Feeds = {
    feeding: (at) => feeding(notebook, at),
    fedBy: ({ page: id, row, column }) => {
      const page = pageById(notebook, id);
      if (!page || column >= columnsOf(page)) return [];
      read ??= readersOf(notebook);
      return read.get(id)?.get(row * columnsOf(page) + column) ?? [];
    },
  };
  known.set(notebook, feeds);
  return feeds;
}
