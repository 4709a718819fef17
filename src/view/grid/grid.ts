// Past 150 lines: the grid's instance, its settings and the hooks that share it are one thing.

import Handsontable from "handsontable/base";
import { registerEditor } from "handsontable/editors";
import { Autofill, ManualColumnResize, registerPlugin } from "handsontable/plugins";
import type { Change } from "../../notebook/live";
import { say } from "../../words/say";
import { type Block, type Cell, edges } from "../block";
import type { Desk } from "../desk";
import { typedText } from "../edits/as-typed";
import type { Clipboard } from "../edits/clipboard";
import { fillBlock } from "../edits/fill-block";
import { closedCell } from "../edits/type-into";
import type { KnownFunction } from "../typing/known-function";
import { CellKeys } from "./cell-keys";
import { ChangePainter, changedColumns } from "./change-painter";
import { listenToClipboard } from "./clipboard-events";
import { drawHeader, drawRowHead } from "./draw-header";
import { fixedSettings } from "./fixed-settings";
import { formulaEditor } from "./formula-editor";
import { LayOut, rowNumbers } from "./lay-out";
import { MousePointing } from "./mouse-pointing";
import { takeTyped } from "./take-typed";

registerPlugin(Autofill);
registerPlugin(ManualColumnResize);

/** The grid never holds a value: every cell is asked for when it is drawn. */
const nothing = ({ rows, columns }: { readonly rows: number; readonly columns: number }): null[][] =>
  Array.from({ length: rows }, () => Array.from({ length: columns }, () => null));

/** A place as the library gives it. */
interface Place {
  readonly row: number | null;
  readonly col: number | null;
}

/** The page's cells on the screen. It shows the notebook and hands every wish over; it changes nothing itself. */
export class Grid {
  private readonly hot: Handsontable;
  private readonly layOut: LayOut;
  private readonly changes: ChangePainter;
  private readonly keys: CellKeys;
  /** Selections that are made here and not by the person. */
  private isShowing = false;
  /** Width in px for which the columns were laid out. */
  private fittedWidth = 0;
  /** The height in px that they had. */
  private fittedHeight = 0;
  /** The page was turned while something else stood in the cells' place. */
  private isStale = false;

  constructor(
    private readonly host: HTMLElement,
    private readonly desk: Desk,
    clipboard: Clipboard,
    functions: () => readonly KnownFunction[],
    openMenu: (x: number, y: number) => void,
  ) {
    registerEditor(
      "formula",
      formulaEditor(desk, functions, (row, column, text) =>
        takeTyped(desk, this.layOut, [[row, column, undefined, text]]),
      ),
    );
    this.layOut = new LayOut(desk, clipboard, host);
    this.keys = new CellKeys(host, desk, clipboard);
    this.fittedWidth = host.clientWidth;
    this.isStale = !host.isConnected;
    this.hot = new Handsontable(host, this.settings());
    this.changes = new ChangePainter(this.hot, this.layOut, desk);
    host.addEventListener("contextmenu", (event) => {
      event.preventDefault();
      openMenu(event.clientX, event.clientY);
    });
    // A press that only pointed at a cell leaves the keyboard with the formula, whatever the library makes of it.
    host.addEventListener("click", () => {
      if (!this.isEditing && !host.contains(document.activeElement)) setTimeout(() => this.hot.unlisten());
    });
    this.hot.rootElement.setAttribute("aria-label", say`Cells of the page`);
    desk.subscribe((happening) => {
      if (happening.kind === "change") this.follow(happening.change);
      else if (happening.kind === "selection") this.select(this.desk.block);
      else if (happening.kind === "page" || happening.kind === "opened") this.show();
    });
    desk.marks.subscribe(() => this.hot.render());
    new ResizeObserver(() => this.fit()).observe(host);
    const isHere = () => this.hot.isListening() && !this.isEditing && host.contains(document.activeElement);
    listenToClipboard(clipboard, isHere, () => this.hot.render());
    this.select(desk.block);
  }

  /** Puts the keyboard into the cells, once the press that asked for it is over: the library leaves it on any press. */
  focus(): void {
    setTimeout(() => this.takeKeyboard());
  }

