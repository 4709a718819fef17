import { firstOption, isOptionPage, lead, type Page } from "../../notebook/model";
import { functionColumns, hasHeader, isFunctionPage, part } from "../../notebook/own/function-page";
import type { Look } from "./look";
import { headerFont, linesOf, lookWidth, sides, textWidth } from "./text-width";

type LookAt = (row: number, column: number) => Look;

/** Rows past this many do not widen a column. */
const mostRows = 500;
const lineHeight = 18;
/** Padding of a row and its line. */
const around = 7;

/** A longer name is cut short in its head: no column is wider than the room there is. */
const mostName = 260;

interface Range {
  readonly least: number;
  readonly wanted: number;
}

const range = (least: number, wanted: number, most: number): Range => ({
  least,
  wanted: Math.round(Math.max(least, Math.min(wanted, most))),
});

/** Width that the column's cells ask for, all of them or those that count. */
function natural(page: Page, column: number, look: LookAt, counts: (one: Look) => boolean = () => true): number {
  const isHeaded = hasHeader(page);
  const name = isHeaded ? textWidth((page.rows[0]?.[column] ?? "").toUpperCase(), headerFont) + sides : 0;
  let width = Math.min(mostName, name);
  for (let row = isHeaded ? 1 : 0; row < Math.min(page.rows.length, mostRows); row++) {
    const one = look(row, column);
    if (one.shape === "heading" || one.shape === "note" || one.text === "" || !counts(one)) continue;
    width = Math.max(width, lookWidth(one));
  }
  return width;
}

/** Texts no longer than this are words, not sentences. */
const longestWords = 24;

/** Whether most of what an option column holds is sentences. */
function isWordy(page: Page, column: number, look: LookAt): boolean {
  const rows = page.rows.map((_, row) => row).filter((row) => row > 0 && look(row, column).text !== "");
  const isSentence = ({ isWrapped, text }: Look) => isWrapped === true && text.length > longestWords;
  return rows.filter((row) => isSentence(look(row, column))).length > rows.length / 2;
}

/** Width that the longest word of the keys asks for: a key may run on below after each of its words. */
const longestKeyWord = (page: Page): number =>
  Math.ceil(
    Math.max(
      0,
      ...page.rows
        .slice(1, mostRows)
        .flatMap((cells) => (cells[lead.key] ?? "").split(/(?<=_)/))
        .map((text) => lookWidth({ shape: "key", text })),
    ),
  );

/** A verdict is never cut short; other words may wrap. */
const leastOption = (page: Page, column: number, look: LookAt): number =>
  Math.ceil(
    Math.max(
      100,
      natural(page, column, look, ({ margin }) => margin !== undefined),
    ),
  );

function optionPageRange(page: Page, column: number, look: LookAt, room: number): Range {
  const isNarrow = room < 780;
  const width = natural(page, column, look);
  switch (column) {
    case lead.quantity:
      return range(isNarrow ? 150 : 176, width, isNarrow ? 210 : 290);
    case lead.key:
      // Whole words where there is room for them; three options come first.
      return range(Math.min(104, Math.max(84, longestKeyWord(page))), width, 124);
    case lead.unit:
      return range(Math.min(66, Math.max(56, Math.ceil(width))), width, 78);
    case lead.basis:
      return isNarrow ? range(48, width, 80) : range(70, width, 180);
    default:
      return isWordy(page, column, look)
        ? { least: 220, wanted: 300 }
        : range(leastOption(page, column, look), width, 150);
  }
}

/** Options are compared: none is narrower than another. */
function alike(options: readonly Range[]): readonly Range[] {
  const [least, wanted] = [Math.max(...options.map((one) => one.least)), Math.max(...options.map((one) => one.wanted))];
  return options.map(() => ({ least, wanted }));
}

/** Each column as wide as it wants to be, or less in the same measure, down to what it needs. */
function fitted(ranges: readonly Range[], room: number): number[] {
  const wanted = ranges.reduce((sum, one) => sum + one.wanted, 0);
  const give = ranges.reduce((sum, one) => sum + one.wanted - one.least, 0);
  const share = wanted <= room || give === 0 ? 0 : Math.min(1, (wanted - room) / give);
  return ranges.map(({ least, wanted: own }) => Math.floor(own - share * (own - least)));
}

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

function functionWidths(page: Page, look: LookAt, room: number): number[] {
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

/**
 * Widths of a page's columns in px. On an option page they share the room there is; a free sheet's columns are as wide
 * as their texts, within reason.
 *
 * @param room px between the row numbers and the scroll bar.
 */
export function columnWidths(page: Page, look: LookAt, room: number): number[] {
  const columns = Array.from({ length: page.rows[0]?.length ?? 0 }, (_, column) => column);
  if (isFunctionPage(page)) return functionWidths(page, look, room);
  if (isOptionPage(page)) {
    const ranges = columns.map((column) => optionPageRange(page, column, look, room));
    const widths = fitted([...ranges.slice(0, firstOption), ...alike(ranges.slice(firstOption))], room);
    const left = room - widths.reduce((sum, width) => sum + width, 0);
    const share = Math.min(30, Math.floor(left / Math.max(1, widths.length - firstOption)));
    return widths.map((width, column) => (column >= firstOption && share > 0 ? width + share : width));
  }
  // Words give way to one another, figures and verdicts do not.
  const isFirm = ({ shape }: Look) => shape === "number" || shape === "holds" || shape === "short";
  const ranges = columns.map((column) =>
    range(
      Math.min(170, Math.max(64, Math.ceil(natural(page, column, look, column === 0 ? undefined : isFirm)) + 1)),
      natural(page, column, look),
      columns.length < 4 ? 640 : 240,
    ),
  );
  return fitted(ranges, room);
}

/** How many columns stay in sight: all that stand before the options where there is room, else the quantity alone. */
export function frozenColumns(page: Page, widths: readonly number[], room: number): number {
  if (!isOptionPage(page)) return 0;
  const leads = widths.slice(0, firstOption).reduce((sum, width) => sum + width, 0);
  return leads + (widths[firstOption] ?? 0) * 1.5 < room ? firstOption : 1;
}

/** Height of a row in px, so that wrapped words have their lines. */
export function rowHeight(page: Page, row: number, look: LookAt, widths: readonly number[]): number {
  const lines = (page.rows[row] ?? []).map((_, column) => {
    const one = look(row, column);
    // What stands beside a number makes its row no taller; all of it is read in the line above the cells.
    const isBeside = one.shape === "key" || one.shape === "basis";
    return one.isWrapped && !isBeside ? linesOf(one, widths[column] ?? 90) : 1;
  });
  return Math.min(10, Math.max(1, ...lines)) * lineHeight + around;
}
