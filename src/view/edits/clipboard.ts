import { isFormula } from "../../engine/content";
import { type CellText, setCells } from "../../notebook/edit-cells";
import { type Page, textAt } from "../../notebook/model";
import { shiftFormula } from "../../notebook/references";
import { withDecimalSign } from "../../words/decimal-sign";
import { say } from "../../words/say";
import { type Block, blockName, blockOf, cellsOf, edges, one } from "../block";
import type { Desk } from "../desk";
import { moveBlock } from "./move-block";
import { printTabText, readTabText } from "./tab-text";
import { takenSentence, withoutTakenKeys } from "./taken-keys";
import { typeInto } from "./type-into";

/** Our own mark on the clipboard: says which cells the plain text beside it came from. */
const markType = "application/x-athwart-cells";

interface Taken {
  readonly mark: string;
  readonly page: string;
  readonly block: Block;
  /** As typed when they were taken, whatever is changed afterwards. */
  readonly texts: readonly (readonly string[])[];
  readonly isCut: boolean;
}

/** What was copied or cut last on this page of the browser. A cut waits for its place; until then nothing moves. */
export class Clipboard {
  private taken: Taken | undefined;
  private count = 0;

  constructor(private readonly desk: Desk) {
    desk.subscribe((happening) => {
      // After any change the cut block may no longer be what was meant; its texts can still be pasted as a copy.
      if (happening.kind === "change" && this.taken?.isCut) this.taken = { ...this.taken, isCut: false };
      if (happening.kind === "opened") this.taken = undefined;
    });
  }

  /** The block that waits to be moved. */
  get waiting(): { readonly page: string; readonly block: Block } | undefined {
    return this.taken?.isCut ? this.taken : undefined;
  }

  forget(): void {
    if (this.taken?.isCut) this.taken = { ...this.taken, isCut: false };
  }

  take(data: DataTransfer, isCut: boolean): void {
    const { page, block, live } = this.desk;
    const { top, left, bottom, right } = edges(block);
    const rows = Array.from({ length: bottom - top + 1 }, (_, r) => top + r);
    const columns = Array.from({ length: right - left + 1 }, (_, c) => left + c);
    const texts = rows.map((row) => columns.map((column) => textAt(page, row, column)));
    const values = rows.map((row) =>
      columns.map((column) => {
        const value = live?.value({ page: page.id, row, column });
        if (value?.kind === "number") return withDecimalSign(String(value.value));
        return value?.kind === "error" ? value.code : value?.kind === "text" ? value.text : textAt(page, row, column);
      }),
    );
    const mark = `${Date.now()} ${++this.count}`;
    data.setData("text/plain", printTabText(values));
    data.setData(markType, mark);
    this.taken = { mark, page: page.id, block, texts, isCut };
    this.desk.say(`${blockName(block)} ${isCut ? say`is cut and moves when it is pasted` : say`copied`}.`);
  }

  async put(data: DataTransfer): Promise<void> {
    const { taken } = this;
    const isOwn = taken !== undefined && data.getData(markType) === taken.mark;
    if (isOwn && taken.isCut) this.move(taken);
    else if (isOwn) this.putCopy(taken);
    else await this.putText(data.getData("text/plain"));
  }

  private move({ page, block }: Taken): void {
    const { desk } = this;
    const { top, left } = edges(desk.block);
    const from = edges(block);
    const target = blockOf({ top, left, bottom: top + from.bottom - from.top, right: left + from.right - from.left });
    const label = say`move of ${blockName(block)} to ${blockName(target)}`;
    const home = desk.page.id;
    if (desk.apply(label, (notebook) => moveBlock(notebook, page, block, home, { row: top, column: left }), target)) {
      desk.select(target);
    }
  }

  /** Where a block of that size goes: at the selection, again and again where the selection is a multiple of it. */
  private target(rows: number, columns: number): Block {
    const { top, left, bottom, right } = edges(this.desk.block);
    const isMultiple = (bottom - top + 1) % rows === 0 && (right - left + 1) % columns === 0;
    return isMultiple
      ? blockOf({ top, left, bottom, right })
      : blockOf({ top, left, bottom: top + rows - 1, right: left + columns - 1 });
  }

  private putCopy({ block, texts }: Taken): void {
    const { desk } = this;
    const { page } = desk;
    const from = edges(block);
    const target = this.target(texts.length, texts[0]?.length ?? 1);
    const start = edges(target);
    const cells = cellsOf(target).map((cell): CellText => {
      const r = (cell.row - start.top) % texts.length;
      const c = (cell.column - start.left) % (texts[0]?.length ?? 1);
      const text = texts[r]?.[c] ?? "";
      const shifted = isFormula(text) ? shiftFormula(text, cell.row - from.top - r, cell.column - from.left - c) : text;
      return { page: page.id, ...cell, text: shifted };
    });
    this.write(page, cells, target);
  }

  private write(page: Page, cells: readonly CellText[], target: Block): void {
    const { desk } = this;
    const { texts, taken } = withoutTakenKeys(page, cells);
    if (desk.apply(say`paste into ${blockName(target)}`, (notebook) => setCells(notebook, texts), target)) {
      desk.select(target);
      if (taken.length > 0) desk.say(takenSentence(taken));
    }
  }

  private async putText(text: string): Promise<void> {
    if (text === "") return;
    const { desk } = this;
    const rows = readTabText(text);
    const columns = rows[0]?.length ?? 1;
    const target = this.target(rows.length, columns);
    const start = edges(target);
    const cells = cellsOf(target).map((cell) => ({
      ...cell,
      typed: rows[(cell.row - start.top) % rows.length]?.[(cell.column - start.left) % columns] ?? "",
    }));
    const block = cells.length === 1 && cells[0] ? one(cells[0]) : target;
    await typeInto(desk, desk.page, cells, say`paste into ${blockName(target)}`, block);
  }
}
