import { TextEditor } from "handsontable/editors/textEditor";
import { columnsOf, type Page } from "../../notebook/model";
import { isFunctionPage, part } from "../../notebook/own/function-page";
import { namesAbove } from "../../notebook/own/names-above";
import { say } from "../../words/say";
import { type Cell, cellName } from "../block";
import { type Desk, firstLine } from "../desk";
import { choicesAt } from "../edits/as-typed";
import { beginPointing, endPointing, type Pointing } from "../pointing";
import { FormulaTyping } from "../typing/formula-typing";
import type { KnownFunction } from "../typing/known-function";

/** Letters of a text that the field breaks into lines; with more in one word the browser would take seconds. */
const mostBroken = 2000;

const steps: Readonly<Record<string, readonly [number, number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

/**
 * The editor of a cell: the plain text field of the grid with our help while typing.
 *
 * @param take is given what was typed, by the grid's own row and column.
 */
export function formulaEditor(
  desk: Desk,
  functions: () => readonly KnownFunction[],
  take: (row: number, column: number, text: string) => void,
): typeof TextEditor {
  return class FormulaEditor extends TextEditor {
    // Declared only: a field with a value would be set after the base class has made its elements.
    declare private typing: FormulaTyping | undefined;
    declare private pointing: Pointing | undefined;
    declare private pointed: Cell | undefined;

    static override get EDITOR_TYPE(): string {
      return "formula";
    }

    override createElements(): void {
      super.createElements();
      // The grid selects the whole text a moment after a key has opened the editor; the next key would replace the
      // first one. While it is open, nothing may select behind the person's back; nor take the keyboard when it is
      // elsewhere by now.
      const field = this.TEXTAREA;
      const select = field.select.bind(field);
      field.select = () => {
        const other = document.activeElement?.matches("input, select, textarea") && document.activeElement !== field;
        if (!this.isOpened() && this.hot.isListening() && !other) select();
      };
      field.setAttribute("aria-label", say`Cell`);
      field.addEventListener("input", () => this.takeInput());
      field.spellcheck = false;
    }

    override refreshDimensions(force?: boolean): void {
      this.TEXTAREA.classList.toggle("long", this.TEXTAREA.value.length > mostBroken);
      super.refreshDimensions(force);
    }

    /** Text that comes without a key, dictated or from a picker of signs, begins the typing too. */
    private takeInput(): void {
      if (this.isOpened() || !this.hot.isListening()) return;
      const text = this.TEXTAREA.value;
      this.beginEditing();
      if (!this.isOpened()) return;
      this.TEXTAREA.value = text;
      this.TEXTAREA.setSelectionRange(text.length, text.length);
    }

    override beginEditing(initial?: unknown, event?: Event): void {
      const isFresh = !this.isOpened() && !this.isInFullEditMode();
      super.beginEditing(initial, event);
      // Bringing the cell into sight may put the cell's old text back into the field, and the first key would be
      // written behind it. The key itself comes after this.
      if (isFresh && this.isOpened()) this.TEXTAREA.value = "";
    }

    override open(): void {
      super.open();
      const { page } = desk;
      const home: Cell = { row: (this.row ?? 0) + firstLine(page), column: this.col ?? 0 };
      this.TEXTAREA.setAttribute("aria-label", say`Text of ${cellName(home)}`);
      this.pointed = undefined;
      this.typing?.stop();
      const typing = new FormulaTyping(this.TEXTAREA, {
        functions: functions(),
        choices: choicesAt(desk.notebook, page, home),
        names: home.column === part.formula && isFunctionPage(page) ? namesAbove(page, home.row) : [],
        arrow: (key) => (this.isInFullEditMode() ? undefined : this.arrowPoint(page, home, key)),
        changed: () => this.autoResize.resize(),
      });
      this.typing = typing;
      this.pointing = {
        home: page.id,
        takes: () => typing.takesPointing,
        put: (reference) => {
          this.pointed = undefined;
          typing.point(reference);
        },
      };
      beginPointing(this.pointing);
    }

    override saveValue(value: unknown[][], everywhere: boolean): void {
      // The library would draw all cells again, even for a change that is not its own; only those that changed are due.
      if (everywhere || this.row === null || this.col === null) super.saveValue(value, everywhere);
      else take(this.row, this.col, String(value[0]?.[0] ?? ""));
    }

    override close(): void {
      this.typing?.stop();
      this.typing = undefined;
      endPointing(this.pointing);
      super.close();
    }

    /** An arrow key after an operator points at the next cell, beginning beside the one that is edited. */
    private arrowPoint(page: Page, home: Cell, key: string): string {
      const [down, right] = steps[key] ?? [0, 0];
      const from = this.typing?.isPointing ? (this.pointed ?? home) : home;
      const row = Math.max(firstLine(page), Math.min(from.row + down, page.rows.length - 1));
      const column = Math.max(0, Math.min(from.column + right, columnsOf(page) - 1));
      this.pointed = { row, column };
      return cellName(this.pointed);
    }
  };
}
