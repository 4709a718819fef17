import { LiveNotebook } from "../../src/notebook/live";
import type { Page, Position } from "../../src/notebook/model";

/** Quantities: what each is called in a formula, its unit, and a value. */
export type Given = Readonly<Record<string, readonly [unit: string, value: string]>>;

export interface UnitCase {
  readonly given: Given;
  /** Names of quantities stand for their cells. */
  readonly formula: string;
  readonly unit: string;
}

/** A page with a row for each quantity, and a last row with the formula. */
function unitPage({ given, formula, unit }: UnitCase, i: number): Page {
  const names = Object.keys(given);
  const cells = formula.replace(/"[^"]*"|[A-Za-z_][\w.]*(?!\w*\()/g, (word) => {
    const row = names.indexOf(word);
    return row < 0 ? word : `E${row + 2}`;
  });
  const rows = [
    ["Quantity", "Key", "Unit", "Basis", "Boat"],
    ...names.map((name) => [name, name, given[name]?.[0] ?? "", "given", given[name]?.[1] ?? ""]),
    ["result", "result", unit, "formula", `=${cells}`],
  ];
  return { id: `page${i}`, name: `Page${i}`, file: `page${i}.csv`, rows };
}

/** One calculated notebook with a page for each case, and the place of each formula. */
export function unitCells(cases: readonly UnitCase[]): {
  readonly live: LiveNotebook;
  readonly at: readonly Position[];
} {
  const pages = cases.map(unitPage);
  const entries = pages.map(({ name, file }) => ({ name, file }));
  return {
    live: new LiveNotebook({ about: { version: 1, title: "Units", pages: entries }, pages }),
    at: cases.map(({ given }, i) => ({ page: `page${i}`, row: Object.keys(given).length + 1, column: 4 })),
  };
}
