import { isFormula } from "../engine/content";
import { listed } from "../words/isolated";
import { say } from "../words/say";
import { optionColumn } from "./edit-options";
import {
  firstOption,
  isOptionPage,
  lead,
  type Notebook,
  type Page,
  type Position,
  pageByName,
  type Row,
} from "./model";
import { Refusal } from "./refusal";

export type RowKind = "header" | "heading" | "input" | "result" | "check" | "empty";

/** Unit that marks a check row. */
const marginUnit = "margin";

function kindOf(cells: Row): RowKind {
  const options = cells.slice(firstOption);
  if (cells.every((text) => text === "")) return "empty";
  if (cells.slice(1).every((text) => text === "")) return "heading";
  if (cells[lead.unit] === marginUnit) return "check";
  if (options.some(isFormula)) return "result";
  return "input";
}

/** Rows are never changed in place, and everything asks for their kinds again and again. */
const kinds = new WeakMap<Row, RowKind>();

/**
 * What a row of an option page is: a row with only its first cell is a heading, a `margin` row is a check, any
 * formula makes a result, anything typed an input.
 */
export function rowKind(page: Page, row: number): RowKind {
  if (row === 0) return "header";
  const cells = page.rows[row];
  if (!cells) return "empty";
  const kind = kinds.get(cells) ?? kindOf(cells);
  kinds.set(cells, kind);
  return kind;
}

/** Line of the row that has a key on a page, or -1. */
export const rowOfKey = (page: Page, key: string): number =>
  isOptionPage(page) ? page.rows.findIndex((cells, row) => row > 0 && cells[lead.key] === key) : -1;

export interface Address {
  readonly page: string;
  readonly key: string;
  readonly option: string | undefined;
}

/** Reads `Supply.run@Cruiser` or `Supply.run`. @throws Refusal for another shape. */
export function readAddress(text: string): Address {
  const parts = /^([^.@]+)\.([^.@]+?)(?:@(.+))?$/.exec(text.trim());
  if (!parts)
    throw new Refusal(say`"${text}" is not an address; write Page.key@Option, for example Supply.run@Cruiser.`);
  const [, page = "", key = "", option] = parts;
  return { page, key, option };
}

/** The row of an address, whatever its option. @throws Refusal that says what there is instead. */
export function rowNamed(notebook: Notebook, address: Address): { readonly page: Page; readonly row: number } {
  const page = pageByName(notebook, address.page);
  if (!page) {
    const names = notebook.pages.map((one) => one.name);
    throw new Refusal(say`There is no page "${address.page}" (there are ${listed(names)}).`);
  }
  const row = rowOfKey(page, address.key);
  if (row < 0) {
    const keys = page.rows.slice(1).flatMap((cells) => cells[lead.key] || []);
    throw new Refusal(say`There is no key "${address.key}" on ${page.name} (there are ${listed(keys)}).`);
  }
  return { page, row };
}

/** The cell of an address with an option. @throws Refusal that says what there is instead. */
export function positionOf(notebook: Notebook, address: Address): Position {
  const { page, row } = rowNamed(notebook, address);
  if (address.option === undefined) {
    throw new Refusal(
      say`"${address.page}.${address.key}" names a row; add the option, for example ${address.key}@Option.`,
    );
  }
  return { page: page.id, row, column: optionColumn(notebook, address.option) };
}
