import type { CellValue } from "../engine/value";
import { withDecimalSign } from "../words/decimal-sign";
import { say } from "../words/say";
import type { LiveNotebook } from "./live";
import { firstOption, isOptionPage, lead, optionsOf, type Page, type Position } from "./model";
import { rowKind } from "./rows";
import { missingBehind } from "./unfilled";

/** How a check comes out: a margin of at least 0 holds. */
export type Outcome =
  | { readonly kind: "holds"; readonly margin: number }
  | { readonly kind: "short"; readonly margin: number }
  | { readonly kind: "open"; readonly why: string }
  | { readonly kind: "none" };

export interface Check {
  readonly page: Page;
  readonly row: number;
  readonly column: number;
  readonly quantity: string;
  readonly outcome: Outcome;
}

/**
 * Judges the value of a margin cell. Anything but a number leaves the check open: an error, a blank input or a
 * text must never look like a check that holds. A text says why itself: "not measured yet". An empty cell means
 * that the check does not apply.
 */
export function outcomeOf(value: CellValue, text: string): Outcome {
  if (text === "") return { kind: "none" };
  switch (value.kind) {
    case "number":
      return value.value >= 0 ? { kind: "holds", margin: value.value } : { kind: "short", margin: value.value };
    case "error":
      return { kind: "open", why: value.sentence };
    case "blank":
      return { kind: "open", why: say`no result` };
    case "text":
      return { kind: "open", why: value.text || say`no result` };
    default:
      return { kind: "open", why: say`the result is not a number` };
  }
}

/** Judges a margin cell of an open notebook; one that counts a missing input as 0 stands open, whatever its number. */
export function outcomeAt(live: LiveNotebook, at: Position): Outcome {
  const outcome = outcomeOf(live.value(at), live.text(at));
  if (outcome.kind !== "holds" && outcome.kind !== "short") return outcome;
  const missing = missingBehind(live, at);
  return missing === undefined ? outcome : { kind: "open", why: say`${missing} is blank` };
}

/** A share in whole percent that never rounds a shortfall to nothing. */
function percent(share: number, below = say`less than 0.1 %`): string {
  const size = Math.abs(share) * 100;
  if (size === 0) return "0 %";
  if (size < 1) return size < 0.1 ? below : withDecimalSign(`${size.toFixed(1)} %`);
  return `${Math.round(size)} %`;
}

/** `holds, 12 % to spare`, `falls short by 8 %`, `open: run: blank`; empty where the check does not apply. */
export function outcomeWords(outcome: Outcome): string {
  switch (outcome.kind) {
    case "holds":
      return outcome.margin === 0 ? say`holds, nothing to spare` : say`holds, ${percent(outcome.margin)} to spare`;
    case "short":
      return say`falls short by ${percent(outcome.margin)}`;
    case "open":
      return say`open: ${outcome.why}`;
    case "none":
      return "";
  }
}

/** Short enough for a cell: `holds, 12 %`, `short by 8 %`. */
export function outcomeInCell(outcome: Outcome): string {
  if (outcome.kind === "holds") return say`holds, ${percent(outcome.margin, withDecimalSign("< 0.1 %"))}`;
  if (outcome.kind === "short") return say`short by ${percent(outcome.margin, withDecimalSign("< 0.1 %"))}`;
  return outcome.kind === "open" ? outcome.why : "";
}

/** What is left to say where it is said already how the check comes out: `12 % to spare`, `by 8 %`, why it is open. */
export function outcomeAmount(outcome: Outcome): string {
  switch (outcome.kind) {
    case "holds":
      return outcome.margin === 0 ? say`nothing to spare` : say`${percent(outcome.margin)} to spare`;
    case "short":
      return say`by ${percent(outcome.margin)}`;
    case "open":
      return outcome.why;
    case "none":
      return "";
  }
}

/** The checks of a page for one option, in the order of the page; those that do not apply are left out. */
export function checksOf(live: LiveNotebook, page: Page, option: string): Check[] {
  if (!isOptionPage(page)) return [];
  const column = firstOption + optionsOf(live.notebook).indexOf(option);
  return page.rows.flatMap((cells, row) => {
    if (rowKind(page, row) !== "check") return [];
    const outcome = outcomeAt(live, { page: page.id, row, column });
    return outcome.kind === "none" ? [] : [{ page, row, column, quantity: cells[lead.quantity] ?? "", outcome }];
  });
}
