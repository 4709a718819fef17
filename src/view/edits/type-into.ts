import type { CellText } from "../../notebook/edit-cells";
import { setCells } from "../../notebook/edit-cells";
import { isOptionPage, type Page } from "../../notebook/model";
import { functionColumns, headerSentence, isFunctionPage } from "../../notebook/own/function-page";
import type { Meaning } from "../../notebook/table-cells";
import { say } from "../../words/say";
import { type Block, type Cell, cellName, one } from "../block";
import type { Desk } from "../desk";
import { askMeaning } from "../dialogs/ask-meaning";
import { heldText } from "./as-typed";
import { readFor, settled } from "./reading";

/** Something typed for a cell, as the keys gave it. */
export interface TypedCell extends Cell {
  readonly typed: string;
}

/** Why a cell cannot be typed into, or nothing. */
export function closedCell(desk: Desk, page: Page, cell: Cell): string | undefined {
  if (isOptionPage(page) && cell.row === 0) return say`The header names the options; rename an option instead.`;
  if (cell.row === 0 && cell.column < functionColumns.length && isFunctionPage(page)) return headerSentence(page);
  return desk.live?.isSpilled({ page: page.id, ...cell })
    ? say`${cellName(cell)} shows part of a result that begins in another cell; change the formula there.`
    : undefined;
}

/**
 * Writes what was typed into cells of a page, as one step; asks once when a comma can be read two ways.
 *
 * @param block is selected when the step is taken back.
 */
export async function typeInto(
  desk: Desk,
  page: Page,
  cells: readonly TypedCell[],
  label: string,
  block: Block = one(cells[0] as Cell),
): Promise<void> {
  const closed = cells.map((cell) => closedCell(desk, page, cell)).find(Boolean);
  if (closed) {
    desk.say(closed, "refused");
    return;
  }
  const read = cells.map((cell) => ({ cell, typed: readFor(page, cell.row, cell.column, cell.typed) }));
  const doubtful = read.find(({ typed }) => typed.kind === "ask");
  let meaning: Meaning = "point";
  if (doubtful?.typed.kind === "ask") {
    const answer = await askMeaning(doubtful.cell.typed.trim(), doubtful.typed, cellName(doubtful.cell));
    if (!answer) return;
    meaning = answer;
  }
  const texts: CellText[] = read.map(({ cell, typed }) => ({
    page: page.id,
    row: cell.row,
    column: cell.column,
    text: heldText(desk.notebook, page, cell, settled(typed, cell.typed, meaning)),
  }));
  desk.apply(label, (notebook) => setCells(notebook, texts), block);
}
