import { firstOption, lead, type Page } from "../../notebook/model";
import type { Look } from "./look";
import { type LookAt, mostRows, natural } from "./natural-width";
import { fitted, type Range, range } from "./share-room";
import { lookWidth } from "./text-width";

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

/** Widths of an option page's columns in px: they share the room there is. */
export function optionWidths(page: Page, look: LookAt, room: number): number[] {
  const ranges = (page.rows[0] ?? []).map((_, column) => optionPageRange(page, column, look, room));
  const widths = fitted([...ranges.slice(0, firstOption), ...alike(ranges.slice(firstOption))], room);
  const left = room - widths.reduce((sum, width) => sum + width, 0);
  const share = Math.min(30, Math.floor(left / Math.max(1, widths.length - firstOption)));
  return widths.map((width, column) => (column >= firstOption && share > 0 ? width + share : width));
}
