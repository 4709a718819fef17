import { setCells } from "../../notebook/edit-cells";
import { textAt } from "../../notebook/model";
import { say } from "../../words/say";
import { type Block, blockName, cellsOf } from "../block";
import type { Desk } from "../desk";

/** Empties the selected cells; what belongs to another cell's result is passed over. */
export function clearBlock(desk: Desk, block: Block = desk.block): void {
  const { page } = desk;
  const cells = cellsOf(block).filter(({ row, column }) => textAt(page, row, column) !== "");
  desk.apply(
    say`emptying of ${blockName(block)}`,
    (notebook) =>
      setCells(
        notebook,
        cells.map((cell) => ({ page: page.id, ...cell, text: "" })),
      ),
    block,
  );
}
