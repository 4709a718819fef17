import { isFormula } from "../../engine/content";
import { type CellText, setCells } from "../../notebook/edit-cells";
import { type Page, textAt } from "../../notebook/model";
import { shiftFormula } from "../../notebook/references";
import { say } from "../../words/say";
import { type Block, blockName, blockOf, cellsOf, edges } from "../block";
import type { Desk } from "../desk";
import { takenSentence, withoutTakenKeys } from "./taken-keys";

const wrapped = (place: number, size: number): number => ((place % size) + size) % size;

/** The texts that repeat a source block over another, references moving along. */
function filledTexts(page: Page, source: Block, target: Block): CellText[] {
  const from = edges(source);
  const [rows, columns] = [from.bottom - from.top + 1, from.right - from.left + 1];
  return cellsOf(target).map((cell) => {
    const row = from.top + wrapped(cell.row - from.top, rows);
    const column = from.left + wrapped(cell.column - from.left, columns);
    const text = textAt(page, row, column);
    const shifted = isFormula(text) ? shiftFormula(text, cell.row - row, cell.column - column) : text;
    return { page: page.id, ...cell, text: shifted };
  });
}

/** Repeats a block over the cells beside it, and selects both. */
export function fillBlock(desk: Desk, source: Block, target: Block): void {
  const { page } = desk;
  const [a, b] = [edges(source), edges(target)];
  const whole = blockOf({
    top: Math.min(a.top, b.top),
    left: Math.min(a.left, b.left),
    bottom: Math.max(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
  });
  const { texts, taken } = withoutTakenKeys(page, filledTexts(page, source, target));
  if (desk.apply(say`fill of ${blockName(target)}`, (notebook) => setCells(notebook, texts), whole)) {
    desk.select(whole);
    if (taken.length > 0) desk.say(takenSentence(taken));
  }
}

/** Repeats the first line of the selection over the rest of it. */
export function fillSelection(desk: Desk, direction: "down" | "right"): void {
  const { top, left, bottom, right } = edges(desk.block);
  const isDown = direction === "down";
  if (isDown ? top === bottom : left === right) {
    desk.say(
      isDown
        ? say`Select the cell to repeat and the cells below, then fill.`
        : say`Select the cell to repeat and the cells to its right, then fill.`,
      "refused",
    );
    return;
  }
  const source = blockOf(isDown ? { top, left, bottom: top, right } : { top, left, bottom, right: left });
  const target = blockOf(isDown ? { top: top + 1, left, bottom, right } : { top, left: left + 1, bottom, right });
  fillBlock(desk, source, target);
}
