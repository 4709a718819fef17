import { say } from "../../words/say";
import { inBackground } from "../background";
import { cellName, one } from "../block";
import type { Desk } from "../desk";
import { clearBlock } from "../edits/clear-block";
import { typeInto } from "../edits/type-into";
import type { LayOut } from "./lay-out";

/** Hands on what the library took for cells: row and column of the grid, what was there, and the text. */
export function takeTyped(desk: Desk, layOut: LayOut, changes: readonly unknown[][]): void {
  const typed = changes.map(([row, column, , text]) => ({
    row: layOut.line(Number(row)),
    column: Number(column),
    typed: typeof text === "string" ? text : "",
  }));
  const [first] = typed;
  if (!first) return;
  if (typed.length > 1 && typed.every((cell) => cell.typed === "")) {
    clearBlock(desk);
    return;
  }
  const label = typed.length === 1 ? say`value of ${cellName(first)}` : say`values of ${typed.length} cells`;
  const block = typed.length === 1 ? one(first) : desk.block;
  const start = performance.now();
  inBackground(typeInto(desk, layOut.page, typed, label, block));
  // Until its cells are drawn; for the bench and for the browser's own tools.
  performance.clearMeasures("edit");
  performance.measure("edit", { start });
}
