import { isFormula } from "../engine/content";
import type { AnyDefinition } from "../formula/definition";
import { nameOnPage } from "../notebook/cell-name";
import { cellsOf } from "../notebook/feeds";
import { type Notebook, type Page, type Position, pageById, textAt } from "../notebook/model";
import type { FindFunction } from "../notebook/named-function";
import { mapReferences, referencesOf } from "../notebook/references";
import { hashOf } from "./hash";

const definitionMarks = new WeakMap<AnyDefinition, string>();

/** A mark of everything that a named function is made of: steps, constants, tables, limits, sources, words. */
function definitionMark(definition: AnyDefinition): string {
  const known = definitionMarks.get(definition);
  if (known !== undefined) return known;
  const mark = hashOf(JSON.stringify({ ...definition, ownOf: undefined }));
  definitionMarks.set(definition, mark);
  return mark;
}

/** The names of everything that is called in a formula. */
const calledIn = (formula: string): string[] => [
  ...new Set(
    [...formula.replace(/"(?:[^"]|"")*"/g, "").matchAll(/([A-Z][A-Z0-9]*(?:\.[A-Z0-9]+)+)\s*\(/gi)].map(
      ([, name = ""]) => name.toUpperCase(),
    ),
  ),
];

/**
 * Marks of cells: of what was typed, of the formulas with the rows that they name, of the named functions in
 * them, and of all cells behind them. A row that moves changes no mark; a row, a formula, a function or an input
 * that changes does.
 */
export class Marks {
  private readonly known = new Map<string, string>();

  constructor(
    private readonly notebook: Notebook,
    private readonly find: FindFunction,
  ) {}

  of(at: Position): string {
    const page = pageById(this.notebook, at.page);
    return page ? this.cell(page, at, []) : hashOf("gone");
  }

  /** How a cell is called in a mark: by its row's key, so that it may move. */
  private place(page: Page, row: number, column: number): string {
    return nameOnPage(page, row, column).address;
  }

  private cell(page: Page, at: Position, above: readonly string[]): string {
    const key = `${page.id} ${at.row} ${at.column}`;
    const old = this.known.get(key);
    if (old !== undefined) return old;
    // A ring of formulas has no value to review; its cells are told apart by their texts alone.
    if (above.includes(key)) return "ring";
    const text = textAt(page, at.row, at.column);
    const { unit, quantity } = nameOnPage(page, at.row, at.column);
    const parts = [this.place(page, at.row, at.column), quantity, unit, this.readable(page, text)];
    if (isFormula(text)) {
      for (const name of calledIn(text)) {
        const definition = this.find(name);
        if (definition) parts.push(name, definitionMark(definition));
      }
      for (const reference of referencesOf(text)) {
        for (const cell of cellsOf(this.notebook, page, reference)) {
          parts.push(this.cell(pageById(this.notebook, cell.page) as Page, cell, [...above, key]));
        }
      }
    }
    const mark = hashOf(parts.join("\n"));
    this.known.set(key, mark);
    return mark;
  }

  /** A formula with the addresses of rows in place of cells. */
  private readable(page: Page, text: string): string {
    if (!isFormula(text)) return text;
    const named: string[] = [];
    const bare = mapReferences(text, (reference) => {
      const cells = cellsOf(this.notebook, page, reference).map(({ page: id, row, column }) =>
        this.place(pageById(this.notebook, id) as Page, row, column),
      );
      named.push(`${cells[0] ?? ""}..${cells.at(-1) ?? ""}`);
      return undefined;
    });
    return `${bare}\n${named.join("\n")}`;
  }
}
