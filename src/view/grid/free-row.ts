import { contentOf } from "../../engine/content";
import type { Page, Row } from "../../notebook/model";

export type FreeRowKind = "heading" | "title" | "note" | "plain";

const filled = (row: Row | undefined): readonly string[] => (row ?? []).filter((text) => text !== "");
const isText = (text: string): boolean => contentOf(text).kind === "text";
const isWord = (row: Row | undefined): boolean => filled(row).length === 1 && isText(row?.[0] ?? "");

/**
 * What a line of a free sheet is to the eye: a line with one text is a heading when it begins a part and a note
 * below that; a line of texts above numbers or formulas names columns.
 */
export function freeRowKind(page: Page, row: number): FreeRowKind {
  const own = page.rows[row];
  const before = page.rows[row - 1];
  if (isWord(own)) return filled(before).length === 0 ? "heading" : isWord(before) ? "note" : "plain";
  const below = page.rows.slice(row + 1, row + 4);
  const isTitle =
    filled(own).length > 1 &&
    filled(own).every(isText) &&
    filled(before).length < 2 &&
    below.some((cells) => filled(cells).some((text) => !isText(text)));
  return isTitle ? "title" : "plain";
}

/** Whether the first line names the columns of all that follows, so that it stays in sight. */
export const hasTitleLine = (page: Page): boolean =>
  freeRowKind(page, 0) === "title" && filled(page.rows[0]).length > 2;