  private takeKeyboard(): void {
    // By now something else may stand in the place of the cells, and would not get its keys.
    if (!this.host.isConnected) return;
    const { from, to } = this.desk.block;
    this.hot.selectCell(this.layOut.row(from.row), from.column, this.layOut.row(to.row), to.column, false);
    // Into the text field and not only the cell, so that composed and dictated text has somewhere to go.
    this.hot.getFocusManager().refocusToEditorTextarea();
  }

  /** Where the selected cell stands on the screen, for the menu that the keyboard opens. */
  get cellBox(): DOMRect | undefined {
    const { from } = this.desk.block;
    return this.hot.getCell(this.layOut.row(from.row), from.column, true)?.getBoundingClientRect();
  }

  get isEditing(): boolean {
    return this.hot.getActiveEditor()?.isOpened() ?? false;
  }

  /** Makes the selected columns wider or narrower, as dragging their edge does. */
  widen(by: number): void {
    const { left, right } = edges(this.desk.block);
    for (let column = left; column <= right; column++) this.layOut.setWidth(column, this.layOut.width(column) + by);
    this.renderMeasured();
  }

  /** Draws with other widths and heights: the library remembers where each column and row began. */
  private renderMeasured(): void {
    this.hot.view.invalidateIndexSizesCache();
    this.hot.render();
  }

  private settings(): Handsontable.GridSettings {
    const { layOut, desk } = this;
    const pointing = new MousePointing(desk, layOut);
    return {
      ...fixedSettings,
      ...layOut.frozen,
      data: nothing(layOut.size),
      rowHeaders: (row: number) => String(layOut.line(row) + 1),
      rowHeaderWidth: rowNumbers,
      colWidths: (column: number) => layOut.width(column),
      rowHeights: (row: number) => layOut.height(row),
      renderer: (_hot: unknown, td: HTMLTableCellElement, row: number, column: number) => layOut.paint(td, row, column),
      afterRenderer: (td, row, column) => layOut.describe(td, row, column),
      cells: (row: number, column: number) => ({ readOnly: this.closed(row, column) !== undefined }),
      modifySourceData: (row, column, holder, mode) => {
        if (mode === "get") {
          const cell = { row: layOut.line(row), column: Number(column) };
          holder.value = typedText(desk.notebook, layOut.page, cell);
        }
      },
      beforeChange: (changes) => {
        takeTyped(
          desk,
          layOut,
          changes.filter((change) => change !== null),
        );
        return false;
      },
      beforeAutofill: (_data, source, target) => {
        fillBlock(desk, this.block(source.from, source.to), this.block(target.from, target.to));
        return false as never;
      },
      afterGetColHeader: (column, th) => drawHeader(layOut.page, column, th, layOut.isSign(column)),
      afterGetRowHeader: (row, th) => drawRowHead(th, layOut.laid(row)),
      afterColumnResize: (width, column) => this.keepWidth(column, width),
      afterSelection: (row, col, row2, col2) => {
        if (!this.isShowing) desk.select(this.block({ row, col }, { row: row2, col: col2 }));
      },
      beforeOnCellMouseDown: (event, { row, col }) => pointing.pressed(event, row ?? -1, col ?? -1),
      beforeOnCellMouseOver: (event, { row, col }) => pointing.dragged(event, row ?? -1, col ?? -1),
      // An answer of false keeps the key from the library; its types do not say so.
      beforeKeyDown: (event) => (this.isEditing ? undefined : this.keys.press(this.hot, event)) as never,
      // The library takes the keyboard along with every selection; it stays where the person has it.
      modifyFocusedElement: (_row, _column, cell) =>
        this.isShowing && !this.hot.isListening() ? (document.activeElement as HTMLElement) : cell,
    };
  }

  /** Headers count as the first row or column: their press selects all that is under them. */
  private block(from: Place, to: Place): Block {
    const cell = ({ row, col }: Place): Cell => ({
      row: this.layOut.line(Math.max(0, row ?? 0)),
      column: Math.max(0, col ?? 0),
    });
    return { from: cell(from), to: cell(to) };
  }

