import type { CellValue } from "../engine/value";
import { type CellName, nameOnPage } from "../notebook/cell-name";
import type { LiveNotebook } from "../notebook/live";
import { columnsOf, type Notebook, type Page, type Position } from "../notebook/model";
import type { FindFunction } from "../notebook/named-function";
import { type Form, formsOfRow, type Read } from "./form";

/** What the rules judge: a calculated notebook with its formulas sorted by sameness, and what it is held against. */
export class Subject {
  readonly notebook: Notebook;
  readonly forms: readonly Form[];
  private readonly kinds = new Map<Page, Uint8Array>();

  /** @param shipped the notebook as it was shipped, where it is known. */
  constructor(
    readonly live: LiveNotebook,
    readonly find: FindFunction = live.find,
    readonly shipped: Notebook | undefined = undefined,
  ) {
    this.notebook = live.notebook;
    this.forms = this.notebook.pages.flatMap((page) => page.rows.flatMap((_, row) => formsOfRow(live, page, row)));
  }

  value(page: Page, row: number, column: number): CellValue {
    return this.live.value({ page: page.id, row, column });
  }

  /** What a cell holds; asked of the engine once, since the rules ask it of every reference. */
  kind(page: Page, row: number, column: number): CellValue["kind"] {
    const width = columnsOf(page);
    const kinds = this.kinds.get(page) ?? new Uint8Array(width * page.rows.length);
    this.kinds.set(page, kinds);
    const at = row * width + column;
    const known = valueKinds[(kinds[at] ?? 0) - 1];
    if (known) return known;
    const { kind } = this.value(page, row, column);
    kinds[at] = valueKinds.indexOf(kind) + 1;
    return kind;
  }
}

const valueKinds: readonly CellValue["kind"][] = ["blank", "number", "text", "flag", "error"];

export const placesOf = ({ page, row, columns }: Form): readonly Position[] =>
  columns.map((column) => ({ page: page.id, row, column }));

export const namesOf = ({ page, row, columns }: Form): readonly CellName[] =>
  columns.map((column) => nameOnPage(page, row, column));

/** Whether a formula, in one of its columns, reads a cell of which something is true. */
export function readsAny(
  form: Form,
  column: number,
  test: (page: Page, row: number, column: number) => boolean,
): boolean {
  const shift = column - (form.columns[0] ?? 0);
  return form.reads.some((read: Read) => {
    const by = read.moves ? shift : 0;
    for (let row = read.top; row <= read.bottom; row++) {
      for (let c = read.left + by; c <= read.right + by; c++) if (test(read.page, row, c)) return true;
    }
    return false;
  });
}
