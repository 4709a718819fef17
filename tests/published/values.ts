import { readFileSync } from "node:fs";
import Papa from "papaparse";

/** The rows of a table of check values beside this file; its source stands in its first lines. */
export function rowsOf(name: string): Readonly<Record<string, number>>[] {
  const text = readFileSync(new URL(name, import.meta.url), "utf8");
  const { data, errors } = Papa.parse<Record<string, number>>(text, {
    header: true,
    comments: "#",
    dynamicTyping: true,
    skipEmptyLines: true,
  });
  if (errors.length) throw new Error(`${name}: ${errors[0]?.message}`);
  return data;
}

/** A cell of such a row. @throws Error when the column is not there or not a number. */
export function cell(row: Readonly<Record<string, number>>, column: string): number {
  const value = row[column];
  if (typeof value !== "number") throw new Error(`no number in column ${column}`);
  return value;
}
