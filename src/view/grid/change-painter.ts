import type Handsontable from "handsontable/base";
import type { Change } from "../../notebook/live";
import { firstOption, type Page } from "../../notebook/model";
import { anyMissing } from "../../notebook/unfilled";
import type { Desk } from "../desk";
import type { LayOut } from "./lay-out";

/** The library's own classes stay: they say what is selected. */
const librarysOwn = / (?:area|current|highlight|ht|fullySelected)\S*/g;

/** The columns of the cells whose value changed, row by row of the grid. */
export function changedColumns(layOut: LayOut, { cells }: Change): ReadonlyMap<number, readonly number[]> {
  const rows = new Map<number, number[]>();
  for (const { page, row: line, column } of cells) {
    if (page !== layOut.page.id) continue;
    const row = layOut.row(line);
    const columns = rows.get(row);
    if (columns) columns.push(column);
    else rows.set(row, [column]);
  }
  return rows;
}

/** Draws what a change changed, and nothing else: the library by itself would draw every cell in sight. */
export class ChangePainter {
  /** A missing input left checks open when the cells were last drawn. */
  private wasOpen = true;

  constructor(
    private readonly hot: Handsontable,
    private readonly layOut: LayOut,
    private readonly desk: Desk,
  ) {}

  /**
   * Draws the changed cells that are in sight. A whole row is drawn when its texts changed, since they say what kind
   * of row it is, and its options when its numbers have other digits; all rows are while a missing input leaves checks
   * open, for a check may open or close with its number unchanged.
   */
  paint(changed: ReadonlyMap<number, readonly number[]>, before: Page): void {
    const { layOut, desk } = this;
    const { rows, columns } = this.inSight();
    const isOpen = desk.live !== undefined && anyMissing(desk.live);
    const isAll = isOpen || this.wasOpen;
    this.wasOpen = isOpen;
    for (const row of rows) {
      const own = changed.get(row);
      if (!own && !isAll) continue;
      const line = layOut.line(row);
      const isWhole = isAll || before.rows[line] !== layOut.page.rows[line];
      const isDrawn = layOut.hasOtherDigits(row)
        ? (column: number) => column >= firstOption
        : (column: number) => own?.includes(column);
      const drawn = isWhole ? columns : columns.filter(isDrawn);
      for (const column of drawn) this.paintOne(row, column);
    }
  }

  /** The rows and columns that have cells on the screen. */
  private inSight(): { readonly rows: readonly number[]; readonly columns: readonly number[] } {
    const { fixedRowsTop, fixedColumnsStart } = this.layOut.frozen;
    const { view } = this.hot;
    const places = (fixed: number, first: number | null, last: number | null): number[] => {
      const from = Math.max(fixed, first ?? fixed);
      const moving = Array.from({ length: Math.max(0, (last ?? -1) - from + 1) }, (_, i) => from + i);
      return [...Array.from({ length: fixed }, (_, i) => i), ...moving];
    };
    return {
      rows: places(fixedRowsTop, view.getFirstRenderedVisibleRow(), view.getLastRenderedVisibleRow()),
      columns: places(fixedColumnsStart, view.getFirstRenderedVisibleColumn(), view.getLastRenderedVisibleColumn()),
    };
  }

  private paintOne(row: number, column: number): void {
    const td = this.hot.getCell(row, column, true);
    if (!td) return;
    this.layOut.paint(td, row, column, td.className.match(librarysOwn)?.join(""));
    this.layOut.describe(td, row, column);
  }
}
