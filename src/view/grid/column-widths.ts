import { firstOption, isOptionPage, lead, type Page } from "../../notebook/model";
import { isFunctionPage } from "../../notebook/own/function-page";
import { functionWidths } from "./function-widths";
import type { Look } from "./look";
import { type LookAt, natural } from "./natural-width";
import { leastBasis, optionWidths } from "./option-widths";
import { fitted, range } from "./share-room";

/**
 * Widths of a page's columns in px. On an option page they share the room there is; a free sheet's columns are as wide
 * as their texts, within reason.
 *
 * @param room px between the row numbers and the scroll bar.
 */
export function columnWidths(page: Page, look: LookAt, room: number): number[] {
  if (isFunctionPage(page)) return functionWidths(page, look, room);
  if (isOptionPage(page)) return optionWidths(page, look, room);
  // Words give way to one another, figures and verdicts do not.
  const isFirm = ({ shape }: Look) => shape === "number" || shape === "holds" || shape === "short";
  const columns = page.rows[0] ?? [];
  const ranges = columns.map((_, column) =>
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

/** Whether a column is too narrow for its words and shows no more than that there are some. */
export const isSign = (page: Page, column: number, width: number): boolean =>
  isOptionPage(page) && column === lead.basis && width < leastBasis;
