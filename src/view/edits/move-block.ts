import { isFormula } from "../../engine/content";
import { type CellText, setCells } from "../../notebook/edit-cells";
import { mapFormulas } from "../../notebook/edit-lines";
import { type Notebook, type Page, pageById, pageByName, textAt } from "../../notebook/model";
import { type Corner, mapReferences, type Reference } from "../../notebook/references";
import { type Block, type Cell, cellsOf, edges } from "../block";

interface Move {
  readonly from: Page;
  readonly to: Page;
  readonly rows: number;
  readonly columns: number;
  readonly block: Block;
}

const isInside = (block: Block, { row, column }: Corner): boolean => {
  const { top, left, bottom, right } = edges(block);
  return row !== undefined && column !== undefined && row >= top && row <= bottom && column >= left && column <= right;
};

/** The reference as it reads in a formula on page `home` once the block has moved. */
function followed(notebook: Notebook, move: Move, home: Page, stands: Page, old: Reference): Reference {
  const page = old.page === undefined ? home : pageByName(notebook, old.page);
  const isMoved =
    page?.id === move.from.id && isInside(move.block, old.from) && (!old.to || isInside(move.block, old.to));
  if (!isMoved) return old.page === undefined && stands.id !== home.id ? { ...old, page: home.name } : old;
  const put = (at: Corner): Corner => ({
    ...at,
    row: at.row === undefined ? undefined : at.row + move.rows,
    column: at.column === undefined ? undefined : at.column + move.columns,
  });
  const name = move.to.id === stands.id ? undefined : move.to.name;
  return { page: name, from: put(old.from), to: old.to && put(old.to) };
}

/**
 * Takes a block to another place, on its own page or another: formulas that pointed to it follow, its own go on
 * pointing where they pointed, and the cells it leaves are empty.
 *
 * @throws Refusal when the place cannot hold it.
 */
export function moveBlock(notebook: Notebook, fromPage: string, block: Block, toPage: string, place: Cell): Notebook {
  const from = pageById(notebook, fromPage);
  const to = pageById(notebook, toPage);
  if (!from || !to) return notebook;
  const { top, left } = edges(block);
  const move: Move = { from, to, block, rows: place.row - top, columns: place.column - left };
  const sources = cellsOf(block);
  const texts: CellText[] = sources.map(({ row, column }) => {
    const text = textAt(from, row, column);
    const kept = isFormula(text) ? mapReferences(text, (old) => followed(notebook, move, from, to, old)) : text;
    return { page: to.id, row: row + move.rows, column: column + move.columns, text: kept };
  });
  const names = new Set(texts.map(({ page, row, column }) => `${page} ${row} ${column}`));
  const emptied = sources
    .filter(({ row, column }) => !names.has(`${from.id} ${row} ${column}`))
    .map((cell): CellText => ({ page: from.id, ...cell, text: "" }));
  const others = mapFormulas(notebook, (formula, home) =>
    mapReferences(formula, (old) => followed(notebook, move, home, home, old)),
  );
  // Emptied first: a key may move along with its row.
  return setCells(setCells(others, emptied), texts);
}
