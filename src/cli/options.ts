import { readFileSync } from "node:fs";
import { decodeFile } from "../notebook/decode";
import { parsePage } from "../notebook/page-csv";
import { usualPage } from "../notebook/usual-page";
import { printOptions } from "../study/options/print";
import { readOptions } from "../study/options/read";
import { runOptions } from "../study/options/run";
import { columnOf, rowsNamed } from "../study/rows";
import { sourceFor } from "../study/source";
import { say } from "../words/say";
import { readFolder } from "./folder";
import { Misuse, type Output } from "./output";

export interface OptionsWishes {
  /** CSV file: a column `option`, then `Page.key` columns. */
  readonly from: string | undefined;
  /** Patterns of rows to give: `Compare.*`. */
  readonly rows: string | undefined;
  /** The option that gives whatever the file leaves out; the first one when left out. */
  readonly base: string | undefined;
}

/** Calculates the options of a CSV file, a boat a line, and prints their results the same way. */
export function calculateOptions(output: Output, folder: string, wishes: OptionsWishes): void {
  const { from, base } = wishes;
  if (from === undefined) {
    throw new Misuse(say`options needs the file with the options, for example --from boats.csv.`);
  }
  const notebook = readFolder(output.path(folder));
  const { rows = `${usualPage(notebook.pages, "Compare")?.name ?? "Compare"}.*` } = wishes;
  const column = columnOf(notebook, base);
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(output.path(from));
  } catch {
    throw new Misuse(say`${from} cannot be read; name a CSV file with a column option and Page.key columns.`);
  }
  const table = readOptions(notebook, from, parsePage(from, decodeFile(from, bytes)), column);
  const wanted = rowsNamed(notebook, rows);
  const run = runOptions(sourceFor(notebook, column, wanted), column, table, wanted);
  for (const text of printOptions(run)) output.write(text);
  run.runner.close();
}
