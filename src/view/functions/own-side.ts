import { html, nothing, type TemplateResult } from "lit/html.js";
import type { Page } from "../../notebook/model";
import type { OwnFunction } from "../../notebook/own/own-function";
import { ownFunctions } from "../../notebook/own/own-functions";
import { say } from "../../words/say";
import { one } from "../block";
import type { Desk } from "../desk";
import { cornerMark } from "../marks";
import { functionPage } from "./function-page";

/** The function in whose rows the selected cell stands; the first of the page above all of them. */
function functionAt(desk: Desk, page: Page): OwnFunction | undefined {
  const here = ownFunctions(desk.notebook).filter((own) => own.page === page.name);
  return here.findLast(({ row }) => row <= desk.block.from.row) ?? here[0];
}

/**
 * What the selected rows of a function page define, as it stands now: its mathematics, its examples and whether each
 * holds, or what keeps it from being used.
 */
export function ownSide(desk: Desk, page: Page, toCells: () => void): TemplateResult {
  const own = functionAt(desk, page);
  if (!own) {
    return html`<h2>${say`Function`}</h2>
      <p>${say`No row begins a function yet. Choose function in the column Part, write its name beside it, as in YARD.DROP, and in the column Why what it gives.`}</p>`;
  }
  const { name, definition, mistakes } = own;
  const to = (row: number) => (event: Event) => {
    event.preventDefault();
    desk.select(one({ row, column: desk.block.from.column }), page.id);
    toCells();
  };
  return html`<h2>${say`Function`} <em>${name}</em></h2>
    ${
      mistakes.length > 0
        ? html`<div role="status">${mistakes.map(
            ({ row, sentence }) =>
              html`<p class="own-mistake"><span class="short">${cornerMark}</span> <a href="#" @click=${to(row)}>${say`Row ${row + 1}`}</a>: ${sentence}.</p>`,
          )}</div>
          <p class="soft">${mistakes.length > 1 ? say`Until they are mended, cells that call the function say so. Everything else calculates.` : say`Until it is mended, cells that call the function say so. Everything else calculates.`}</p>`
        : nothing
    }
    ${definition ? html`<div class="own-function">${functionPage(definition, "", undefined, undefined, "own-function-title")}</div>` : nothing}`;
}
