import { columnsOf, firstOption, isOptionPage, type Page } from "../notebook/model";
import { hasHeader } from "../notebook/own/function-page";
import { columnName } from "../notebook/references";

/** A cell of a page, counted from 0 as its file counts. */
export interface Cell {
  readonly row: number;
  readonly column: number;
}

/** Selected cells: where the selection began, and where it ends. */
export interface Block {
  readonly from: Cell;
  readonly to: Cell;
}

export interface Edges {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export const one = (cell: Cell): Block => ({ from: cell, to: cell });

/** The cell that is looked at: the one where the selection began. */
export const cellOf = (block: Block): Cell => block.from;

export const edges = ({ from, to }: Block): Edges => ({
  top: Math.min(from.row, to.row),
  left: Math.min(from.column, to.column),
  bottom: Math.max(from.row, to.row),
  right: Math.max(from.column, to.column),
});

/** Whether a cell belongs to a block. */
export function isInside(block: Block, { row, column }: Cell): boolean {
  const { top, left, bottom, right } = edges(block);
  return row >= top && row <= bottom && column >= left && column <= right;
}

export const blockOf = ({ top, left, bottom, right }: Edges): Block => ({
  from: { row: top, column: left },
  to: { row: bottom, column: right },
});

/** Row by row. */
export const cellsOf = (block: Block): Cell[] => {
  const { top, left, bottom, right } = edges(block);
  const cells: Cell[] = [];
  for (let row = top; row <= bottom; row++)
    for (let column = left; column <= right; column++) cells.push({ row, column });
  return cells;
};

/** `F14` */
export const cellName = ({ row, column }: Cell): string => `${columnName(column)}${row + 1}`;

/** `F14` or `F14:G16`. */
export function blockName(block: Block): string {
  const { top, left, bottom, right } = edges(block);
  const first = cellName({ row: top, column: left });
  return top === bottom && left === right ? first : `${first}:${cellName({ row: bottom, column: right })}`;
}

/** Where a page opens: the first option's first value, or the first cell. */
export function firstBlock(page: Page): Block {
  if (!isOptionPage(page)) return one({ row: hasHeader(page) ? Math.min(1, page.rows.length - 1) : 0, column: 0 });
  const row = page.rows.findIndex((cells, i) => i > 0 && cells[firstOption] !== "");
  return one({ row: row > 0 ? row : 1, column: firstOption });
}

/** The part of a block that a page still has. */
export function within(page: Page, block: Block): Block {
  const first = hasHeader(page) ? 1 : 0;
  const inside = ({ row, column }: Cell): Cell => ({
    row: Math.max(first, Math.min(row, page.rows.length - 1)),
    column: Math.max(0, Math.min(column, columnsOf(page) - 1)),
  });
  return { from: inside(block.from), to: inside(block.to) };
}