  private closed(row: number, column: number): string | undefined {
    return closedCell(this.desk, this.layOut.page, { row: this.layOut.line(row), column });
  }

  /** Runs something during which the library may select cells on its own account. */
  private quietly(act: () => void): void {
    this.isShowing = true;
    act();
    this.isShowing = false;
  }

  private fit(): void {
    const { clientWidth } = this.host;
    if (clientWidth === 0) {
      // Something else stands in the place of the cells: keys are not for them.
      this.hot.unlisten();
      return;
    }
    if (this.isStale) this.show();
    const isCovered = this.takeHeight();
    if (clientWidth === this.fittedWidth) {
      this.hot.refreshDimensions();
      if (isCovered) this.hot.scrollToFocusedCell();
      return;
    }
    this.fittedWidth = clientWidth;
    this.layOut.measure();
    const { fixedColumnsStart, fixedRowsTop } = this.hot.getSettings();
    const { frozen } = this.layOut;
    if (fixedColumnsStart !== frozen.fixedColumnsStart || fixedRowsTop !== frozen.fixedRowsTop) {
      this.quietly(() => this.hot.updateSettings(frozen));
    }
    this.hot.refreshDimensions();
    this.renderMeasured();
    if (isCovered) this.hot.scrollToFocusedCell();
  }

  /** Whether the selected cell was in sight and no longer is, since what stands above or below the cells has grown. */
  private takeHeight(): boolean {
    const { top, bottom, height } = this.host.getBoundingClientRect();
    const before = this.fittedHeight;
    this.fittedHeight = height;
    const cell = this.isEditing ? undefined : this.cellBox;
    return cell !== undefined && cell.bottom > bottom && cell.bottom <= top + before + 1;
  }

  /** Makes the library's empty table as large as the page. */
  private resize(): void {
    const { rows, columns } = this.layOut.size;
    if (this.hot.countRows() !== rows || this.hot.countCols() !== columns)
      this.hot.updateData(nothing({ rows, columns }));
    this.hot.updateSettings(this.layOut.frozen);
  }

  /** Shows the desk's page; what was being typed belongs to the page that is left. */
  private show(): void {
    this.isStale = !this.host.isConnected;
    if (this.isStale) return;
    if (this.isEditing) this.hot.getActiveEditor()?.finishEditing(false);
    this.quietly(() => {
      this.hot.deselectCell();
      this.layOut.follow();
      this.layOut.measure();
      this.resize();
      this.hot.scrollViewportTo({ row: 0, col: 0 });
    });
    this.select(this.desk.block);
  }

  private follow(change: Change): void {
    this.isStale ||= !this.host.isConnected;
    if (this.isStale) return;
    const before = this.layOut.page;
    this.layOut.follow();
    const { page, size } = this.layOut;
    if (before.id !== page.id) {
      this.show();
    } else if (this.hot.countRows() !== size.rows || this.hot.countCols() !== size.columns) {
      this.layOut.measure();
      this.quietly(() => this.resize());
      this.renderMeasured();
      this.select(this.desk.block);
    } else {
      const changed = changedColumns(this.layOut, change);
      const isTaller = [...changed].some(([row, columns]) => row >= 0 && this.layOut.isHeightDue(row, columns));
      // Without a changed cell it was something beside them, such as the units in which they are shown.
      // A line above the first row is the header: an option has another name.
      if (change.structure || isTaller || [...changed.keys()].some((row) => row < 0) || changed.size === 0) {
        this.layOut.measure();
        this.renderMeasured();
      } else this.changes.paint(changed, before);
    }
  }

  private select({ from, to }: Block): void {
    if (this.isStale) return;
    const wanted = [this.layOut.row(from.row), from.column, this.layOut.row(to.row), to.column] as const;
    const present = this.hot.getSelectedLast();
    if (this.isEditing || wanted.every((place, i) => place === present?.[i])) return;
    this.quietly(() => this.hot.selectCell(...wanted, true, false));
  }

  private keepWidth(column: number, width: number): void {
    // The library keeps widths by place and would give this one to whatever stands there later.
    this.hot.getPlugin("manualColumnResize").clearManualSize(column);
    this.layOut.setWidth(column, width);
    this.renderMeasured();
  }
}
