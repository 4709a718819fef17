import { plainNumberOf } from "../../engine/content";
import type { LiveNotebook } from "../../notebook/live";
import { firstOption, isOptionPage, type Notebook, type Page, type Row } from "../../notebook/model";
import { rowEntry } from "../../notebook/row-entry";
import { usualDecimals } from "./number-text";
import { rowUnits } from "./row-units";

const typedDecimals = (text: string): number => (/e/i.test(text) ? 0 : (text.split(".")[1]?.length ?? 0));

function ofValues(live: LiveNotebook, page: Page, row: number): number {
  const values = live.numbers(page, row, firstOption);
  if (values.every(Number.isInteger)) return 0;
  return usualDecimals(values.reduce((most, value) => Math.max(most, Math.abs(value)), 0));
}

interface Typed {
  /** Digits after the point that were typed, the most of them. */
  readonly decimals: number;
  /** Whether no option has a formula or words. */
  readonly isThroughout: boolean;
}

/** Rows are never changed in place, and every edit asks for the rows that follow it, most of them as they were. */
const known = new WeakMap<Row, Typed>();

function typedIn(row: Row): Typed {
  const before = known.get(row);
  if (before) return before;
  const options = row.slice(firstOption);
  const numbers = options.filter((text) => plainNumberOf(text) !== undefined);
  const typed = {
    decimals: Math.max(0, ...numbers.map(typedDecimals)),
    isThroughout: options.every((text) => text === "" || plainNumberOf(text) !== undefined),
  };
  known.set(row, typed);
  return typed;
}

function workOut(live: LiveNotebook, page: Page, row: number): number {
  const typed = typedIn(page.rows[row] ?? []);
  const asked = rowEntry(live.notebook, page, row)?.digits;
  if (asked !== undefined) return Math.max(asked, typed.decimals);
  return typed.isThroughout ? typed.decimals : Math.max(typed.decimals, ofValues(live, page, row));
}

/** What was worked out for one state of a notebook, by page and row: cells, panels and drawings all ask for it. */
interface WorkedOut {
  readonly notebook: Notebook;
  readonly byPage: Map<Page, Map<number, number>>;
}
const workedOut = new WeakMap<LiveNotebook, WorkedOut>();

/** The same in the row's own unit. */
function heldDecimals(live: LiveNotebook, page: Page, row: number): number {
  const { notebook } = live;
  const before = workedOut.get(live);
  const { byPage } = before?.notebook === notebook ? before : { byPage: new Map<Page, Map<number, number>>() };
  if (before?.notebook !== notebook) workedOut.set(live, { notebook, byPage });
  const byRow = byPage.get(page) ?? new Map<number, number>();
  byPage.set(page, byRow);
  const decimals = byRow.get(row) ?? workOut(live, page, row);
  byRow.set(row, decimals);
  return decimals;
}

/**
 * Digits after the point for all options of a row, so that they compare at a glance: what notebook.json asks for,
 * else enough for four significant digits of the largest; never fewer than were typed.
 *
 * @returns undefined on free sheets, where every cell stands for itself.
 */
export function rowDecimals(live: LiveNotebook, page: Page, row: number): number | undefined {
  if (!isOptionPage(page)) return undefined;
  return Math.max(0, heldDecimals(live, page, row) + rowUnits(live.notebook, page, row).moreDecimals);
}
