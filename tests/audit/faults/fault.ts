import { isFormula } from "../../../src/engine/content";
import { type CellText, setCells } from "../../../src/notebook/edit-cells";
import { formulaForOption } from "../../../src/notebook/edit-options";
import {
  firstOption,
  isOptionPage,
  type Notebook,
  type Page,
  type Position,
  pageByName,
} from "../../../src/notebook/model";
import type { Reference } from "../../../src/notebook/references";

export type Random = () => number;

/** A filled cell of an option. */
export interface Place extends Position {
  readonly home: Page;
  readonly text: string;
}

/** What gives a mistake away to a careful reader who does not know the right notebook, or why nothing does. */
export type Evidence = { readonly seenBy: string } | { readonly unseen: string };

/** One mistake in a clean notebook. */
export interface Fault {
  readonly kind: string;
  readonly spread: "one option" | "all options";
  readonly cells: readonly CellText[];
  readonly evidence: Evidence;
  /** What was ticked as reviewed before the mistake was made. */
  readonly ticked?: string;
}

export const withFault = (notebook: Notebook, { cells }: Fault): Notebook => setCells(notebook, cells);

/** Filled cells of the options, page by page. */
export function placesOf(notebook: Notebook, wanted: (place: Place) => boolean): Place[] {
  return notebook.pages.filter(isOptionPage).flatMap((home) =>
    home.rows.flatMap((cells, row) =>
      cells.flatMap((text, column) => {
        const place = { page: home.id, home, row, column, text };
        return row > 0 && column >= firstOption && text !== "" && wanted(place) ? [place] : [];
      }),
    ),
  );
}

/** The page that a reference on another page means. */
export const pageOfReference = (notebook: Notebook, home: Page, { page }: Reference): Page | undefined =>
  page === undefined ? home : pageByName(notebook, page);

export const written = ({ page, row, column }: Position, text: string): CellText => ({ page, row, column, text });

/** The same text in all options of a row that are filled; formulas as each option reads them. */
export function inAllOptions(notebook: Notebook, place: Place, text: string): CellText[] {
  const { home, row, column } = place;
  return (home.rows[row] ?? []).flatMap((old, at) => {
    if (at < firstOption || old === "" || isFormula(old) !== isFormula(place.text)) return [];
    const own = isFormula(text) ? formulaForOption(notebook, home, text, at - column) : text;
    return [written({ ...place, column: at }, own)];
  });
}
