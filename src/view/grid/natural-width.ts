import type { Page } from "../../notebook/model";
import { hasHeader } from "../../notebook/own/function-page";
import { headName } from "./head-name";
import type { Look } from "./look";
import { headerFont, lookWidth, sides, textWidth } from "./text-width";

export type LookAt = (row: number, column: number) => Look;

/** Rows past this many do not widen a column. */
export const mostRows = 500;

/** A longer name is cut short in its head: no column is wider than the room there is. */
const mostName = 260;

/** Width that the column's cells ask for, all of them or those that count. */
export function natural(page: Page, column: number, look: LookAt, counts: (one: Look) => boolean = () => true): number {
  const isHeaded = hasHeader(page);
  const name = isHeaded ? textWidth(headName(page, column).toUpperCase(), headerFont) + sides : 0;
  let width = Math.min(mostName, name);
  for (let row = isHeaded ? 1 : 0; row < Math.min(page.rows.length, mostRows); row++) {
    const one = look(row, column);
    if (one.shape === "heading" || one.shape === "note" || one.text === "" || !counts(one)) continue;
    width = Math.max(width, lookWidth(one));
  }
  return width;
}
