// Past 150 lines: one walk through the cells of an option, with its refusals.
import { contentOf } from "../../engine/content";
import type { Parsed, ParsedCell } from "../../engine/parsed";
import type { OwnCall } from "../../engine/plugin";
import { firstOption, isOptionPage, lead, type Notebook, type Position, textAt } from "../../notebook/model";
import { ownCalls } from "../../notebook/own/own-functions";
import { Refusal } from "../../notebook/refusal";
import { say } from "../../words/say";
import type { Plain } from "./plain";
import { cellName } from "./refusal";

export interface ChainCell {
  readonly cell: ParsedCell;
  /** `Supply.run`, or `Supply!E25` where the row has no key. */
  readonly name: string;
}

export interface TypedCell extends ChainCell {
  readonly value: Plain;
}

export interface FormulaCell extends ChainCell {
  readonly tree: Parsed;
}

/**
 * Everything that some results of one option depend on, as plain data that may be sent to a worker.
 */
export interface Chain {
  readonly option: string;
  readonly pages: readonly string[];
  /** The notebook's own functions. */
  readonly own: readonly OwnCall[];
  /** Typed cells of the option's own column: what a study may vary. Blank cells of rows with a key belong to them. */
  readonly inputs: readonly TypedCell[];
  /** All other cells that hold no formula: they stay as they are. */
  readonly fixed: readonly TypedCell[];
  /** Formula cells, every one behind the cells that it uses. */
  readonly formulas: readonly FormulaCell[];
  readonly wanted: readonly ChainCell[];
}

/** Where formulas are read from: an open notebook, or one that is only read. */
export interface FormulaSource {
  readonly notebook: Notebook;
  readonly parsed: (at: Position) => Parsed | undefined;
  readonly isSpilled: (at: Position) => boolean;
}

/** A block of more cells than this is not walked through. */
const mostCells = 5000;

const cellKey = (cell: ParsedCell): string => `${cell.sheet}:${cell.row}:${cell.column}`;

/** What a cell without a formula holds, by the rules for typed text. */
export function plainOf(text: string): Plain {
  const content = contentOf(text);
  switch (content.kind) {
    case "number":
    case "flag":
      return content.value;
    case "text":
      return content.text;
    default:
      return null;
  }
}

/** The cells that a formula names, blocks cell by cell. @throws the sentence when a block is too large. */
function cellsOf(tree: Parsed): ParsedCell[] {
  switch (tree.kind) {
    case "reference":
      return [tree.at];
    case "range":
      return blockCells(tree.from, tree.to).flat();
    case "call":
      return tree.args.flatMap(cellsOf);
    case "operator":
      return [...cellsOf(tree.left), ...cellsOf(tree.right)];
    case "sign":
    case "brackets":
      return cellsOf(tree.of);
    case "array":
      return tree.rows.flat().flatMap(cellsOf);
    default:
      return [];
  }
}

/** The cells of a block, row by row. @throws Error when there are too many. */
export function blockCells(from: ParsedCell, to: ParsedCell): ParsedCell[][] {
  const [rows, columns] = [to.row - from.row + 1, to.column - from.column + 1];
  if (rows * columns > mostCells) throw new Error(say`a block of ${rows * columns} cells is too large to walk through`);
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => ({
      sheet: from.sheet,
      row: from.row + row,
      column: from.column + column,
    })),
  );
}

function nameOf(notebook: Notebook, cell: ParsedCell): string {
  const page = notebook.pages[cell.sheet];
  const key = page && isOptionPage(page) ? textAt(page, cell.row, lead.key) : "";
  const names = notebook.pages.map(({ name }) => name);
  return page && key && cell.column >= firstOption ? `${page.name}.${key}` : cellName(names, cell);
}

/**
 * Walks back from some results of one option to the typed cells that they hang on.
 *
 * @throws Refusal for a ring, a result that spills over several cells, a block that is far too large, or when
 * the engine does not show how it reads a formula.
 */
export function chainOf(source: FormulaSource, column: number, wanted: readonly Position[]): Chain {
  const { notebook } = source;
  const pages = notebook.pages.map(({ name }) => name);
  const [inputs, fixed, formulas]: [TypedCell[], TypedCell[], FormulaCell[]] = [[], [], []];
  const state = new Map<string, "open" | "done">();

  const typed = (cell: ParsedCell, text: string): void => {
    const page = notebook.pages[cell.sheet];
    const own = page && isOptionPage(page) && cell.column === column && textAt(page, cell.row, lead.key) !== "";
    (own ? inputs : fixed).push({ cell, name: nameOf(notebook, cell), value: plainOf(text) });
  };

  const walk = (cell: ParsedCell): void => {
    const key = cellKey(cell);
    const known = state.get(key);
    if (known === "done") return;
    const refuse = (reason: string): never => {
      throw new Refusal(say`${cellName(pages, cell)}: ${reason}; a study cannot follow it.`);
    };
    if (known === "open") refuse(say`the formula depends on its own cell`);
    state.set(key, "open");
    const page = notebook.pages[cell.sheet];
    const at = { page: page?.id ?? "", row: cell.row, column: cell.column };
    const text = page ? textAt(page, cell.row, cell.column) : "";
    if (source.isSpilled(at)) refuse(say`it shows a part of another cell's result`);
    if (contentOf(text).kind === "formula") {
      const tree = source.parsed(at) ?? refuse(say`the engine does not show how it reads the formula`);
      let cells: readonly ParsedCell[] = [];
      try {
        cells = cellsOf(tree);
      } catch (cause) {
        refuse(cause instanceof Error ? cause.message : String(cause));
      }
      for (const one of cells) walk(one);
      formulas.push({ cell, name: nameOf(notebook, cell), tree });
    } else {
      typed(cell, text);
    }
    state.set(key, "done");
  };

  const ends = wanted.map((at) => {
    const sheet = notebook.pages.findIndex((page) => page.id === at.page);
    const cell = { sheet, row: at.row, column: at.column };
    walk(cell);
    return { cell, name: nameOf(notebook, cell) };
  });
  const option = notebook.pages.find(isOptionPage)?.rows[0]?.[column] ?? "";
  return { option, pages, own: ownCalls(notebook), inputs, fixed, formulas, wanted: ends };
}
