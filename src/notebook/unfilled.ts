// Past 150 lines: one walk from blank inputs to the results that count them.
import { isFormula } from "../engine/content";
import { type Parsed, type ParsedCell, partsOf } from "../engine/parsed";
import { nameOnPage } from "./cell-name";
import { countsNow } from "./counts-now";
import { cellsOf, feedsOf, readersOfCells } from "./feeds";
import type { LiveNotebook } from "./live";
import {
  firstOption,
  isOptionPage,
  lead,
  type Notebook,
  type Page,
  type Position,
  pageById,
  type Row,
  textAt,
} from "./model";
import { referencesOf } from "./references";

/** Functions that ask whether a cell is filled; what they have asked, the rest of the formula knows. */
const asksFilled: ReadonlySet<string> = new Set([
  "ISBLANK",
  "ISNUMBER",
  "ISTEXT",
  "ISLOGICAL",
  "COUNT",
  "COUNTA",
  "COUNTBLANK",
]);

const keyOf = (page: string, row: number, column: number): string => `${page}\t${row}\t${column}`;

/** What a formula looks at: single cells, those of them that it asks about first, and blocks. */
interface Looked {
  readonly counted: readonly ParsedCell[];
  readonly asked: ReadonlySet<string>;
  readonly blocks: readonly Extract<Parsed, { kind: "range" }>[];
}

/** What a formula counts now: not what it only asks about, and not a branch of a choice that is not taken. */
function lookedAt(live: LiveNotebook, parsed: Parsed): Looked {
  const counted: ParsedCell[] = [];
  const blocks: Extract<Parsed, { kind: "range" }>[] = [];
  const asked = new Set<string>();
  const ask = ({ sheet, row, column }: ParsedCell) => asked.add(keyOf(String(sheet), row, column));
  const walk = (one: Parsed): void => {
    if (one.kind === "reference") counted.push(one.at);
    else if (one.kind === "range") blocks.push(one);
    else if (one.kind === "call" && asksFilled.has(one.name)) {
      for (const part of one.args) if (part.kind === "reference") ask(part.at);
    } else if (one.kind === "operator" && (one.op === "=" || one.op === "<>") && comparesEmpty(one)) {
      for (const side of partsOf(one)) if (side.kind === "reference") ask(side.at);
    } else {
      const counts = one.kind === "call" ? countsNow(live, one) : () => true;
      partsOf(one).forEach((part, i) => {
        if (counts(i)) walk(part);
      });
    }
  };
  walk(parsed);
  return { counted, asked, blocks };
}

function lookAt(live: LiveNotebook, at: Position): Looked | undefined {
  if (!live.showsFormulas) return referredTo(live.notebook, at);
  const parsed = live.parsed(at);
  return parsed && lookedAt(live, parsed);
}

/**
 * Everything that a formula refers to, where the engine does not show how it reads it: a check stays open rather
 * than holding on an input that may be missing.
 */
function referredTo(notebook: Notebook, at: Position): Looked {
  const page = pageById(notebook, at.page);
  const all = page ? referencesOf(textAt(page, at.row, at.column)) : [];
  const single = page ? all.filter(({ to }) => !to).flatMap((one) => cellsOf(notebook, page, one)) : [];
  const sheetOf = (id: string) => notebook.pages.findIndex((one) => one.id === id);
  const counted = single.map(({ page: id, row, column }) => ({ sheet: sheetOf(id), row, column }));
  return { counted, asked: new Set(), blocks: [] };
}

const comparesEmpty = (one: Extract<Parsed, { kind: "operator" }>): boolean =>
  partsOf(one).some((side) => side.kind === "text" && side.text === "");

/** The cell that has to be filled in, by quantity and place. */
function nameOf(page: Page, row: number, column: number): string {
  const { quantity, cell } = nameOnPage(page, row, column);
  return quantity ? `${quantity} (${cell})` : cell;
}

