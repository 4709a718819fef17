import type { AnyDefinition } from "../formula/definition";
import { whyNotUnfolded } from "../formula/unfold/reason";
import { type CellOf, unfold } from "../formula/unfold/unfold";
import { say } from "../words/say";
import { type CellText, pageOf, setCells } from "./edit-cells";
import { insertRows } from "./edit-lines";
import { columnsOf, firstOption, isOptionPage, lead, type Notebook, textAt } from "./model";
import { columnName } from "./references";
import { Refusal } from "./refusal";
import { type CallText, callsOfRow } from "./row-calls";
import { keysFor, placeFor } from "./unfold-place";
import { stepRows } from "./unfold-rows";

/** How many rows came, and where the call's row is now. */
export interface UnfoldedCall {
  readonly notebook: Notebook;
  readonly first: number;
  readonly count: number;
  readonly row: number;
}

/**
 * Puts the steps of a named function as visible rows of plain formulas above the row that calls it, for all its
 * options; the row keeps its place in everything that refers to it, and its values to the last bit.
 *
 * @throws Refusal that says why a function, a call or a page cannot be taken apart.
 */
export function unfoldCall(notebook: Notebook, id: string, row: number, definition: AnyDefinition): UnfoldedCall {
  const page = pageOf(notebook, id);
  if (!isOptionPage(page)) {
    throw new Refusal(
      say`${page.name} is a free sheet; a function is unfolded on a page with options, where rows have units.`,
    );
  }
  const reason = whyNotUnfolded(definition);
  if (reason) throw new Refusal(reason);
  const calls = callsOfRow(page, row, definition);
  if (calls.size === 0)
    throw new Refusal(say`Row ${row + 1} of ${page.name} does not call ${definition.name}; choose a row that does.`);
  const { rows: unfolded, result } = unfold(definition);
  const rows = stepRows(definition, unfolded, [...calls.values()], textAt(page, row, lead.unit));
  const isFilled = calls.size === columnsOf(page) - firstOption;
  const free = placeFor(notebook, page, row, isFilled);
  const isAbove = free === row;
  // At the page's end they stand under a heading.
  const place = isAbove ? row : free + 1;
  const at = isAbove ? row + rows.length : row;
  const made = isAbove ? insertRows(notebook, id, row, rows.length) : notebook;
  // References have moved with the rows; everything is written as the formulas read now.
  const moved = [...callsOfRow(pageOf(made, id), at, definition)];
  const lines = new Map(rows.map(({ name }, i) => [name, place + i]));
  const cellOf =
    (column: number, call: CallText): CellOf =>
    (name) => {
      const line = lines.get(name);
      if (line !== undefined) return `${columnName(column)}${line + 1}`;
      return call.args[Object.keys(definition.args).indexOf(name)] ?? "";
    };
  const stem = textAt(page, row, lead.key) || definition.name.replace(/^.*\./, "").toLowerCase();
  const keys = keysFor(page, stem, [...lines.keys()]);
  const cells: CellText[] = rows.flatMap(({ title, unit, basis, text }, i) => {
    const line = { page: id, row: place + i };
    return [
      { ...line, column: lead.quantity, text: title },
      { ...line, column: lead.key, text: keys[i] as string },
      { ...line, column: lead.unit, text: unit },
      { ...line, column: lead.basis, text: basis },
      ...moved.map(([column, call]) => ({ ...line, column, text: text(call, cellOf(column, call)) })),
    ];
  });
  const title = textAt(page, row, lead.quantity) || definition.name;
  const heading = isAbove ? [] : [{ page: id, row: place - 1, column: lead.quantity, text: `${title}: steps` }];
  const results = moved.map(([column, call]) => {
    const text = textAt(pageOf(made, id), at, column);
    const formula = `${text.slice(0, call.start)}${result(cellOf(column, call))}${text.slice(call.end)}`;
    return { page: id, row: at, column, text: formula };
  });
  return { notebook: setCells(made, [...heading, ...cells, ...results]), first: place, count: rows.length, row: at };
}
