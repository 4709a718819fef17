import type { CellValue } from "../engine/value";
import type { LiveNotebook } from "../notebook/live";
import { firstOption, isOptionPage, lead, optionsOf, type Page } from "../notebook/model";
import { rowEntry } from "../notebook/row-entry";
import { type RowKind, rowKind, rowOfKey } from "../notebook/rows";
import { usualPage } from "../notebook/usual-page";
import { type Outcome, outcomeAt, outcomeWords } from "../notebook/verdict";
import { say } from "../words/say";
import { numberWords, unitWords } from "./unit-words";

/** A row of an option page as it goes on paper, for one option. */
export interface Line {
  readonly kind: RowKind;
  readonly key: string;
  readonly quantity: string;
  readonly basis: string;
  readonly unit: string;
  readonly value: CellValue;
  /** The value in words with its unit; a check as "holds, 12 % to spare"; empty where nothing stands. */
  readonly words: string;
  /** How a check comes out. */
  readonly outcome: Outcome | undefined;
}

function wordsOf(value: CellValue, unit: string, digits: number | undefined): string {
  switch (value.kind) {
    case "blank":
      return "";
    case "flag":
      return value.value ? "yes" : "no";
    case "text":
      return value.text;
    case "error":
      return say`not worked out: ${value.sentence}`;
    case "number": {
      const printed = unitWords(unit, value.value);
      return `${numberWords(value.value, unit, digits)}${printed && `\u00a0${printed}`}`;
    }
  }
}

function lineAt(live: LiveNotebook, page: Page, row: number, column: number): Line {
  const cells = page.rows[row] ?? [];
  const unit = cells[lead.unit] ?? "";
  const kind = rowKind(page, row);
  const value = live.value({ page: page.id, row, column });
  const outcome = kind === "check" ? outcomeAt(live, { page: page.id, row, column }) : undefined;
  const digits = rowEntry(live.notebook, page, row)?.digits;
  return {
    kind,
    key: cells[lead.key] ?? "",
    quantity: cells[lead.quantity] ?? "",
    basis: cells[lead.basis] ?? "",
    unit,
    value,
    words: outcome ? outcomeWords(outcome) : wordsOf(value, unit, digits),
    outcome,
  };
}

/** All rows of a page for one option; undefined where the notebook has no such option page. */
export function linesOf(live: LiveNotebook, name: string, option: string): readonly Line[] | undefined {
  const page = usualPage(live.notebook.pages, name);
  if (!page || !isOptionPage(page)) return undefined;
  const column = firstOption + optionsOf(live.notebook).indexOf(option);
  return page.rows.flatMap((_, row) => {
    const line = lineAt(live, page, row, column);
    return line.kind === "header" || line.kind === "empty" ? [] : [line];
  });
}

/** The row `Page.key`, for one option; undefined where the notebook has none. */
export function lineOf(live: LiveNotebook, address: string, option: string): Line | undefined {
  const split = address.lastIndexOf(".");
  const page = usualPage(live.notebook.pages, address.slice(0, split));
  const row = page ? rowOfKey(page, address.slice(split + 1)) : -1;
  return page && row > 0 ? lineAt(live, page, row, firstOption + optionsOf(live.notebook).indexOf(option)) : undefined;
}
