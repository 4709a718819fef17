import type { Page } from "../../notebook/model";
import type { Look } from "./look";
import { linesOf } from "./text-width";

const lineHeight = 18;
/** Padding of a row and its line. */
const around = 7;

/** Whether a text needs more than the one line of a low row. */
export const isOverOneLine = (look: Look, width: number): boolean =>
  look.isWrapped === true && linesOf(look, width) > 1;

/** Height of a row in px, so that wrapped words have their lines. */
export function rowHeight(
  page: Page,
  row: number,
  look: (row: number, column: number) => Look,
  widths: readonly number[],
): number {
  const lines = (page.rows[row] ?? []).map((_, column) => {
    const one = look(row, column);
    // What stands beside a number makes its row no taller; all of it is read in the line above the cells.
    const isBeside = one.shape === "key" || one.shape === "basis";
    return one.isWrapped && !isBeside ? linesOf(one, widths[column] ?? 90) : 1;
  });
  return Math.min(10, Math.max(1, ...lines)) * lineHeight + around;
}
