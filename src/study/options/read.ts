import { plainNumberOf } from "../../engine/content";
import type { Notebook, Row } from "../../notebook/model";
import { Refusal } from "../../notebook/refusal";
import { rowEntry } from "../../notebook/row-entry";
import { say } from "../../words/say";
import { plainOf } from "../kernel/chain";
import type { Plain } from "../kernel/plain";
import { type StudyRow, unitOf } from "../rows";
import { headerRows } from "./header";

/** Options from a table: the rows that they set, and their values; `undefined` keeps the base option's. */
export interface OptionTable {
  readonly rows: readonly StudyRow[];
  readonly options: readonly { readonly name: string; readonly values: readonly (Plain | undefined)[] }[];
}

function numberTrouble(text: string, unit: string): string {
  const advice = /^[+-]?\d+,\d+$/.test(text)
    ? say`write a decimal point`
    : say`write the number alone${unit ? `, in ${unit}` : ""}`;
  return say`"${text}" is not a plain number; ${advice}`;
}

/** What is known of a column before its cells are read. */
interface TableColumn {
  readonly name: string;
  readonly unit: string;
  readonly choices: ReadonlySet<string> | undefined;
}

function columnFor(notebook: Notebook, row: StudyRow): TableColumn {
  const choices = rowEntry(notebook, row.page, row.row)?.choices;
  return { name: row.name, unit: unitOf(row), choices: choices && new Set(choices.map(String)) };
}

/** Reads one cell. @throws Refusal for text where a number is due, and for what is not among the row's choices. */
function readCell({ name, unit, choices }: TableColumn, where: () => string, cell: string): Plain | undefined {
  const text = cell.trim();
  if (text === "") return undefined;
  if (choices && !choices.has(text)) {
    throw new Refusal(say`${where()}, ${name}: "${text}" is not a choice (allowed ${[...choices].join(", ")}).`);
  }
  // Rows without a unit hold words, sizes by name and flags; all others hold numbers.
  if (unit === "") return plainOf(text);
  const value = plainNumberOf(text);
  if (value === undefined) throw new Refusal(`${where()}, ${name}: ${numberTrouble(text, unit === "1" ? "" : unit)}.`);
  return value;
}

/**
 * Reads a table of options: a column `option`, then a column for each row that they set (`Supply.run`, or with its
 * unit `Supply.run [m]`), an option a line. An empty cell keeps the base option's value.
 *
 * @param column the base option's column.
 * @throws Refusal with file, row and column in one sentence.
 */
export function readOptions(notebook: Notebook, file: string, table: readonly Row[], column: number): OptionTable {
  const [header = [], ...lines] = table;
  const rows = headerRows(notebook, file, header, column);
  const columns = rows.map((row) => columnFor(notebook, row));
  const seen = new Map<string, number>();
  const options = lines.flatMap((cells, i) => {
    const line = i + 2;
    if (cells.every((cell) => cell.trim() === "")) return [];
    const name = cells[0]?.trim() ?? "";
    if (name === "") throw new Refusal(say`${file}, row ${line}: the option has no name.`);
    const before = seen.get(name.toLowerCase());
    if (before !== undefined) throw new Refusal(say`${file}, row ${line}: "${name}" stands in row ${before} already.`);
    seen.set(name.toLowerCase(), line);
    const values = columns.map((column, k) =>
      readCell(column, () => say`${file}, row ${line}, column ${k + 2}`, cells[k + 1] ?? ""),
    );
    return [{ name, values }];
  });
  if (options.length === 0)
    throw new Refusal(say`${file}: there is no option in it; write one a line below the first.`);
  return { rows, options };
}
