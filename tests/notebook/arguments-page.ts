import type { AnyDefinition } from "../../src/formula/definition";
import type { Given } from "../../src/formula/value";
import { readNotebook } from "../../src/notebook/files";
import type { Notebook } from "../../src/notebook/model";
import { printPage } from "../../src/notebook/page-csv";
import { columnName } from "../../src/notebook/references";

/** A notebook of one page. */
export const sheetOf = (csv: string): Notebook =>
  readNotebook(
    new Map([
      ["notebook.json", JSON.stringify({ version: 1, title: "One page", pages: [{ name: "Page", file: "page.csv" }] })],
      ["page.csv", csv],
    ]),
  );

/** What is typed for an argument; a number written out in more than fifteen digits would be a text. */
export const text = (value: Given): string =>
  typeof value === "number" && Math.abs(value) >= 1e15
    ? value.toExponential()
    : typeof value === "string"
      ? `'${value}`
      : String(value ?? "").replace(/^(true|false)$/, (word) => word.toUpperCase());

/** A page with a row for each argument of a function, a column for each set of them, and the row that calls it. */
export function argumentsPage(
  definition: AnyDefinition,
  columns: readonly (readonly Given[])[],
): { readonly notebook: Notebook; readonly row: number } {
  const names = Object.keys(definition.args);
  const call = (column: number) =>
    `=${definition.name}(${names.map((_, i) => `${columnName(column + 4)}${i + 2}`).join(",")})`;
  const rows = [
    ["Quantity", "Key", "Unit", "Basis", ...columns.map((_, i) => `O${i}`)],
    ...names.map((name, i) => [name, name, "", "", ...columns.map((given) => text(given[i] ?? null))]),
    ["Result", "result", "", "", ...columns.map((_, i) => call(i))],
  ];
  return { notebook: sheetOf(printPage(rows)), row: names.length + 1 };
}
