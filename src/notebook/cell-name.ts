import { columnsOf, firstOption, isOptionPage, lead, type Notebook, type Page, type Position, pageById } from "./model";
import { columnName, pagePrefix } from "./references";

/** Everything a cell is called. */
export interface CellName {
  readonly at: Position;
  readonly page: string;
  /** `Supply!F61`. */
  readonly cell: string;
  /** `Supply.drop@Cruiser`; the same as `cell` where the row has no key. */
  readonly address: string;
  /** First cell of the row on an option page; empty on free sheets. */
  readonly quantity: string;
  readonly key: string;
  /** Option of the column; empty on free sheets and in the lead columns. */
  readonly option: string;
  /** Unit text of the row; empty for text. */
  readonly unit: string;
  readonly basis: string;
}

/** The names of a cell on a page. */
export function nameOnPage(page: Page, row: number, column: number): CellName {
  const cell = `${pagePrefix(page.name)}${columnName(column)}${row + 1}`;
  const cells = isOptionPage(page) && row > 0 ? (page.rows[row] ?? []) : [];
  const option = cells.length > 0 && column >= firstOption && column < columnsOf(page) ? page.rows[0]?.[column] : "";
  const key = cells[lead.key] ?? "";
  return {
    at: { page: page.id, row, column },
    page: page.name,
    cell,
    address: key && option ? `${page.name}.${key}@${option}` : cell,
    quantity: cells[lead.quantity] ?? "",
    key,
    option: option ?? "",
    unit: cells[lead.unit] ?? "",
    basis: cells[lead.basis] ?? "",
  };
}

/** The names of a cell; undefined when its page is gone. */
export function cellName(notebook: Notebook, at: Position): CellName | undefined {
  const page = pageById(notebook, at.page);
  return page && nameOnPage(page, at.row, at.column);
}
