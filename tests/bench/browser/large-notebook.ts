import type { Notebook } from "../../../src/notebook/model";
import { columnName } from "../../../src/notebook/references";

/** The size that the grid is judged by. */
export const large = { rows: 150, options: 50, inputs: 10 } as const;

/** A page of that size: ten inputs an option, and everything below hangs on them. */
export function largeNotebook(): Notebook {
  const { rows, options, inputs } = large;
  const columns = Array.from({ length: options }, (_, i) => columnName(4 + i));
  const lines = Array.from({ length: rows }, (_, i) => {
    const row = i + 2;
    const cells = columns.map((name, k) =>
      i < inputs ? String(row + k / 10) : `=(${name}${row - 1}+${name}2)/2+${name}${2 + (i % inputs)}/10`,
    );
    return [`Quantity ${row}`, `k${row}`, "m", "made up", ...cells];
  });
  const header = ["Quantity", "Key", "Unit", "Basis", ...columns.map((name) => `Option ${name}`)];
  const page = { id: "large", name: "Large", file: "large.csv", rows: [header, ...lines] };
  return { about: { version: 1, title: "Large", pages: [{ name: "Large", file: "large.csv" }] }, pages: [page] };
}
