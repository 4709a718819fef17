import { html, nothing } from "lit/html.js";
import { renameReviewed } from "../../audit/rename-page";
import type { Page } from "../../notebook/model";
import { Refusal } from "../../notebook/refusal";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { cornerMark } from "../marks";
import { toPageList } from "../panels/page-menu";
import { openDialog } from "./dialog";

/** Turns to a page and asks for another name; what cannot be a name is said beside it. */
export async function askPageName(desk: Desk, page: Page): Promise<void> {
  desk.go(page.id);
  let typed = page.name;
  let refusal = "";
  await openDialog(say`Rename page ${page.name}`, ({ update, close }) => {
    const refuse = (why: string) => {
      refusal = why;
      update();
      document.querySelector<HTMLInputElement>("#page-name")?.select();
    };
    const rename = (event: SubmitEvent) => {
      event.preventDefault();
      const name = typed.trim();
      const { notebook } = desk;
      try {
        const after = renameReviewed(notebook, page.id, name);
        if (after === notebook) close();
        else if (desk.apply(say`page ${page.name} renamed`, () => after)) {
          desk.say(say`Page ${page.name} is now ${name}; what reads it has followed.`);
          close();
        } else refuse(desk.notice.sentence);
      } catch (problem) {
        if (!(problem instanceof Refusal)) throw problem;
        refuse(problem.message);
      }
    };
    return html`<form class="page-name" @submit=${rename}>
        <label for="page-name">${say`Name of the page`}
          <input
            id="page-name"
            autocomplete="off"
            spellcheck="false"
            autofocus
            .value=${typed}
            aria-invalid=${refusal ? "true" : nothing}
            aria-describedby="page-name-follows ${refusal ? "page-name-refusal" : ""}"
            @focus=${(event: Event) => (event.currentTarget as HTMLInputElement).select()}
            @input=${(event: Event) => {
              typed = (event.currentTarget as HTMLInputElement).value;
            }}
          /></label>
        ${refusal ? html`<p class="short" id="page-name-refusal" role="alert">${cornerMark} ${refusal}</p>` : nothing}
        <p class="soft" id="page-name-follows">${say`Formulas, ticks, notes and accepted findings follow the name; the file on disk stays ${page.file}. Undo brings the old name back.`}</p>
        <div class="choices">
          <button type="submit" class="main">${say`Rename`}</button>
          <button type="button" @click=${close}>${say`Leave as it was`}</button>
        </div>
      </form>`;
  });
  requestAnimationFrame(toPageList);
}
