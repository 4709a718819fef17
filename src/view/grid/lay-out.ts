import { columnsOf, lead, type Page } from "../../notebook/model";
import { hasHeader } from "../../notebook/own/function-page";
import { rowKind } from "../../notebook/rows";
import { isInside } from "../block";
import type { CellMark } from "../cell-marks";
import { type Desk, firstLine } from "../desk";
import type { Clipboard } from "../edits/clipboard";
import { cellLook } from "./cell-look";
import { columnWidths, frozenColumns, isSign } from "./column-widths";
import { hasTitleLine } from "./free-row";
import type { Look } from "./look";
import { describeCell, paintCell } from "./paint-cell";
import { RowDigits } from "./row-digits";
import { isOverOneLine, rowHeight } from "./row-height";

/** Width of the row numbers in px. */
export const rowNumbers = 36;
const scrollBar = 14;
const usualWidth = 90;
const usualHeight = 25;

/**
 * What the grid shows of a page and where: looks, widths, heights. Rows are the grid's own, counted from 0 below the
 * column names; `line` is the same row as the page counts it.
 */
export class LayOut {
  page: Page;
  private widths: readonly number[] = [];
  private heights: readonly number[] = [];
  /** Widths that a person has set, by page and column. */
  private readonly ownWidths = new Map<string, Map<number, number>>();
  private readonly digits = new RowDigits();

  constructor(
    private readonly desk: Desk,
    private readonly clipboard: Clipboard,
    private readonly host: HTMLElement,
  ) {
    this.page = desk.page;
    this.measure();
  }

  line(row: number): number {
    return row + firstLine(this.page);
  }

  row(line: number): number {
    return line - firstLine(this.page);
  }

  get size(): { readonly rows: number; readonly columns: number } {
    return { rows: this.page.rows.length - firstLine(this.page), columns: columnsOf(this.page) };
  }

  width(column: number): number {
    return this.widths[column] ?? usualWidth;
  }

  height(row: number): number {
    return this.heights[row] ?? usualHeight;
  }

  setWidth(column: number, width: number): void {
    const own = this.ownWidths.get(this.page.id) ?? new Map<number, number>();
    own.set(column, Math.max(40, Math.min(width, 900)));
    this.ownWidths.set(this.page.id, own);
    this.measure();
  }

  /** Follows the desk's page after a change of its cells. */
  follow(): void {
    this.page = this.desk.page;
    this.digits.follow();
  }

  /** Works out widths and heights anew. */
  measure(): void {
    this.digits.forget();
    const own = this.ownWidths.get(this.page.id);
    this.widths = columnWidths(this.page, this.lookAt, this.room).map((width, column) => own?.get(column) ?? width);
    this.host.classList.toggle("basis-sign", this.isSign(lead.basis));
    this.heights = Array.from({ length: this.size.rows }, (_, row) =>
      rowHeight(this.page, this.line(row), this.lookAt, this.widths),
    );
  }

  /** Whether a row would need another height than it has, now that some of its cells show something else. */
  isHeightDue(row: number, columns: readonly number[]): boolean {
    const isLow = this.height(row) <= usualHeight;
    const isOver = (column: number) => isOverOneLine(this.look(row, column), this.width(column));
    if (isLow && !columns.some((column) => this.mayWrap(row, column) && isOver(column))) return false;
    return rowHeight(this.page, this.line(row), this.lookAt, this.widths) !== this.height(row);
  }

  /** A number stands in one line whatever its digits are; words may not, nor a check. */
  private mayWrap(row: number, column: number): boolean {
    const at = { page: this.page.id, row: this.line(row), column };
    return this.desk.live?.value(at).kind !== "number" || rowKind(this.page, at.row) === "check";
  }

  /** Whether the last change gave a row's numbers another count of digits: then all of them are drawn anew. */
  hasOtherDigits(row: number): boolean {
    return this.digits.isOther(this.desk.live, this.page, this.line(row));
  }

  get frozen(): { readonly fixedColumnsStart: number; readonly fixedRowsTop: number } {
    return {
      fixedColumnsStart: frozenColumns(this.page, this.widths, this.room),
      fixedRowsTop: !hasHeader(this.page) && hasTitleLine(this.page) ? 1 : 0,
    };
  }

  look(row: number, column: number): Look {
    const { live } = this.desk;
    if (!live) return { shape: "blank", text: "" };
    const line = this.line(row);
    return cellLook(live, this.page, line, column, this.digits.of(live, this.page, line));
  }

  private readonly lookAt = (line: number, column: number): Look => this.look(this.row(line), column);

  /** Paints a cell with all that lies over it; `kept` are classes that stay, each after a space. */
  paint(td: HTMLTableCellElement, row: number, column: number, kept = ""): void {
    const classes = this.laid(row, column).map(({ kind }) => ` ${kind}`);
    if (this.isCut(this.line(row), column)) classes.push(" cut");
    if (this.height(row) <= usualHeight) classes.push(" low");
    paintCell(td, this.look(row, column), classes.join("") + kept);
  }

  /** Says what a painted cell means; the library takes that away once more after it has had a cell painted. */
  describe(td: HTMLTableCellElement, row: number, column: number): void {
    describeCell(td, this.look(row, column), this.laid(row, column));
  }

  readonly isSign = (column: number): boolean => isSign(this.page, column, this.width(column));

  private isCut(line: number, column: number): boolean {
    const { waiting } = this.clipboard;
    return waiting?.page === this.page.id && isInside(waiting.block, { row: line, column });
  }

  /** What lies over a cell, or over the head of a row where no column is named. */
  laid(row: number, column?: number): readonly CellMark[] {
    return this.desk.marks.at(this.page.id, this.line(row), column);
  }

  private get room(): number {
    return this.host.clientWidth - rowNumbers - scrollBar;
  }
}
