import { plainNumberOf } from "../../engine/content";
import type { LiveNotebook } from "../../notebook/live";
import { firstOption, isOptionPage, type Page } from "../../notebook/model";
import { rowEntry } from "../../notebook/row-entry";
import { usualDecimals } from "./number-text";
import { rowUnits } from "./row-units";

const typedDecimals = (text: string): number => (/e/i.test(text) ? 0 : (text.split(".")[1]?.length ?? 0));

function ofValues(live: LiveNotebook, page: Page, row: number): number {
  const numbers = (page.rows[row] ?? []).flatMap((_, column) => {
    if (column < firstOption) return [];
    const value = live.value({ page: page.id, row, column });
    return value.kind === "number" ? [value.value] : [];
  });
  if (numbers.every(Number.isInteger)) return 0;
  return usualDecimals(Math.max(...numbers.map(Math.abs)));
}

/** The same in the row's own unit. */
function heldDecimals(live: LiveNotebook, page: Page, row: number): number {
  const options = page.rows[row]?.slice(firstOption) ?? [];
  const numbers = options.filter((text) => plainNumberOf(text) !== undefined);
  const typed = Math.max(0, ...numbers.map(typedDecimals));
  const asked = rowEntry(live.notebook, page, row)?.digits;
  if (asked !== undefined) return Math.max(asked, typed);
  const isTypedThroughout = options.every((text) => text === "" || plainNumberOf(text) !== undefined);
  return isTypedThroughout ? typed : Math.max(typed, ofValues(live, page, row));
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
