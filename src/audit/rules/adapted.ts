import { isFormula } from "../../engine/content";
import { nameOnPage } from "../../notebook/cell-name";
import { cellsOf } from "../../notebook/feeds";
import { columnsOf, firstOption, isOptionPage, lead, type Notebook, type Page, pageByName } from "../../notebook/model";
import { mapReferences } from "../../notebook/references";
import { rowOfKey } from "../../notebook/rows";
import { type Finding, found } from "../finding";
import type { Rule } from "../rule";

const name = "adapted";

/** A formula with rows in the place of cells, so that inserted rows make no difference. */
function byRows(notebook: Notebook, page: Page, text: string): string {
  const named: string[] = [];
  const bare = mapReferences(text, (reference) => {
    for (const cell of cellsOf(notebook, page, reference)) {
      const home = notebook.pages.find(({ id }) => id === cell.page) as Page;
      const { key, cell: address, page: of } = nameOnPage(home, cell.row, cell.column);
      named.push(key ? `${of}.${key} ${cell.column - firstOption}` : address);
    }
    return undefined;
  });
  return `${bare.replaceAll(/\s/g, "")} ${named.join(" ")}`;
}

/** What a row says of its first option's formula, whichever row it stands in now. */
function formulaOf(notebook: Notebook, page: Page, row: number): string | undefined {
  const text = page.rows[row]?.[firstOption] ?? "";
  return isFormula(text) ? byRows(notebook, page, text) : undefined;
}

function rowDifferences(shipped: Notebook, old: Page, notebook: Notebook, page: Page, row: number): string[] {
  const key = page.rows[row]?.[lead.key] ?? "";
  const was = rowOfKey(old, key);
  if (was < 0) return ["this row was added"];
  const text = (column: number): readonly [string, string] => [
    old.rows[was]?.[column] ?? "",
    page.rows[row]?.[column] ?? "",
  ];
  const changed: string[] = [];
  for (const [what, column] of [
    ["quantity", lead.quantity],
    ["unit", lead.unit],
  ] as const) {
    const [before, now] = text(column);
    if (before !== now) changed.push(`${what} was ${before || "empty"}, is ${now || "empty"}`);
  }
  const [before, now] = [formulaOf(shipped, old, was), formulaOf(notebook, page, row)];
  const [oldText, newText] = text(firstOption);
  if (before !== now && (before !== undefined || now !== undefined)) {
    changed.push(
      before === undefined
        ? `was an input, is now calculated: ${newText}`
        : now === undefined
          ? `was calculated (${oldText}), is now typed`
          : `formula was ${oldText}, is ${newText}`,
    );
  }
  return changed;
}

function pageDifferences(shipped: Notebook, notebook: Notebook, page: Page): Finding[] {
  const old = pageByName(shipped, page.name);
  if (!old || !isOptionPage(old)) return [];
  const here = page.rows.flatMap((cells, row) => {
    if (row === 0 || !cells[lead.key]) return [];
    return rowDifferences(shipped, old, notebook, page, row).map((message) =>
      found(name, "note", nameOnPage(page, row, lead.quantity), message),
    );
  });
  const gone = old.rows.flatMap((cells, row) => {
    const key = cells[lead.key] ?? "";
    if (row === 0 || key === "" || rowOfKey(page, key) >= 0) return [];
    return [found(name, "note", nameOnPage(old, row, lead.quantity), `the row ${cells[lead.quantity]} was removed`)];
  });
  return [...here, ...gone];
}

/** Row by row, what was adapted in a shipped notebook: formulas, units and names, not the boats' own numbers. */
export const adapted: Rule = {
  name,
  about: "a row that differs from the notebook as it was shipped",
  find: ({ notebook, shipped }) => {
    if (!shipped) return [];
    const pages = notebook.pages.filter((page) => isOptionPage(page) && columnsOf(page) > firstOption);
    return pages.flatMap((page) => pageDifferences(shipped, notebook, page));
  },
};
