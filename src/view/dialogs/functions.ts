import { repeat } from "lit/directives/repeat.js";
import { html, type TemplateResult } from "lit/html.js";
import type { AnyDefinition } from "../../formula/definition";
import { type Family, familiesOf } from "../../notebook/function-families";
import { foundIn } from "../../notebook/functions-found";
import { firstOption, isOptionPage } from "../../notebook/model";
import { counted, said, say } from "../../words/say";
import { inBackground } from "../background";
import { cellName } from "../block";
import type { Desk } from "../desk";
import { closedCell, typeInto } from "../edits/type-into";
import { functionPage } from "../functions/function-page";
import { openDialog } from "./dialog";
import { addOwnFunction } from "./own-function";

/** Why an example cannot go into the selected cell. */
function whyNot(desk: Desk): string | undefined {
  const { page, block } = desk;
  if (desk.closed !== undefined) return desk.closed;
  if (isOptionPage(page) && block.from.column < firstOption) {
    return say`${cellName(block.from)} belongs to the names of the row; select a cell of an option to insert an example there.`;
  }
  return closedCell(desk, page, block.from);
}

/** Moves from one name to the next with the arrow keys. */
function walk(event: KeyboardEvent): void {
  const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (by === undefined) return;
  event.preventDefault();
  const names = [...document.querySelectorAll<HTMLElement>("dialog .function-list button")];
  const now = names.indexOf(document.activeElement as HTMLElement);
  const next = names[now + by];
  if (next) {
    next.focus();
    next.click();
  } else if (by < 0) document.querySelector<HTMLElement>("dialog .function-search input")?.focus();
}

const total = (families: readonly Family[]): number =>
  families.reduce((sum, { functions }) => sum + functions.length, 0);

/**
 * The place to look a named function up: by family or by word, with everything it rests on, and examples to insert.
 *
 * @param first the function that is shown when it opens.
 */
export function openFunctions(desk: Desk, toCells: () => void, first?: string): Promise<void> {
  const all = familiesOf(desk.notebook);
  let wanted = "";
  let chosen = first ?? all[0]?.functions[0]?.name;
  let isInserted = false;
  // Another dialog opens when this one is gone.
  let then: (() => Promise<boolean>) | undefined;
  const done = openDialog(say`Named functions`, ({ update, close }) => {
    const found = foundIn(all, wanted);
    const shown = found.flatMap(({ name: family, functions }) => functions.map((one) => ({ family, one })));
    const picked = shown.find(({ one }) => one.name === chosen) ?? shown[0];
    const insert = (formula: string) => {
      const { page, block } = desk;
      const typed = { ...block.from, typed: formula };
      isInserted = true;
      close();
      inBackground(typeInto(desk, page, [typed], say`example of ${picked?.one.name ?? ""} in ${cellName(block.from)}`));
    };
    const write = (copied?: AnyDefinition) => {
      then = () => addOwnFunction(desk, copied);
      close();
    };
    const look = (event: Event) => {
      wanted = (event.target as HTMLInputElement).value;
      update();
    };
    const choose = (one: AnyDefinition) => {
      chosen = one.name;
      update();
      document.querySelector("dialog .function-text")?.scrollTo({ top: 0 });
    };
    const name = (one: AnyDefinition): TemplateResult => html`<li>
      <button type="button" tabindex=${one === picked?.one ? "0" : "-1"} aria-current=${one === picked?.one ? "true" : "false"} @click=${() => choose(one)}>
        <b>${one.name}</b> <span>${said(one.title)}${one.ownOf === undefined ? "" : ` (${say`the notebook's own`})`}</span>
      </button>
    </li>`;
    const text = desk.page.rows[desk.block.from.row]?.[desk.block.from.column] ?? "";
    return html`<div class="functions">
      <div class="function-search">
        <label>${say`Look for`} <input type="text" maxlength="200" autofocus placeholder=${say`a name, an argument, a source`} .value=${wanted} @input=${look} @keydown=${walk} /></label>
        <p class="soft" role="status">${shown.length === total(all) ? counted(shown.length, "function") : say`${shown.length} of ${counted(total(all), "function")}`}</p>
        <p class="soft">${say`An example goes into ${cellName(desk.block.from)} on ${desk.page.name}${text ? say`, in the place of what stands there; undo brings that back` : ""}.`}</p>
        <button type="button" ?disabled=${desk.closed !== undefined} @click=${() => write()}>${say`A function of your own …`}</button>
        <button type="button" @click=${close}>${say`Close`}</button>
      </div>
      <nav class="function-list" aria-label=${say`Functions by family`} @keydown=${walk}>
        ${found.map(({ name: family, functions }) => html`<h3>${said(family)}</h3><ul>${repeat(functions, (one) => one.name, name)}</ul>`)}
        ${found.length === 0 ? html`<p>${say`No function says "${wanted}". Try one word of it, or a quantity such as "drop".`}</p>` : ""}
      </nav>
      <div class="function-text" tabindex="0" role="region" aria-label=${say`The chosen function`}>
        ${picked ? functionPage(picked.one, picked.family, whyNot(desk) ?? insert, desk.closed === undefined ? () => write(picked.one) : undefined) : ""}
      </div>
    </div>`;
  });
  return done.then(async () => {
    const isWritten = (await then?.()) ?? false;
    if (isInserted || isWritten) toCells();
  });
}
