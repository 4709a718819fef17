import type { HyperFormula, SimpleCellAddress } from "hyperformula";
import type { Parsed, ParsedCell } from "./parsed";
import { type Node, parsedNode, unreadable } from "./parsed-node";

/** The private members of the engine that lead to a formula's tree. */
interface Inner {
  readonly _dependencyGraph?: {
    readonly getCell?: (at: SimpleCellAddress) => { getFormula?: (service: unknown) => Node } | undefined;
  };
  readonly _lazilyTransformingAstService?: unknown;
  readonly extractTemporaryFormula?: (
    formula: string,
    sheet: number,
  ) => { readonly ast?: Node; readonly address?: SimpleCellAddress };
}

/** Whether this engine lets its formula trees be read. */
export function canParse(engine: HyperFormula): boolean {
  const inner = engine as unknown as Inner;
  return (
    typeof inner._dependencyGraph?.getCell === "function" &&
    inner._lazilyTransformingAstService !== undefined &&
    typeof inner.extractTemporaryFormula === "function"
  );
}

/** The formula of a cell; undefined for a cell without one, and where the engine does not show it. */
export function parsedCell(engine: HyperFormula, at: ParsedCell): Parsed | undefined {
  if (!canParse(engine)) return undefined;
  const inner = engine as unknown as Inner;
  const cell = { sheet: at.sheet, row: at.row, col: at.column };
  const vertex = inner._dependencyGraph?.getCell?.(cell);
  if (!vertex) return undefined;
  // A formula that cannot be read is kept by the engine as text beside an error.
  if (typeof vertex.getFormula !== "function") {
    return engine.doesCellHaveFormula(cell) ? unreadable(engine.getCellFormula(cell) ?? "") : undefined;
  }
  return parsedNode(vertex.getFormula(inner._lazilyTransformingAstService), { cell, sheets: engine.countSheets() });
}

/** A formula that stands in no cell; undefined where the engine does not show how it reads it. */
export function parsedText(engine: HyperFormula, formula: string, sheet: number): Parsed | undefined {
  if (!canParse(engine)) return undefined;
  const inner = engine as unknown as Inner;
  const { ast, address } = inner.extractTemporaryFormula?.call(engine, formula, sheet) ?? {};
  if (!ast) return unreadable(formula);
  return parsedNode(ast, { cell: address ?? { sheet, row: 0, col: 0 }, sheets: engine.countSheets() });
}
