import { html, nothing, type TemplateResult } from "lit/html.js";
import { isFormula } from "../../engine/content";
import type { LiveNotebook } from "../../notebook/live";
import { firstOption, isOptionPage, lead, type Page, textAt } from "../../notebook/model";
import { referenceText } from "../../notebook/references";
import { type Cell, cellName } from "../block";
import { cornerMark } from "../marks";
import { rowDecimals } from "../shown/row-decimals";
import { withUnit } from "../shown/unit-text";
import { valueText } from "../shown/value-text";
import { callsWorked } from "../working/call-working";
import { piecesOf, referenceWords } from "../working/formula-pieces";
import { callSteps } from "./call-steps";

/** The formula with quantities in the place of addresses, where at least one is known. */
function inWords(live: LiveNotebook, page: Page, column: number, formula: string): TemplateResult | typeof nothing {
  const pieces = piecesOf(formula).map((piece) =>
    typeof piece === "string"
      ? { text: piece, isNamed: false, isReference: false }
      : {
          text: referenceWords(live.notebook, page, column, piece) ?? referenceText(piece),
          isNamed: referenceWords(live.notebook, page, column, piece) !== undefined,
          isReference: true,
        },
  );
  if (!pieces.some(({ isNamed }) => isNamed)) return nothing;
  return html`<p class="formula names">${pieces.map(({ text, isReference }) => (isReference ? html`<em>${text}</em>` : text))}</p>`;
}

/** How the selected cell's value comes about: its formula in addresses and in words, and its named functions step by step. */
export function working(live: LiveNotebook, page: Page, cell: Cell): TemplateResult {
  const text = textAt(page, cell.row, cell.column);
  const value = live.value({ page: page.id, ...cell });
  const isOption = isOptionPage(page) && cell.column >= firstOption;
  const row = page.rows[cell.row] ?? [];
  const unit = isOption && value.kind === "number" ? (row[lead.unit] ?? "") : "";
  const what = isOption ? [row[lead.quantity], page.rows[0]?.[cell.column]].filter(Boolean).join(", ") : cellName(cell);
  const worth = withUnit(valueText(value, rowDecimals(live, page, cell.row)), unit);
  const basis = isOption ? row[lead.basis] : "";
  return html`<div class="working">
    <p class="sum"><b>${what}</b>${
      value.kind === "blank" ? " is empty" : value.kind === "error" ? " has no value" : html` = <b>${worth}</b>`
    }</p>
    ${value.kind === "error" ? html`<p class="short">${cornerMark} ${value.sentence}${value.from ? html` (from ${value.from})` : nothing}</p>` : nothing}
    ${isFormula(text) ? html`<p class="formula">${text}</p>${inWords(live, page, cell.column, text)}` : nothing}
    ${basis ? html`<p class="why">${isFormula(text) ? "" : "typed in; "}basis: ${basis}</p>` : nothing}
    ${isFormula(text) ? callsWorked(live, page, text).map(callSteps) : nothing}
  </div>`;
}
