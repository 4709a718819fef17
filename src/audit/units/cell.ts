import type { Parsed, ParsedCell } from "../../engine/parsed";
import { type CellName, nameOnPage } from "../../notebook/cell-name";
import { namedFormula } from "../../notebook/formula-words";
import type { LiveNotebook } from "../../notebook/live";
import { columnsOf, firstOption, isOptionPage, lead, type Page, type Position } from "../../notebook/model";
import type { FindFunction } from "../../notebook/named-function";
import { scaleName, scaleOf } from "../../units/scale";
import { say } from "../../words/say";
import { factorWords, nearest, type UnitFinding } from "./judge";
import { type Measure, quantity, shared, silent } from "./measure";
import type { Surroundings } from "./visit";
import { Walk } from "./walk";

/** Longer parts of a formula are cut short in a sentence. */
const longest = 60;

const rowMeasures = new Map<string, Measure>();

/** The measure of a row's unit text; a text that is no unit says nothing here. */
function measureOf(unit: string): Measure {
  const known = rowMeasures.get(unit);
  if (known) return known;
  const scale = unit === "" ? undefined : scaleOf(unit);
  const measure = scale ? quantity(scale) : silent;
  rowMeasures.set(unit, measure);
  return measure;
}

/** The unit of a cell: that of its row on an option page, none anywhere else. */
const cellMeasure = (page: Page | undefined, row: number, column: number): Measure =>
  page && row > 0 && column >= firstOption && isOptionPage(page)
    ? measureOf(page.rows[row]?.[lead.unit] ?? "")
    : silent;

function cellsOfRange(page: Page | undefined, from: ParsedCell, to: ParsedCell): readonly (readonly ParsedCell[])[] {
  if (!page) return [];
  const [top, bottom] = [Math.min(from.row, to.row), Math.max(from.row, to.row)];
  const [left, right] = [Math.min(from.column, to.column), Math.max(from.column, to.column)];
  const rows: ParsedCell[][] = [];
  for (let row = top; row <= Math.min(bottom, page.rows.length - 1); row++) {
    const cells: ParsedCell[] = [];
    for (let column = left; column <= Math.min(right, columnsOf(page) - 1); column++) {
      cells.push({ sheet: from.sheet, row, column });
    }
    rows.push(cells);
  }
  return rows;
}

function around(live: LiveNotebook, home: Position, find: FindFunction): Surroundings {
  const { pages } = live.notebook;
  const textOf = (part: Parsed): string | undefined => {
    if (part.kind === "text") return part.text;
    if (part.kind !== "reference") return undefined;
    const value = live.value({ page: pages[part.at.sheet]?.id ?? "", row: part.at.row, column: part.at.column });
    return value.kind === "text" ? value.text : undefined;
  };
  return {
    cell: ({ sheet, row, column }) => cellMeasure(pages[sheet], row, column),
    cells: (from, to) => cellsOfRange(pages[from.sheet], from, to),
    named: () => silent,
    words: (part) => {
      const words = namedFormula(live.notebook, home, part);
      return words.length > longest ? `${words.slice(0, longest - 1)}…` : words;
    },
    text: textOf,
    find,
    conversions: true,
  };
}

/** Holds what a formula gives against the unit of its row. */
function judgeResult(live: LiveNotebook, at: Position, name: CellName, result: Measure): UnitFinding[] {
  if (result.kind !== "quantity" || name.option === "") return [];
  const [first] = result.scales;
  if (name.unit === "") {
    if (!first || live.value(at).kind !== "number") return [];
    const unit = scaleName(first);
    return unit === "1" ? [] : [{ level: "warning", message: say`the row has no unit, the formula gives ${unit}` }];
  }
  const row = measureOf(name.unit);
  if (row.kind !== "quantity" || shared(row, result)) return [];
  const [wanted, given] = nearest(row, result);
  return [
    {
      level: "error",
      message: say`the row says ${name.unit}, the formula gives ${scaleName(given)}${factorWords(wanted, given)}`,
    },
  ];
}

/**
 * The audit of units of one cell: every part of its formula, and its result against the unit of the row.
 *
 * @returns nothing for a cell without a formula, and where the engine does not show its formulas.
 */
export function unitFindings(live: LiveNotebook, at: Position, find: FindFunction = live.find): UnitFinding[] {
  const page = live.notebook.pages.find((one) => one.id === at.page);
  const parsed = live.parsed(at);
  if (!page || !parsed) return [];
  const walk = new Walk(around(live, at, find));
  const result = walk.measure(parsed);
  return [...walk.judge.findings, ...judgeResult(live, at, nameOnPage(page, at.row, at.column), result)];
}
