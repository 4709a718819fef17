import type { LiveNotebook } from "../../notebook/live";
import { type Page, textAt } from "../../notebook/model";
import { part } from "../../notebook/own/function-page";
import { say } from "../../words/say";
import { holdsNumbers } from "../edits/reading";
import { asShown } from "../shown/plain-number";
import { unitText } from "../shown/unit-text";
import type { Look } from "./look";

/** The first cell of a row says what the row is, and whether something is wrong with it. */
function partLook(live: LiveNotebook, page: Page, row: number, text: string): Look {
  const remark = live.ownRemark(page, row);
  if (!remark) return { shape: text === "function" ? "heading" : "label", text };
  const { sentence } = remark;
  return remark.kind === "holds"
    ? { shape: "holds", text, sentence }
    : { shape: remark.kind === "differs" ? "short" : "error", text: text || say`mistake`, sentence };
}

/** How a cell of a page that defines functions is shown: as it was typed, nothing in it is calculated. */
export function functionLook(live: LiveNotebook, page: Page, row: number, column: number): Look {
  const text = textAt(page, row, column);
  if (column === part.part) return partLook(live, page, row, text);
  const isWrapped = true;
  if (textAt(page, row, part.part) === "function") return { shape: "heading", text, isWrapped };
  if (text === "") return { shape: "blank", text };
  switch (column) {
    case part.name:
      return { shape: "label", text, isWrapped };
    case part.formula:
      return { shape: "formula", text: holdsNumbers(page, row, column) ? asShown(text) : text, isWrapped };
    case part.unit:
      return { shape: "unit", text: unitText(text) };
    case part.source:
      return { shape: "basis", text, isWrapped };
    default:
      return { shape: "text", text, isWrapped };
  }
}
