import { html, nothing, type TemplateResult } from "lit/html.js";
import type { LiveNotebook } from "../../notebook/live";
import type { Page } from "../../notebook/model";
import { isolated } from "../../words/isolated";
import { counted, say } from "../../words/say";
import type { Desk } from "../desk";
import { cornerMark, moreMark, openMark, ringMark } from "../marks";
import { proofsOf } from "../proofs";
import type { OptionStanding, Standing } from "../standing";
import type { Wishes } from "../wishes";
import { pageDeed } from "./page-keys";
import { listedTick } from "./page-tick";

/** More options than this are summed up in words alone. */
const mostMarks = 8;

const total = (standings: readonly OptionStanding[], which: "short" | "open"): number =>
  standings.reduce((sum, standing) => sum + standing[which].length, 0);

const standingWords = (short: number, open: number): string => {
  const parts = [
    short > 0 ? (short === 1 ? say`${short} falls short` : say`${short} fall short`) : "",
    open > 0 ? say`${open} open` : "",
  ];
  return parts.filter(Boolean).join(", ") || say`all hold`;
};

const markOf = ({ short, open }: OptionStanding): TemplateResult =>
  short.length > 0
    ? html`<span class="short">${cornerMark}</span>`
    : open.length > 0
      ? html`<span class="open">${openMark}</span>`
      : html`<span class="holds">${ringMark}</span>`;

function pageState(standings: readonly OptionStanding[] | undefined): TemplateResult | typeof nothing {
  if (!standings) return nothing;
  const judged = standings.filter(({ checks }) => checks.length > 0);
  const [short, open] = [total(standings, "short"), total(standings, "open")];
  const perOption = judged.map((one) => `${isolated(one.option)} ${standingWords(one.short.length, one.open.length)}`);
  return html`<small class=${short > 0 ? "short" : open > 0 ? "open" : "holds"} title=${perOption.join("\n")}>
    ${judged.length <= mostMarks ? html`<span class="marks">${judged.map(markOf)}</span>` : nothing}
    ${standingWords(short, open)}<span class="unseen">: ${perOption.join(", ")}</span>
  </small>`;
}

function proofState(live: LiveNotebook, page: Page): TemplateResult | typeof nothing {
  const proofs = proofsOf(live, page);
  if (!proofs) return nothing;
  const { agree, differ } = proofs;
  return differ > 0
    ? html`<small class="short">${cornerMark} ${say`${differ} of ${agree + differ} differ`}</small>`
    : html`<small class="holds">${ringMark} ${say`${agree} of ${agree} agree`}</small>`;
}

/** Scrolls the list, and nothing else, so far that the page that is shown can be seen in it. */
export function showInList(root: ParentNode): void {
  const shown = root.querySelector<HTMLElement>(".pages [aria-current]");
  const list = shown?.closest<HTMLElement>(".pages");
  if (!shown || !list) return;
  const [own, around] = [shown.getBoundingClientRect(), list.getBoundingClientRect()];
  // Half a line more, so that it does not stand in the fading edge.
  const beyond = shown.offsetHeight / 2;
  if (own.bottom > around.bottom) list.scrollTop += own.bottom - around.bottom + beyond;
  else if (own.top < around.top) list.scrollTop -= around.top - own.top + beyond;
}

/**
 * The pages in the order of the job, each with how its checks stand for every option.
 *
 * @param wishes what can be done with a page as a whole; undefined where a trainee works and nothing is.
 */
export function pageList(
  desk: Desk,
  standing: Standing | undefined,
  go: (page: Page, byMouse: boolean) => void,
  wishes: Pick<Wishes, "pageMenu" | "pageDeeds"> | undefined,
): TemplateResult {
  const { notebook, page: shown } = desk;
  const menuUnder = (page: Page, event: Event) => {
    if (!wishes) return;
    event.preventDefault();
    const { left, bottom } = (event.currentTarget as HTMLElement).getBoundingClientRect();
    wishes.pageMenu(page, left + 24, bottom);
  };
  const key = (page: Page) => (event: KeyboardEvent) => {
    if ((event.shiftKey && event.key === "F10") || event.key === "ContextMenu") menuUnder(page, event);
    const deed = wishes && pageDeed(event, wishes.pageDeeds);
    if (!deed) return;
    event.preventDefault();
    deed(page);
  };
  return html`<ol class="pages">
    ${notebook.pages.map(
      (page, i) => html`<li>
        <button
          type="button"
          data-page=${page.name}
          aria-current=${page.id === shown.id ? "page" : nothing}
          @mousedown=${(event: Event) => event.preventDefault()}
          @click=${(event: MouseEvent) => go(page, event.detail > 0)}
          @keydown=${key(page)}
          @contextmenu=${(event: MouseEvent) => {
            if (!wishes) return;
            event.preventDefault();
            wishes.pageMenu(page, event.clientX, event.clientY);
          }}
        >
          <span class="number">${i + 1}</span>
          <span class="name">${page.name}${pageState(standing?.get(page.id))}${desk.live ? proofState(desk.live, page) : nothing}${listedTick(desk, page.id)}</span>
        </button>
        ${
          wishes && page.id === shown.id
            ? html`<button
                type="button"
                class="more"
                aria-haspopup="menu"
                aria-label=${say`What can be done with page ${page.name}`}
                title=${say`What can be done with this page`}
                ?disabled=${!desk.live || desk.closed !== undefined}
                @click=${(event: Event) => menuUnder(page, event)}
              >${moreMark}</button>`
            : nothing
        }
      </li>`,
    )}
  </ol>
  <p class="unseen">${counted(notebook.pages.length, "page")}</p>`;
}
