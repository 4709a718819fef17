import { isFormula } from "../engine/content";
import { displayValue, plainValue } from "../notebook/display";
import { setCells } from "../notebook/edit-cells";
import { LiveNotebook } from "../notebook/live";
import {
  columnsOf,
  firstOption,
  isOptionPage,
  lead,
  type Notebook,
  optionsOf,
  type Page,
  pageByName,
  textAt,
} from "../notebook/model";
import { rowEntry } from "../notebook/row-entry";
import { positionOf, readAddress, rowKind } from "../notebook/rows";
import { outcomeAt, outcomeWords } from "../notebook/verdict";
import { said, say } from "../words/say";
import { readFolder } from "./folder";
import { columns, Misuse, type Output } from "./output";

/** Sets one input, `Supply.I_run@Cruiser=350`, for this run. */
function withInput(notebook: Notebook, assignment: string): Notebook {
  const split = assignment.indexOf("=");
  if (split < 0)
    throw new Misuse(say`--set ${assignment}: write Page.key@Option=value, for example Supply.I_run@Cruiser=350.`);
  const name = assignment.slice(0, split);
  const text = assignment.slice(split + 1);
  const at = positionOf(notebook, readAddress(name));
  const page = notebook.pages.find((one) => one.id === at.page);
  if (page && isFormula(textAt(page, at.row, at.column))) {
    throw new Misuse(say`--set ${name}: this cell is calculated; set one of the inputs that it depends on.`);
  }
  if (isFormula(text)) throw new Misuse(say`--set ${name}: an input is a number or a text, not a formula.`);
  return setCells(notebook, [{ ...at, text }]);
}

interface JsonRow {
  readonly key: string;
  readonly quantity: string;
  readonly unit: string;
  readonly basis: string;
  readonly values: Record<string, number | string | boolean | null>;
  readonly formulas: Record<string, string>;
  readonly errors: Record<string, { readonly code: string; readonly message: string }>;
}

function jsonRow(live: LiveNotebook, page: Page, row: number): JsonRow {
  const cells = page.rows[row] ?? [];
  const result: JsonRow = {
    key: cells[lead.key] ?? "",
    quantity: cells[lead.quantity] ?? "",
    unit: cells[lead.unit] ?? "",
    basis: cells[lead.basis] ?? "",
    values: {},
    formulas: {},
    errors: {},
  };
  optionsOf(live.notebook).forEach((option, i) => {
    const column = firstOption + i;
    const value = live.value({ page: page.id, row, column });
    const text = cells[column] ?? "";
    result.values[option] = plainValue(value);
    if (isFormula(text)) result.formulas[option] = text;
    if (value.kind === "error") result.errors[option] = { code: value.code, message: value.sentence };
  });
  return result;
}

function jsonPage(live: LiveNotebook, page: Page) {
  if (isOptionPage(page)) {
    const rows = page.rows.flatMap((_, row) =>
      ["header", "heading", "empty"].includes(rowKind(page, row)) ? [] : [jsonRow(live, page, row)],
    );
    return { name: page.name, rows };
  }
  const cells = page.rows.map((row, i) =>
    row.map((_, column) => plainValue(live.value({ page: page.id, row: i, column }))),
  );
  return { name: page.name, rows: [], cells };
}

function optionPageText(live: LiveNotebook, page: Page): string {
  const errors: string[] = [];
  const rows = page.rows.map((cells, row) => {
    const kind = rowKind(page, row);
    if (kind === "heading") return [...cells];
    if (kind === "header") return cells.map((name, column) => (column < firstOption ? said(name) : name));
    const entry = rowEntry(live.notebook, page, row);
    const shown = optionsOf(live.notebook).map((option, i) => {
      const at = { page: page.id, row, column: firstOption + i };
      const value = live.value(at);
      // An error is told where it began, and not in every cell that it reaches.
      if (value.kind === "error" && value.from === "") {
        errors.push(`${page.name}.${cells[lead.key]}@${option}: ${value.code} ${value.sentence}`);
      }
      return kind === "check" ? outcomeWords(outcomeAt(live, at)) : displayValue(value, entry?.digits);
    });
    return [...cells.slice(0, lead.basis), ...shown, cells[lead.basis] ?? ""];
  });
  const [header = [], ...rest] = rows;
  const order = [...header.slice(0, lead.basis), ...header.slice(firstOption), header[lead.basis] ?? ""];
  const options = columnsOf(page) - firstOption;
  const table = columns([order, ...rest], (i) => i >= lead.basis && i < lead.basis + options);
  return [table, ...errors].join("\n");
}

function freePageText(live: LiveNotebook, page: Page): string {
  const rows = page.rows.map((row, i) =>
    row.map((_, column) => displayValue(live.value({ page: page.id, row: i, column }))),
  );
  return columns(rows, () => false);
}

export interface CalcWishes {
  readonly set: readonly string[];
  readonly json: boolean;
  readonly page: string | undefined;
}

/** Calculates the notebook of a folder and prints its pages. */
export function calculate(output: Output, folder: string, wishes: CalcWishes): void {
  const notebook = wishes.set.reduce(withInput, readFolder(output.path(folder)));
  const wanted = wishes.page === undefined ? undefined : pageByName(notebook, wishes.page);
  if (wishes.page !== undefined && !wanted) {
    throw new Misuse(
      say`There is no page "${wishes.page}" (there are ${notebook.pages.map((page) => page.name).join(", ")}).`,
    );
  }
  const pages = wanted ? [wanted] : notebook.pages;
  const live = new LiveNotebook(notebook);
  if (wishes.json) {
    const { title } = notebook.about;
    const result = { title, options: optionsOf(notebook), pages: pages.map((page) => jsonPage(live, page)) };
    output.write(`${JSON.stringify(result, undefined, 2)}\n`);
    return;
  }
  const texts = pages.map((page) => {
    const text = isOptionPage(page) ? optionPageText(live, page) : freePageText(live, page);
    return `${page.name}\n${"-".repeat(page.name.length)}\n${text}\n`;
  });
  output.write(`${notebook.about.title}\n\n${texts.join("\n")}`);
}
