import type { Page } from "../../notebook/model";
import { functionColumns, part } from "../../notebook/own/function-page";
import { type LookAt, natural } from "./natural-width";
import { fitted, range } from "./share-room";

/** Part, Name, Formula, Unit, Limits, Why, Source: least and most px; sentences and formulas take what is left. */
const functionRanges: readonly (readonly [least: number, most: number])[] = [
  [84, 104],
  [84, 150],
  [120, 420],
  [60, 76],
  [76, 170],
  [150, 420],
  [110, 420],
];
const isWord = new Set<number>([part.part, part.name, part.unit]);
const takesRoom = new Set<number>([part.formula, part.why, part.source]);

/** Widths of the columns of a page that defines functions, in px: they share the room there is. */
export function functionWidths(page: Page, look: LookAt, room: number): number[] {
  const columns = page.rows[0] ?? [];
  const widths = fitted(
    columns.map((_, column) => {
      const [least, most] = functionRanges[column] ?? [64, 240];
      const wanted = natural(page, column, look);
      // A name or a unit is one word, which is not cut in two where there is room.
      return range(isWord.has(column) ? Math.min(Math.max(least, wanted), most) : least, wanted, most);
    }),
    room,
  );
  const left = Math.floor((room - widths.reduce((sum, width) => sum + width, 0)) / takesRoom.size);
  return left > 0 && columns.length === functionColumns.length
    ? widths.map((width, column) => (takesRoom.has(column) ? width + left : width))
    : widths;
}
