import type { HyperFormula, SimpleCellAddress, SimpleCellRange } from "hyperformula";
import { cellValue } from "./cell-value";
import type { CellFailure } from "./value";

/** Wider blocks are not searched for the cell in which an error began. */
const mostCells = 10_000;

function cellsOf(of: SimpleCellAddress | SimpleCellRange): SimpleCellAddress[] {
  if (!("start" in of)) return [of];
  const { start, end } = of;
  const [rows, columns] = [end.row - start.row + 1, end.col - start.col + 1];
  if (rows * columns > mostCells) return [];
  return Array.from({ length: rows * columns }, (_, i) => ({
    sheet: start.sheet,
    row: start.row + Math.floor(i / columns),
    col: start.col + (i % columns),
  }));
}

/**
 * Where an error began: `Supply!F9`, or empty when it began in this very cell.
 *
 * The engine names the cell itself where it began there. Of a result that is not a finite number it does not know
 * the beginning, and every cell that reads it claims to be the first; so the cells behind it are asked.
 */
export function errorOrigin(hf: HyperFormula, at: SimpleCellAddress, { code, from }: CellFailure): string {
  const nameOf = (cell: SimpleCellAddress) => hf.simpleCellAddressToString(cell, { includeSheetName: true }) ?? "";
  if (from !== "" && from !== nameOf(at)) return from;
  if (code !== "#NUM!") return "";
  for (const cell of hf.getCellPrecedents(at).flatMap(cellsOf)) {
    const value = cellValue(hf.getCellValue(cell));
    if (value.kind === "error" && value.code === code) return errorOrigin(hf, cell, value) || nameOf(cell);
  }
  return "";
}
