import type Handsontable from "handsontable/base";
import type { Desk } from "../desk";
import type { Clipboard } from "../edits/clipboard";
import { closedCell } from "../edits/type-into";
import { leaveCells } from "./leave-cells";

/** What keys do on a cell before the library has them, while none is being edited. */
export class CellKeys {
  /** Escape was the last key: Tab leaves the cells. */
  private isLeaving = false;

  constructor(
    private readonly host: HTMLElement,
    private readonly desk: Desk,
    private readonly clipboard: Clipboard,
  ) {}

  /** @returns false for a key that is dealt with. */
  press(hot: Handsontable, event: KeyboardEvent): false | undefined {
    const isTyping = event.key.length === 1 && !event.ctrlKey && !event.metaKey && !event.altKey;
    if (isTyping || event.key === "Enter" || event.key === "F2") {
      const closed = closedCell(this.desk, this.desk.page, this.desk.block.from);
      if (closed) this.desk.say(closed, "refused");
    }
    const isLeaving = this.isLeaving && event.key === "Tab";
    if (event.key !== "Shift") this.isLeaving = false;
    if (isLeaving) {
      event.preventDefault();
      event.stopImmediatePropagation();
      hot.unlisten();
      setTimeout(() => leaveCells(this.host, event.shiftKey));
    } else if (event.key === "Escape") {
      // Tab walks from cell to cell; after Escape it leaves them, so that nobody is caught here.
      this.isLeaving = true;
      if (this.clipboard.waiting) {
        this.clipboard.forget();
        hot.render();
      }
    }
    return isLeaving ? false : undefined;
  }
}
