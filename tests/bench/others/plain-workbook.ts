import { isFormula } from "../../../src/engine/content";
import { setCells } from "../../../src/notebook/edit-cells";
import { addOption } from "../../../src/notebook/edit-options";
import { feedsOf } from "../../../src/notebook/feeds";
import { LiveNotebook } from "../../../src/notebook/live";
import {
  firstOption,
  isOptionPage,
  type Notebook,
  optionsOf,
  type Position,
  textAt,
} from "../../../src/notebook/model";
import { shippedFunction } from "../../../src/notebook/named-function";
import { columnName, pagePrefix } from "../../../src/notebook/references";
import { Refusal } from "../../../src/notebook/refusal";
import { namedIn } from "../../../src/notebook/row-calls";
import { rowEntry } from "../../../src/notebook/row-entry";
import { unfoldCall } from "../../../src/notebook/unfold";
import { valueText } from "../../../src/study/options/print";

/** The worked notebook as any spreadsheet engine reads it: plain formulas alone. */
export interface PlainWorkbook {
  readonly notebook: Notebook;
  /** Calls of named functions that became rows of plain formulas. */
  readonly unfolded: number;
  /** Cells that hold their value instead, because their function cannot be unfolded. */
  readonly values: number;
  readonly formulas: number;
  /** One input for all options: on it hangs as much as on any other. */
  readonly shared: Position;
  /** Another input, of the last option alone. */
  readonly single: Position;
}

const mostPasses = 12;

/** Takes apart what can be; a function inside another's arguments comes free with the next pass. */
function unfolded(notebook: Notebook): { readonly notebook: Notebook; readonly count: number } {
  let [whole, count] = [notebook, 0];
  for (let pass = 0; pass < mostPasses; pass++) {
    const before = count;
    for (const { id, rows } of whole.pages.filter(isOptionPage)) {
      for (let row = rows.length - 1; row > 0; row--) {
        const texts = rows[row]?.slice(firstOption) ?? [];
        const named = new Set(texts.flatMap((text) => namedIn(text, shippedFunction)));
        for (const definition of named) {
          try {
            whole = unfoldCall(whole, id, row, definition).notebook;
            count++;
            // The rows below have moved; this row is looked at again in the next pass.
            break;
          } catch (problem) {
            if (!(problem instanceof Refusal)) throw problem;
          }
        }
      }
    }
    if (count === before) break;
  }
  return { notebook: whole, count };
}

/** Puts its value in the place of every formula that still calls a named function. */
function withValues(notebook: Notebook): { readonly notebook: Notebook; readonly count: number } {
  const live = new LiveNotebook(notebook);
  const cells = notebook.pages.flatMap((page) =>
    page.rows.flatMap((texts, row) =>
      texts.flatMap((text, column) => {
        if (!isFormula(text) || namedIn(text, shippedFunction).length === 0) return [];
        const value = live.value({ page: page.id, row, column });
        const plain =
          value.kind === "number" || value.kind === "flag" ? value.value : value.kind === "text" ? value.text : null;
        return [{ page: page.id, row, column, text: valueText(plain) }];
      }),
    ),
  );
  live.close();
  return { notebook: setCells(notebook, cells), count: cells.length };
}

/** How many formulas hang on a cell, by way of others or at once. */
function reach(notebook: Notebook, from: Position): number {
  const { fedBy } = feedsOf(notebook);
  const seen = new Set<string>();
  const waiting = [from];
  for (let at = waiting.pop(); at; at = waiting.pop()) {
    for (const one of fedBy(at)) {
      const key = `${one.page} ${one.row} ${one.column}`;
      if (seen.has(key)) continue;
      seen.add(key);
      waiting.push(one);
    }
  }
  return seen.size;
}

/** The inputs of an option with a number, those on which most hangs first. */
function inputsByReach(notebook: Notebook, column: number): Position[] {
  const inputs = notebook.pages.filter(isOptionPage).flatMap((page) =>
    page.rows.flatMap((_, row) => {
      const at = { page: page.id, row, column };
      const text = textAt(page, row, column);
      // A list takes none but its own values.
      if (rowEntry(notebook, page, row)?.choices) return [];
      return row > 0 && text.trim() !== "" && Number.isFinite(Number(text)) ? [{ at, reach: reach(notebook, at) }] : [];
    }),
  );
  return inputs.sort((a, b) => b.reach - a.reach).map(({ at }) => at);
}

/** @param options how many options the workbook has; the last of the notebook is copied until there are as many. */
export function plainWorkbook(notebook: Notebook, options: number): PlainWorkbook {
  const plain = unfolded(notebook);
  const filledIn = withValues(plain.notebook);
  let whole = filledIn.notebook;
  for (let i = optionsOf(whole).length; i < options; i++) {
    whole = addOption(whole, `Option ${i + 1}`, optionsOf(whole).at(-1) ?? "");
  }
  const [shared, single] = inputsByReach(whole, firstOption) as [Position, Position];
  const page = whole.pages.find(({ id }) => id === shared.page);
  const home = `${pagePrefix(page?.name ?? "")}$${columnName(firstOption)}$${shared.row + 1}`;
  const last = firstOption + options - 1;
  whole = setCells(
    whole,
    Array.from({ length: options - 1 }, (_, i) => ({ ...shared, column: firstOption + 1 + i, text: `=${home}` })),
  );
  const formulas = whole.pages.reduce((sum, { rows }) => sum + rows.flat().filter(isFormula).length, 0);
  return {
    notebook: whole,
    unfolded: plain.count,
    values: filledIn.count,
    formulas,
    shared,
    single: { ...single, column: last },
  };
}
