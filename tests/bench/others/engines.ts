import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { Engine } from "../../../src/engine/engine";
import type { Notebook, Position } from "../../../src/notebook/model";

/** A spreadsheet engine that holds the workbook. */
export interface HeldWorkbook {
  readonly name: string;
  /** Milliseconds to take the workbook in and calculate it. */
  readonly built: number;
  /** Writes a number into a cell; everything that hangs on it is calculated when it returns. */
  readonly write: (at: Position, value: number) => void;
  /** What a cell shows. */
  readonly shows: (at: Position) => string;
  readonly close: () => void;
}

const sheetOf = (notebook: Notebook, { page }: Position): number => notebook.pages.findIndex(({ id }) => id === page);

/** The engine of the program. */
export function ownEngine(notebook: Notebook): HeldWorkbook {
  const began = performance.now();
  const engine = new Engine(notebook.pages);
  const built = performance.now() - began;
  const cell = (at: Position) => ({ sheet: sheetOf(notebook, at), row: at.row, column: at.column });
  return {
    name: "engine of the program",
    built,
    write: (at, value) => {
      engine.write([{ ...cell(at), text: String(value) }]);
    },
    shows: (at) => {
      const value = engine.value(cell(at));
      return value.kind === "number" ? String(value.value) : value.kind;
    },
    close: () => engine.dispose(),
  };
}

/** An independent open engine, compiled to WebAssembly. */
export async function wasmEngine(notebook: Notebook): Promise<HeldWorkbook> {
  const { initSync, Model } = await import("@ironcalc/wasm");
  initSync({ module: readFileSync(resolve("node_modules/@ironcalc/wasm/wasm_bg.wasm")) });
  const began = performance.now();
  const model = new Model("workbook", "en", "UTC", "en");
  model.pauseEvaluation();
  notebook.pages.forEach(({ name }, sheet) => {
    if (sheet > 0) model.newSheet();
    model.renameSheet(sheet, name);
  });
  notebook.pages.forEach(({ rows }, sheet) => {
    rows.forEach((texts, row) => {
      texts.forEach((text, column) => {
        if (text !== "") model.setUserInput(sheet, row + 1, column + 1, text);
      });
    });
  });
  model.resumeEvaluation();
  model.evaluate();
  const built = performance.now() - began;
  const place = (at: Position) => [sheetOf(notebook, at), at.row + 1, at.column + 1] as const;
  return {
    name: "open engine in WebAssembly",
    built,
    write: (at, value) => model.setUserInput(...place(at), String(value)),
    shows: (at) => model.getFormattedCellValue(...place(at)),
    close: () => model.free(),
  };
}
