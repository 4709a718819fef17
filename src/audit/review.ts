import type { About } from "../notebook/about";
import { nameOnPage } from "../notebook/cell-name";
import {
  columnsOf,
  firstOption,
  isOptionPage,
  type Notebook,
  type Page,
  type Position,
  pageByName,
} from "../notebook/model";
import type { FindFunction } from "../notebook/named-function";
import { finderOf } from "../notebook/own/own-functions";
import { Refusal } from "../notebook/refusal";
import { positionOf, readAddress, rowOfKey } from "../notebook/rows";
import { say } from "../words/say";
import { hashOf } from "./hash";
import { Marks } from "./state";

/**
 * What is reviewed: a cell `Supply.drop@Cruiser`, a row `Supply.drop`, a page `Supply.*`; on free sheets and in
 * rows without a key a cell `Free!B3`.
 */
export type ReviewPlace = string;

export interface Review {
  readonly place: ReviewPlace;
  readonly who: string;
  readonly when: string;
  /** Whether a formula, a named function or an input behind it has changed since. */
  readonly stale: boolean;
  /** The place is no longer there. */
  readonly lost: boolean;
}

const optionCells = (page: Page, row: number): Position[] =>
  Array.from({ length: Math.max(0, columnsOf(page) - firstOption) }, (_, i) => ({
    page: page.id,
    row,
    column: firstOption + i,
  }));

const pageCells = (page: Page): Position[] =>
  isOptionPage(page)
    ? page.rows.slice(1).flatMap((_, i) => optionCells(page, i + 1))
    : page.rows.flatMap((cells, row) => cells.map((_, column) => ({ page: page.id, row, column })));

function cellOf(notebook: Notebook, place: string): Position | undefined {
  const [, name = "", letters = "", digits = ""] = /^'?(.+?)'?!([A-Z]+)(\d+)$/.exec(place) ?? [];
  const page = pageByName(notebook, name);
  if (!page) return undefined;
  const row = Number(digits) - 1;
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return page.rows[row]?.[column] === undefined ? undefined : { page: page.id, row, column };
}

/** The cells of a place; undefined when it is not there. */
export function cellsOfPlace(notebook: Notebook, place: ReviewPlace): readonly Position[] | undefined {
  if (place.includes("!")) {
    const cell = cellOf(notebook, place);
    return cell && [cell];
  }
  if (place.endsWith(".*")) {
    const page = pageByName(notebook, place.slice(0, -2));
    return page && pageCells(page);
  }
  try {
    const address = readAddress(place);
    if (address.option !== undefined) return [positionOf(notebook, address)];
    const page = pageByName(notebook, address.page);
    const row = page ? rowOfKey(page, address.key) : -1;
    return page && row >= 0 ? optionCells(page, row) : undefined;
  } catch (cause) {
    if (cause instanceof Refusal) return undefined;
    throw cause;
  }
}

/** The places by which a cell, its row and its page are reviewed; no row where the row has no key. */
export function placesOf(
  notebook: Notebook,
  at: Position,
): { readonly cell: ReviewPlace; readonly row: ReviewPlace | undefined; readonly page: ReviewPlace } | undefined {
  const page = notebook.pages.find(({ id }) => id === at.page);
  if (!page) return undefined;
  const { address, key } = nameOnPage(page, at.row, at.column);
  return { cell: address, row: key ? `${page.name}.${key}` : undefined, page: `${page.name}.*` };
}

/** The mark by which a tick knows its cells again. */
export function markOf(marks: Marks, cells: readonly Position[]): string {
  const [only, ...more] = cells;
  return only && more.length === 0 ? marks.of(only) : hashOf(cells.map((cell) => marks.of(cell)).join("\n"));
}

const withReviews = (notebook: Notebook, reviews: NonNullable<About["reviews"]>): Notebook => ({
  ...notebook,
  about: { ...notebook.about, reviews },
});

/**
 * Ticks a cell, a row or a page as reviewed.
 *
 * @param when date as text, `2026-11-25`.
 * @throws Refusal when the place is not there or no name is given.
 */
export function review(
  notebook: Notebook,
  place: ReviewPlace,
  who: string,
  when: string,
  find: FindFunction = finderOf(notebook),
): Notebook {
  const cells = cellsOfPlace(notebook, place);
  if (!cells) throw new Refusal(say`There is no ${place} to review; name a cell, a row, or a page as in Supply.*.`);
  if (who.trim() === "") throw new Refusal(say`A review needs the name of the person who made it.`);
  const hash = markOf(new Marks(notebook, find), cells);
  return withReviews(notebook, { ...notebook.about.reviews, [place]: { who: who.trim(), when, hash } });
}

/** Takes a tick back. */
export function unreview(notebook: Notebook, place: ReviewPlace): Notebook {
  const { [place]: old, ...rest } = notebook.about.reviews ?? {};
  return old ? withReviews(notebook, rest) : notebook;
}

/** All ticks of a notebook, and whether each still stands for what it shows now. */
export function reviewsOf(notebook: Notebook, find: FindFunction = finderOf(notebook)): Review[] {
  const marks = new Marks(notebook, find);
  return Object.entries(notebook.about.reviews ?? {}).map(([place, { who, when, hash }]) => {
    const cells = cellsOfPlace(notebook, place);
    return { place, who, when, stale: !cells || markOf(marks, cells) !== hash, lost: !cells };
  });
}

/** The tick that covers a cell: its own, its row's or its page's, a standing one before a stale one. */
export function reviewOfCell(notebook: Notebook, reviews: readonly Review[], at: Position): Review | undefined {
  const places = placesOf(notebook, at);
  const covering = [places?.cell, places?.row, places?.page].flatMap((one) =>
    reviews.filter(({ place }) => place === one),
  );
  return covering.find(({ stale }) => !stale) ?? covering[0];
}
