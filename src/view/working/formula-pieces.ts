import { firstOption, isOptionPage, lead, type Notebook, type Page, pageByName } from "../../notebook/model";
import { mapReferences, type Reference, referencesOf } from "../../notebook/references";

/** A part of a formula: text as it stands, or a reference. */
export type Piece = string | Reference;

// Each reference is sent through with its number as its page's name, which comes back in apostrophes.
const numbered = /'\uE000(\d+)'!\$?[A-Z]*\$?\d*(?::\$?[A-Z]*\$?\d*)?/g;

/** A formula taken apart at its references. */
export function piecesOf(formula: string): Piece[] {
  const references = referencesOf(formula);
  let count = 0;
  const marked = mapReferences(formula, (reference) => ({ ...reference, page: `\uE000${count++}` }));
  const pieces: Piece[] = [];
  let end = 0;
  for (const found of marked.matchAll(numbered)) {
    if (found.index > end) pieces.push(marked.slice(end, found.index));
    pieces.push(references[Number(found[1])] as Reference);
    end = found.index + found[0].length;
  }
  if (end < marked.length) pieces.push(marked.slice(end));
  return pieces;
}

/** What stands in a reference's place when the formula is read aloud: the quantity, with page and option where they differ. */
export function referenceWords(
  notebook: Notebook,
  home: Page,
  option: number,
  reference: Reference,
): string | undefined {
  const page = reference.page === undefined ? home : pageByName(notebook, reference.page);
  if (!page || !isOptionPage(page)) return undefined;
  const { row, column } = reference.from;
  const rows = row === undefined ? undefined : page.rows.slice(row, (reference.to?.row ?? row) + 1);
  const first = rows?.[0]?.[lead.quantity];
  if (!rows || row === undefined || column === undefined || !first) return undefined;
  const last = rows.length > 1 ? ` … ${rows.at(-1)?.[lead.quantity]}` : "";
  const place = page === home ? "" : `${page.name}: `;
  const ofOption = column >= firstOption && column !== option && !reference.to ? ` (${page.rows[0]?.[column]})` : "";
  const ofAll = reference.to && reference.to.column !== column ? " (all options)" : "";
  return `${place}${first}${last}${ofOption}${ofAll}`;
}
