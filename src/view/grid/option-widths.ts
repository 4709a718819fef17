import { firstOption, lead, type Page } from "../../notebook/model";
import type { Look, Shape } from "./look";
import { type LookAt, mostRows, natural } from "./natural-width";
import { fitted, least, type Range, range } from "./share-room";
import { lookWidth } from "./text-width";

/** How the columns of a page are asked to draw together, one after the other, until all options are in sight. */
interface Form {
  readonly quantity: readonly [least: number, most: number];
  /** Narrower than this a key or a unit is not, even where its longest word is wider. */
  readonly mostKeyWord: number;
  readonly mostUnitWord: number;
  /** A basis that could not be read is no more than a sign that there is one. */
  readonly basis: readonly [least: number, most: number];
  /** Verdicts that may take two lines; with any of them sentences take more lines than usual. */
  readonly wrapping: readonly Shape[];
}

/** Px of a basis that only says that there is one; its words stand in the line above the cells and on hovering. */
const basisSign = 30;

/** A basis narrower than this cannot be read. */
export const leastBasis = 56;

const usual: Form = { quantity: [176, 290], mostKeyWord: 104, mostUnitWord: 66, basis: [70, 180], wrapping: [] };
const tight: Form = { quantity: [160, 290], mostKeyWord: 84, mostUnitWord: 56, basis: [76, 180], wrapping: [] };
const withoutBasis: Form = { ...tight, quantity: [128, 240], mostUnitWord: 60, basis: [basisSign, basisSign] };
const closest: Form = { ...withoutBasis, quantity: [116, 240], mostUnitWord: 56 };
const forms: readonly Form[] = [
  usual,
  tight,
  withoutBasis,
  { ...closest, wrapping: ["short"] },
  { ...closest, wrapping: ["short", "holds"] },
];

/** With less room than this, what scrolls leaves out the basis. */
const narrowRoom = 780;

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

const longestWord = (text: string): string =>
  text.split(" ").reduce((longest, word) => (word.length > longest.length ? word : longest), "");

/** A verdict is never cut short, and stands in one line where there is room; other words may wrap. */
function leastOption(page: Page, column: number, look: LookAt, wrapping: readonly Shape[]): number {
  const shown: LookAt = (row, at) => {
    const one = look(row, at);
    return wrapping.includes(one.shape) ? { ...one, text: longestWord(one.text) } : one;
  };
  // A px more than was measured: a verdict that just fits stays in its line.
  return Math.max(100, Math.ceil(natural(page, column, shown, ({ margin }) => margin !== undefined)) + 1);
}

/** What the options ask for; they are compared, so that none is narrower than another. */
function optionRanges(page: Page, look: LookAt, wordy: readonly boolean[], wrapping: readonly Shape[]): Range[] {
  const isWrapping = wrapping.length > 0;
  const own = wordy.map((isSentences, place) => {
    const column = firstOption + place;
    const needed = leastOption(page, column, look, wrapping);
    if (isSentences) return range(Math.max(isWrapping ? 140 : 220, needed), 300, 300);
    // Where shortfalls alone wrap, more px would not keep them in one line.
    return range(needed, wrapping.join() === "short" ? needed : natural(page, column, look), 150);
  });
  const alike = { least: Math.max(...own.map((one) => one.least)), wanted: Math.max(...own.map((one) => one.wanted)) };
  return own.map(() => alike);
}

function leadRanges(page: Page, look: LookAt, form: Form): Range[] {
  const width = (column: number) => natural(page, column, look);
  const unit = width(lead.unit);
  return [
    range(form.quantity[0], width(lead.quantity), form.quantity[1]),
    range(Math.min(form.mostKeyWord, Math.max(84, longestKeyWord(page))), width(lead.key), 124),
    range(Math.min(form.mostUnitWord, Math.max(56, Math.ceil(unit))), unit, 78),
    range(form.basis[0], width(lead.basis), form.basis[1]),
  ];
}

/** Asks for every cell once: each form measures them all. */
function askedOnce(look: LookAt): LookAt {
  const rows: Look[][] = [];
  return (row, column) => {
    rows[row] ??= [];
    const cells = rows[row];
    cells[column] ??= look(row, column);
    return cells[column];
  };
}

/** Widths of an option page's columns in px: they share the room there is. */
export function optionWidths(page: Page, lookAt: LookAt, room: number): number[] {
  const look = askedOnce(lookAt);
  const wordy = (page.rows[0] ?? []).slice(firstOption).map((_, place) => isWordy(page, firstOption + place, look));
  const rangesIn = (form: Form) => [...leadRanges(page, look, form), ...optionRanges(page, look, wordy, form.wrapping)];
  const fitting = forms.find((form) => least(rangesIn(form)) <= room);
  const widths = fitted(rangesIn(fitting ?? (room < narrowRoom ? withoutBasis : usual)), room);
  const left = room - widths.reduce((sum, width) => sum + width, 0);
  const share = Math.min(30, Math.floor(left / Math.max(1, wordy.length)));
  return widths.map((width, column) => (column >= firstOption && share > 0 ? width + share : width));
}
