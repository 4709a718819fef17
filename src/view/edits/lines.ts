import { insertColumns, insertRows, removeColumns, removeRows } from "../../notebook/edit-lines";
import { columnsOf } from "../../notebook/model";
import { columnName } from "../../notebook/references";
import { counted, say } from "../../words/say";
import { blockOf, edges } from "../block";
import type { Desk } from "../desk";

const rowsName = (top: number, bottom: number): string =>
  top === bottom ? say`row ${top + 1}` : say`rows ${top + 1} to ${bottom + 1}`;

/** Puts as many empty rows as are selected above or below the selection. */
export function insertRowsAt(desk: Desk, where: "above" | "below"): void {
  const { page, block } = desk;
  const { top, left, bottom, right } = edges(block);
  const count = bottom - top + 1;
  const at = where === "above" ? top : bottom + 1;
  const fresh = blockOf({ top: at, left, bottom: at + count - 1, right });
  if (
    desk.apply(say`${counted(count, "row")} inserted`, (notebook) => insertRows(notebook, page.id, at, count), fresh)
  ) {
    desk.select(fresh);
    desk.say(say`${counted(count, "empty row")} inserted at row ${at + 1}.`);
  }
}

/** Takes the selected rows away; what pointed to them then says that a cell is gone. */
export function removeSelectedRows(desk: Desk): void {
  const { page, block } = desk;
  const { top, bottom } = edges(block);
  const count = bottom - top + 1;
  if (
    desk.apply(say`${rowsName(top, bottom)} removed`, (notebook) => removeRows(notebook, page.id, top, count), block)
  ) {
    desk.say(
      say`${rowsName(top, bottom)} removed; undo brings ${count === 1 ? say`it` : say`them`} back.`.replace(/^r/, "R"),
    );
  }
}

/** Puts as many empty columns as are selected beside the selection, on a free sheet. */
export function insertColumnsAt(desk: Desk, where: "left" | "right"): void {
  const { page, block } = desk;
  const { top, left, bottom, right } = edges(block);
  const count = right - left + 1;
  const at = where === "left" ? left : right + 1;
  const fresh = blockOf({ top, left: at, bottom, right: at + count - 1 });
  if (
    desk.apply(
      say`${counted(count, "column")} inserted`,
      (notebook) => insertColumns(notebook, page.id, at, count),
      fresh,
    )
  ) {
    desk.select(fresh);
    desk.say(say`${counted(count, "empty column")} inserted at ${columnName(at)}.`);
  }
}

/** Takes the selected columns of a free sheet away. */
export function removeSelectedColumns(desk: Desk): void {
  const { page, block } = desk;
  const { left, right } = edges(block);
  const count = Math.min(right, columnsOf(page) - 1) - left + 1;
  const label = say`${counted(count, "column")} removed from ${columnName(left)}`;
  if (desk.apply(label, (notebook) => removeColumns(notebook, page.id, left, count), block)) {
    desk.say(say`${counted(count, "column")} removed; undo brings ${count === 1 ? say`it` : say`them`} back.`);
  }
}
