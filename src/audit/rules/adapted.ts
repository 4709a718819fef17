import { isFormula } from "../../engine/content";
import { nameOnPage } from "../../notebook/cell-name";
import { columnsOf, firstOption, isOptionPage, lead, type Notebook, type Page } from "../../notebook/model";
import { rowEntry } from "../../notebook/row-entry";
import { rowOfKey } from "../../notebook/rows";
import { say } from "../../words/say";
import { type Finding, found } from "../finding";
import type { Rule } from "../rule";
import { formulaByRows, sameFile } from "./formula-by-rows";

const name = "adapted";

/** A row of a notebook, whichever line it stands in. */
interface Line {
  readonly notebook: Notebook;
  readonly page: Page;
  readonly row: number;
}

const textOf = ({ page, row }: Line, column: number): string => page.rows[row]?.[column] ?? "";

const optionName = ({ page }: Line, column: number): string => page.rows[0]?.[column] ?? "";

/** `in Cruiser`, or nothing when it is so in all options. */
const inOptions = (line: Line, columns: readonly number[], all: number): string =>
  columns.length === all ? "" : ` in ${columns.map((column) => optionName(line, column)).join(", ")}`;

/** What became of the formula of a row, option by option. */
function formulaDifference(old: Line, now: Line): string[] {
  const columns = Array.from({ length: columnsOf(now.page) - firstOption }, (_, i) => firstOption + i).filter(
    (column) => textOf(now, column) !== "",
  );
  const shippedText = old.page.rows[old.row]?.slice(firstOption).find(isFormula);
  const calculated = columns.filter((column) => isFormula(textOf(now, column)));
  const where = (some: readonly number[]) => inOptions(now, some, columns.length);
  const [first = firstOption] = calculated;
  if (shippedText === undefined) {
    return calculated.length > 0
      ? [say`was an input, is now calculated${where(calculated)}: ${textOf(now, first)}`]
      : [];
  }
  const at = old.page.rows[old.row]?.indexOf(shippedText) ?? firstOption;
  const shipped = formulaByRows(old.notebook, old.page, shippedText, at);
  const typed = columns.filter((column) => !calculated.includes(column));
  const other = calculated.filter(
    (column) => formulaByRows(now.notebook, now.page, textOf(now, column), column) !== shipped,
  );
  const [changed] = other;
  return [
    ...(typed.length > 0 ? [say`was calculated (${shippedText}), is now typed${where(typed)}`] : []),
    ...(changed === undefined ? [] : [say`formula was ${shippedText}, is ${textOf(now, changed)}${where(other)}`]),
  ];
}

const limitWords = (line: Line): string => {
  const { low, high, choices } = rowEntry(line.notebook, line.page, line.row) ?? {};
  if (choices) return choices.join(", ");
  return low === undefined && high === undefined ? "none" : say`${low ?? "…"} to ${high ?? "…"}`;
};

function rowDifferences(old: Line, now: Line): string[] {
  const words = [
    ["quantity", textOf(old, lead.quantity), textOf(now, lead.quantity)],
    ["unit", textOf(old, lead.unit) || "empty", textOf(now, lead.unit) || "empty"],
    [say`choices or plausible limits`, limitWords(old), limitWords(now)],
  ] as const;
  return [
    ...words.flatMap(([what, before, after]) => (before === after ? [] : [say`${what}: was ${before}, is ${after}`])),
    ...formulaDifference(old, now),
  ];
}

function pageDifferences(shipped: Notebook, notebook: Notebook, page: Page): Finding[] {
  const old = sameFile(shipped, page);
  if (!old) return [found(name, "note", nameOnPage(page, 0, lead.quantity), say`this page was added`)];
  const renamed =
    old.name === page.name
      ? []
      : [found(name, "note", nameOnPage(page, 0, lead.quantity), say`the page was called ${old.name}`)];
  const here = page.rows.flatMap((cells, row) => {
    const key = cells[lead.key];
    if (row === 0 || !key) return [];
    const was = rowOfKey(old, key);
    const messages =
      was < 0
        ? [say`this row was added`]
        : rowDifferences({ notebook: shipped, page: old, row: was }, { notebook, page, row });
    return messages.map((message) => found(name, "note", nameOnPage(page, row, lead.quantity), message));
  });
  const gone = old.rows.flatMap((cells, row) => {
    const key = cells[lead.key] ?? "";
    if (row === 0 || key === "" || rowOfKey(page, key) >= 0) return [];
    const place = { ...nameOnPage(old, row, lead.quantity), page: page.name };
    return [found(name, "note", place, say`the row ${cells[lead.quantity] ?? ""} was removed`)];
  });
  return [...renamed, ...here, ...gone];
}

/** Row by row, what was adapted in a shipped notebook: formulas, units, names and limits, not the boats' own numbers. */
export const adapted: Rule = {
  name,
  about: say`a row that differs from the notebook as it was shipped`,
  find: ({ notebook, shipped }) => {
    if (!shipped) return [];
    const pages = notebook.pages.filter((page) => isOptionPage(page) && columnsOf(page) > firstOption);
    const gone = shipped.pages.filter((page) => isOptionPage(page) && !sameFile(notebook, page));
    return [
      ...pages.flatMap((page) => pageDifferences(shipped, notebook, page)),
      ...gone.map((page) =>
        found(name, "note", nameOnPage(page, 0, lead.quantity), say`the page ${page.name} was removed`),
      ),
    ];
  },
};