/** Rows with a key hold quantities; a blank cell in one is an input that is missing. */
const isMissing = (page: Page, row: number, column: number): boolean =>
  column >= firstOption &&
  row > 0 &&
  row < page.rows.length &&
  textAt(page, row, column) === "" &&
  textAt(page, row, lead.key) !== "" &&
  isOptionPage(page);

/** Rows are never changed in place, and every edit asks all of them again. */
const rowsWithBlank = new WeakMap<Row, boolean>();

function hasBlank(row: Row): boolean {
  const before = rowsWithBlank.get(row);
  if (before !== undefined) return before;
  const now = row[lead.key] !== "" && row.includes("", firstOption);
  rowsWithBlank.set(row, now);
  return now;
}

/** Whether an option page has a blank among its quantities at all. */
const hasBlanks = (page: Page): boolean => isOptionPage(page) && page.rows.some(hasBlank);

/** Every cell whose result counts a missing input, by way of other cells or at once, with the name of that input. */
function unfilled(live: LiveNotebook): ReadonlyMap<string, string> {
  const { notebook } = live;
  const found = new Map<string, string>();
  if (!notebook.pages.some(hasBlanks)) return found;
  const { fedBy } = feedsOf(notebook);
  const waiting: Position[] = [];
  const looked = new Map<string, Looked | undefined>();
  const look = (at: Position): Looked | undefined => {
    const key = keyOf(at.page, at.row, at.column);
    if (!looked.has(key)) {
      looked.set(key, isFormula(live.text(at)) ? lookAt(live, at) : undefined);
    }
    return looked.get(key);
  };
  const take = (at: Position, missing: string): void => {
    const key = keyOf(at.page, at.row, at.column);
    if (found.has(key)) return;
    found.set(key, missing);
    waiting.push(at);
  };
  for (const at of readersOfCells(notebook, isMissing)) {
    const reads = look(at);
    const cell = reads?.counted.find(({ sheet, row, column }) => {
      const page = notebook.pages[sheet];
      if (reads.asked.has(keyOf(String(sheet), row, column))) return false;
      return page && isMissing(page, row, column) && !live.isSpilled({ page: page.id, row, column });
    });
    if (cell) take(at, nameOf(notebook.pages[cell.sheet] as Page, cell.row, cell.column));
  }
  for (let from = waiting.pop(); from; from = waiting.pop()) {
    const { row, column } = from;
    const sheet = notebook.pages.findIndex(({ id }) => id === from?.page);
    const missing = found.get(keyOf(from.page, row, column)) ?? "";
    for (const at of fedBy(from)) {
      const reads = look(at);
      const counts =
        reads?.counted.some((one) => one.sheet === sheet && one.row === row && one.column === column) ||
        reads?.blocks.some(
          (block) =>
            block.from.sheet === sheet &&
            row >= block.from.row &&
            row <= block.to.row &&
            column >= block.from.column &&
            column <= block.to.column,
        );
      if (counts) take(at, missing);
    }
  }
  return found;
}

const known = new WeakMap<LiveNotebook, { readonly notebook: Notebook; readonly cells: ReadonlyMap<string, string> }>();

function missingIn(live: LiveNotebook): ReadonlyMap<string, string> {
  const { notebook } = live;
  let old = known.get(live);
  if (old?.notebook !== notebook) {
    old = { notebook, cells: unfilled(live) };
    known.set(live, old);
  }
  return old.cells;
}

/** Whether any result counts a missing input. */
export const anyMissing = (live: LiveNotebook): boolean => missingIn(live).size > 0;

/**
 * The input that is missing behind a cell: a blank input that its result counts as 0 or as a default, by way
 * of other cells or at once.
 *
 * A blank that the formula asks about and one that is left out of a sum over a block are not missing. Undefined where nothing is missing, and where the engine does not show how it
 * reads formulas.
 */
export const missingBehind = (live: LiveNotebook, { page, row, column }: Position): string | undefined =>
  missingIn(live).get(keyOf(page, row, column));
