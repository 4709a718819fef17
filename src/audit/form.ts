import { isFormula } from "../engine/content";
import type { Parsed } from "../engine/parsed";
import { formulaForOption } from "../notebook/edit-options";
import type { LiveNotebook } from "../notebook/live";
import { columnsOf, firstOption, isOptionPage, type Notebook, type Page, pageByName } from "../notebook/model";
import { columnName, type Reference, referencesOf } from "../notebook/references";

/** A block of cells that a formula reads, as its first cell reads it. */
export interface Read {
  readonly page: Page;
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
  /** Stands in the option's own column, so that the next option reads the next column. */
  readonly moves: boolean;
}

/** The cells of one row that hold the same formula, each seen from its own option. */
export interface Form {
  readonly page: Page;
  readonly row: number;
  /** The formula of the first of the cells. */
  readonly text: string;
  readonly columns: readonly number[];
  /** The same as the engine reads it; undefined where the engine does not show that. */
  readonly parsed: Parsed | undefined;
  readonly reads: readonly Read[];
}

/** A block cut to the page that it lies on; undefined when that page is gone or the block lies outside. */
function readOf(notebook: Notebook, home: Page, { page: name, from, to = from }: Reference): Read | undefined {
  const page = name === undefined ? home : pageByName(notebook, name);
  if (!page) return undefined;
  const rows = [from.row ?? 0, to.row ?? page.rows.length - 1];
  const columns = [from.column ?? 0, to.column ?? columnsOf(page) - 1];
  const [top, bottom] = [Math.min(...rows), Math.min(Math.max(...rows), page.rows.length - 1)];
  const [left, right] = [Math.min(...columns), Math.min(Math.max(...columns), columnsOf(page) - 1)];
  if (top > bottom || left > right) return undefined;
  const moves = isOptionPage(page) && left === right && left >= firstOption && !from.fixedColumn;
  return { page, top, bottom, left, right, moves };
}

/** Blanks and capital letters outside quotation marks make no other formula. */
const sameSpelling = (formula: string): string =>
  formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'|[^"']+/g, (part) =>
    part.startsWith('"') || part.startsWith("'") ? part : part.replace(/\s+/g, "").toUpperCase(),
  );

/** Cells of one row by their formulas, quickly: by the letters of their own columns. */
function quickGroups(cells: readonly string[]): ReadonlyMap<string, number[]> {
  const groups = new Map<string, number[]>();
  cells.forEach((text, column) => {
    if (!isFormula(text)) return;
    const own = new RegExp(`(?<![A-Za-z$'])${columnName(column)}(?=\\d)`, "g");
    const key = column < firstOption ? `${column}${text}` : text.replace(own, "\u0001");
    const columns = groups.get(key);
    if (columns) columns.push(column);
    else groups.set(key, [column]);
  });
  return groups;
}

/** The forms of a row: cells are the same when copying one to the other's option would give the other. */
export function formsOfRow(live: LiveNotebook, page: Page, row: number): Form[] {
  const cells = page.rows[row] ?? [];
  const optional = isOptionPage(page);
  const groups = new Map<string, number[]>();
  for (const [, columns] of quickGroups(cells)) {
    const [column = 0] = columns;
    const text = cells[column] ?? "";
    const moved = optional && column >= firstOption;
    const own = moved ? formulaForOption(live.notebook, page, text, firstOption - column) : `${column}${text}`;
    const key = optional ? sameSpelling(own) : `${column} ${row}`;
    const known = groups.get(key);
    if (known) known.push(...columns);
    else groups.set(key, [...columns]);
  }
  return [...groups.values()].map((unsorted) => {
    const columns = [...unsorted].sort((a, b) => a - b);
    const [column = 0] = columns;
    const text = cells[column] ?? "";
    return {
      page,
      row,
      text,
      columns,
      parsed: live.parsed({ page: page.id, row, column }),
      reads: referencesOf(text).flatMap((reference) => readOf(live.notebook, page, reference) ?? []),
    };
  });
}

/** A formula that only counts whether cells are filled uses none of them. */
export const onlyCounts = (formula: string): boolean =>
  !/[A-Z]\d/i.test(formula.replace(/COUNT(?:BLANK|A)?\([^()]*\)|ROWS\([^()]*\)/gi, ""));
