import { html, nothing } from "lit/html.js";
import { removePage } from "../../notebook/edit-pages";
import type { Page } from "../../notebook/model";
import { lossWithPage, type PageLoss, type Readers } from "../../notebook/readers-of-page";
import { listed } from "../../words/isolated";
import { counted, say } from "../../words/say";
import type { Desk } from "../desk";
import { toPageList } from "../panels/page-menu";
import { openDialog } from "./dialog";

const where = ({ pages }: Readers): string => say`${counted(pages.length, "page")} (${listed(pages)})`;

/** What would miss the page, one sentence each. */
function missing({ reads, calls }: PageLoss): string[] {
  const readers = counted(reads.formulas, "formula");
  const callers = counted(calls.formulas, "formula");
  return [
    reads.formulas === 1
      ? say`${readers} on ${where(reads)} reads it and would show #REF!.`
      : say`${readers} on ${where(reads)} read it and would show #REF!.`,
    calls.formulas === 1
      ? say`${callers} on ${where(calls)} calls a function that it defines and would show an error.`
      : say`${callers} on ${where(calls)} call functions that it defines and would show an error.`,
  ].filter((_, i) => [reads, calls][i]?.formulas);
}

/** What goes with it beside its cells: `its note, 2 ticks`. */
const goesToo = ({ hasNote, ticks, accepted }: PageLoss): string[] => [
  ...(hasNote ? [say`its note`] : []),
  ...(ticks > 0 ? [counted(ticks, "tick")] : []),
  ...(accepted > 0 ? [counted(accepted, "accepted finding")] : []),
];

function remove(desk: Desk, page: Page): void {
  const { pages } = desk.notebook;
  const at = pages.findIndex(({ id }) => id === page.id);
  const next = pages[at + 1] ?? pages[at - 1];
  if (!desk.apply(say`page ${page.name} removed`, (notebook) => removePage(notebook, page.id))) return;
  if (next) desk.go(next.id);
  desk.say(say`Page ${page.name} is removed; undo brings it back with all that stood on it.`);
  requestAnimationFrame(toPageList);
}

/** Turns to a page, says what would miss it and what goes with it, and removes it when the person says so. */
export async function askRemovePage(desk: Desk, page: Page): Promise<void> {
  if (desk.notebook.pages.length === 1) {
    desk.say(say`The last page cannot be removed.`, "refused");
    return;
  }
  desk.go(page.id);
  const loss = lossWithPage(desk.notebook, page.id);
  const sentences = missing(loss);
  const too = goesToo(loss);
  let isSure = false;
  await openAsk();
  if (isSure) remove(desk, page);

  function openAsk(): Promise<void> {
    return openDialog(say`Remove page ${page.name}?`, ({ close }) => {
      const allow = () => {
        isSure = true;
        close();
      };
      return html`${
        sentences.length > 0
          ? sentences.map((sentence) => html`<p>${sentence}</p>`)
          : html`<p>${say`No formula on another page reads it.`}</p>`
      }
        ${too.length > 0 ? html`<p>${say`Removed with it: ${listed(too)}.`}</p>` : nothing}
        <p class="soft">${say`Undo brings back all of it.`}</p>
        <div class="choices">
          <button type="button" class="main" @click=${close}>${say`Leave it`}</button>
          <button type="button" @click=${allow}>${say`Remove the page`}</button>
        </div>`;
    });
  }
}
