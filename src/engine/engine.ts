// Past 150 lines: one class is all that the program knows of the engine.

import {
  DetailedCellError,
  type CellValue as EngineValue,
  HyperFormula,
  type RawCellContent,
  type SimpleCellAddress,
} from "hyperformula";
import { catalogue } from "../functions";
import { OutOfTime, within } from "./allowance";
import { cellValue, stopped, unreadable } from "./cell-value";
import { engineContent, isFormula, readableFormula } from "./content";
import { errorOrigin } from "./error-origin";
import { canParse, parsedCell, parsedText } from "./formula-access";
import { guardEngine } from "./guard";
import { limits } from "./limits";
import type { Parsed, ParsedCell } from "./parsed";
import { type OwnCall, registerFunctions, withOwnFunctions } from "./plugin";
import { settings } from "./settings";
import type { CellValue } from "./value";

/** The texts of one sheet; row and column counts follow from them. */
export interface SheetTexts {
  readonly name: string;
  readonly rows: readonly (readonly string[])[];
}

/** A cell by sheet number (order of building), row and column, all from 0. */
export type EngineCell = ParsedCell;

registerFunctions(catalogue);
guardEngine();
// The engine's one function that names an address outside of the notebook; it has none that fetches anything.
HyperFormula.unregisterFunction("HYPERLINK");

/** The engine's own functions, without the named ones. */
export function builtInNames(): readonly string[] {
  const named = new Set<string>(catalogue.map(({ name }) => name));
  return HyperFormula.getRegisteredFunctionNames("enGB").filter((name) => !named.has(name));
}

/** One number for a cell, as long as a sheet has fewer than 2^18 columns and 2^20 rows. */
const placeNumber = ({ sheet, row, column }: EngineCell): number => (sheet * 2 ** 20 + row) * 2 ** 18 + column;

const address = (cell: EngineCell): SimpleCellAddress => ({ sheet: cell.sheet, row: cell.row, col: cell.column });

/**
 * The calculation of a set of sheets, built from their texts and brought up to date cell by cell.
 *
 * It holds nothing that the texts do not say: whenever a change is more than texts of single cells, or the
 * engine throws, it is thrown away and built again. It has no history.
 */
export class Engine {
  private readonly hf: HyperFormula;
  private arrays = false;

  /**
   * @param own functions of the notebook's own, known to this engine alone.
   * @throws Error when there are more cells than the limits allow or two sheets of one name.
   * @throws OutOfTime when it takes too long.
   */
  constructor(sheets: readonly SheetTexts[], own: readonly OwnCall[] = []) {
    const titles = new Set(sheets.map(({ name }) => name.toLowerCase()));
    if (titles.size < sheets.length) throw new Error("two sheets have the same name");
    const contents = Object.fromEntries(
      sheets.map(({ name, rows }) => [name, rows.map((row) => row.map(engineContent)) as RawCellContent[][]]),
    );
    const names = [
      { name: "TRUE", expression: "=TRUE()" },
      { name: "FALSE", expression: "=FALSE()" },
    ];
    this.hf = within(limits.opening, () =>
      withOwnFunctions(own, () => HyperFormula.buildFromSheets(contents, settings, names)),
    );
    sheets.forEach(({ rows }, sheet) => {
      rows.forEach((row, r) => {
        row.forEach((text, column) => {
          if (isFormula(text)) this.noteArray({ sheet, row: r, column });
        });
      });
    });
  }

  private noteArray(cell: EngineCell): void {
    if (this.arrays) return;
    const at = address(cell);
    const value = this.hf.getCellValue(at);
    this.arrays = this.hf.isCellPartOfArray(at) || (value instanceof DetailedCellError && value.value === "#SPILL!");
  }

  /** Whether results spill over several cells; then a change of texts asks for a new engine. */
  get hasArrays(): boolean {
    return this.arrays;
  }

  /**
   * Writes the texts of some cells and recalculates.
   *
   * @returns the cells whose value changed, the written ones included.
   * @throws OutOfTime, or whatever the engine throws; the caller builds a new one from the texts.
   */
  write(changes: readonly (EngineCell & { readonly text: string })[]): EngineCell[] {
    const changed = within(limits.change, () =>
      this.hf.batch(() => {
        for (const change of changes) this.hf.setCellContents(address(change), engineContent(change.text));
      }),
    );
    for (const change of changes) if (isFormula(change.text)) this.noteArray(change);
    const cells: EngineCell[] = changes.map(({ sheet, row, column }) => ({ sheet, row, column }));
    const written = new Set(cells.map(placeNumber));
    for (const change of changed) {
      if (!("address" in change && change.address)) continue;
      const { sheet, row, col: column } = change.address;
      if (!written.has(placeNumber({ sheet, row, column }))) cells.push({ sheet, row, column });
    }
    return cells;
  }

  /**
   * Puts values into cells as they are, without reading them as typed text, and recalculates: a study's numbers keep
   * every digit. The texts of the notebook know nothing of it, so this is for an engine of the study's own.
   */
  put(values: readonly (EngineCell & { readonly value: number | string | boolean | null })[]): void {
    this.hf.batch(() => {
      for (const { value, ...cell } of values) {
        this.hf.setCellContents(address(cell), typeof value === "string" ? `'${value}` : value);
      }
    });
  }

  value(cell: EngineCell): CellValue {
    const at = address(cell);
    const value = cellValue(this.hf.getCellValue(at));
    return value.kind === "error" ? { ...value, from: errorOrigin(this.hf, at, value) } : value;
  }

  /** The values of neighbours in a row, those that are numbers; `to` is the first that is left out. */
  numbers(sheet: number, row: number, from: number, to: number): number[] {
    const found: number[] = [];
    for (let col = from; col < to; col++) {
      const value = this.hf.getCellValue({ sheet, row, col });
      if (typeof value === "number") found.push(value);
    }
    return found;
  }

  /** The formula as the engine holds it, or undefined for a cell without one. */
  formula(cell: EngineCell): string | undefined {
    const at = address(cell);
    return this.isSpilled(cell) ? undefined : this.hf.getCellFormula(at);
  }

  /** How the engine reads the formula of a cell; undefined without a formula, or when it does not show that. */
  parsed(cell: EngineCell): Parsed | undefined {
    return this.isSpilled(cell) ? undefined : parsedCell(this.hf, cell);
  }

  /** How the engine reads a formula that stands in no cell; unqualified references mean the sheet. */
  parse(formula: string, sheet = 0): Parsed | undefined {
    return parsedText(this.hf, readableFormula(formula), sheet);
  }

  /** Whether `parsed` and `parse` can answer; results do not depend on it. */
  get showsFormulas(): boolean {
    return canParse(this.hf);
  }

  /** Whether a cell shows a part of another cell's result and holds nothing itself. */
  isSpilled(cell: EngineCell): boolean {
    const at = address(cell);
    return this.arrays && this.hf.isCellPartOfArray(at) && !this.hf.doesCellHaveFormula(at);
  }

  /**
   * The values of a formula that stands in no cell, row by row; one row of one for a plain result.
   *
   * @param sheet the sheet that unqualified references mean.
   */
  calculate(formula: string, sheet = 0): CellValue[][] {
    let result: EngineValue | EngineValue[][];
    try {
      result = within(limits.change, () => this.hf.calculateFormula(readableFormula(formula), sheet));
    } catch (cause) {
      return [[cause instanceof OutOfTime ? stopped(cause.message) : unreadable(formula)]];
    }
    return Array.isArray(result) ? result.map((row) => row.map(cellValue)) : [[cellValue(result)]];
  }

  dispose(): void {
    this.hf.destroy();
  }
}
