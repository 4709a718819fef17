import { html } from "lit/html.js";
import type { AnyDefinition } from "../../formula/definition";
import type { Notebook } from "../../notebook/model";
import { type AddedFunction, beginFunction, copyFunction } from "../../notebook/own/add-function";
import { Refusal } from "../../notebook/refusal";
import { say } from "../../words/say";
import { one } from "../block";
import type { Desk } from "../desk";
import { openDialog } from "./dialog";

/**
 * Asks for the name of a function of the notebook's own, and writes it down as rows that can be changed.
 *
 * @param copied the function that it begins as; a small one when left out.
 * @returns whether it was written down; its page is shown then.
 */
export async function addOwnFunction(desk: Desk, copied?: AnyDefinition): Promise<boolean> {
  let isAdded = false;
  let refused = "";
  const proposed = `YARD.${copied?.name.replace(/^.*\./, "") ?? "NEW"}`;
  const title = copied ? say`Copy ${copied.name} under another name` : say`A function of your own`;
  await openDialog(title, ({ update, close }) => {
    const take = (event: SubmitEvent) => {
      event.preventDefault();
      const name = String(new FormData(event.currentTarget as HTMLFormElement).get("name") ?? "")
        .trim()
        .toUpperCase();
      try {
        isAdded = writeDown(desk, name, copied);
        close();
      } catch (problem) {
        if (!(problem instanceof Refusal)) throw problem;
        refused = problem.message;
        update();
      }
    };
    return html`<p>${say`It is written down as rows on a page of this notebook: arguments, constants, steps, the result, examples. Every row can be changed, and cells call it by its name.`}</p>
      <form class="fields" @submit=${take}>
        <label>${say`Name`} <input name="name" required autofocus maxlength="60" autocapitalize="characters" spellcheck="false" .value=${proposed} aria-describedby="own-function-refused" /></label>
        <p id="own-function-refused" class="short" role="alert">${refused}</p>
        <div class="choices">
          <button type="submit" class="main">${say`Write it down`}</button>
          <button type="button" @click=${close}>${say`Leave it`}</button>
        </div>
      </form>`;
  });
  return isAdded;
}

/** @throws Refusal for a name that cannot be taken. */
function writeDown(desk: Desk, name: string, copied: AnyDefinition | undefined): boolean {
  const add = (notebook: Notebook): AddedFunction =>
    copied ? copyFunction(notebook, copied, name) : beginFunction(notebook, name);
  // Tried first, so that a refusal stays in the dialog.
  add(desk.notebook);
  let made: AddedFunction | undefined;
  const isMade = desk.apply(say`${name} written down`, (notebook) => {
    made = add(notebook);
    return made.notebook;
  });
  if (!isMade || !made) return false;
  desk.select(one({ row: made.row, column: 0 }), made.page);
  desk.say(say`${name} can be called in every cell. Change its rows as you need; undo takes it back.`);
  return true;
}
