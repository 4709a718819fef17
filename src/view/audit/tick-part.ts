import { html, nothing, type TemplateResult } from "lit/html.js";
import { placesOf, type Review, type ReviewPlace, reviewOfCell } from "../../audit/review";
import { nameOnPage } from "../../notebook/cell-name";
import { listed } from "../../words/isolated";
import { counted, say } from "../../words/say";
import { inBackground } from "../background";
import { cellName } from "../block";
import type { Desk } from "../desk";
import { askName, knownName } from "../dialogs/ask-name";
import { staleMark, tickMark } from "../marks";
import { tick, tickWords, untick } from "./ticks";

const mark = (stale: boolean): TemplateResult =>
  stale ? html`<span class="open">${staleMark}</span>` : html`<span class="holds">${tickMark}</span>`;

/** The tick of the selected cell, and buttons to tick it, its row and its page. */
export function tickHere(desk: Desk, ticks: readonly Review[]): TemplateResult | typeof nothing {
  const { page, block, notebook } = desk;
  const at = { page: page.id, ...block.from };
  const places = placesOf(notebook, at);
  if (!places) return nothing;
  const covering = reviewOfCell(notebook, ticks, at);
  const { quantity, option } = nameOnPage(page, at.row, at.column);
  const button = (what: string, place: ReviewPlace | undefined) => {
    if (place === undefined) return nothing;
    const own = ticks.find((one) => one.place === place);
    const isFresh = own !== undefined && !own.stale;
    const words = isFresh ? say`Take tick of ${what} back` : say`Tick ${what}${own ? say` again` : ""}`;
    // One button for both, so that the keyboard stays where it pressed.
    return html`<button type="button" @click=${() => (isFresh ? untick(desk, place) : inBackground(tick(desk, place)))}>${words}</button>`;
  };
  return html`<section class="tick-here" aria-label=${say`Review of the selected cell`}>
    <p><b>${cellName(block.from)}</b> ${listed([quantity, option].filter(Boolean))}</p>
    <p>${covering ? html`${mark(covering.stale)} ${tickWords(covering).replace(/^./, (first) => first.toUpperCase())}${covering.place === places.cell ? "" : say`, with ${covering.place}`}.` : html`<span class="soft">${say`Not reviewed yet.`}</span>`}</p>
    <div class="choices">
      ${button(say`this cell`, places.cell)} ${button(say`this row`, places.row)} ${button(say`this page`, places.page)}
    </div>
    <p class="soft">${
      knownName()
        ? html`${say`Signed ${knownName()}.`} <button type="button" class="quiet" @click=${() => inBackground(askName(true))}>${say`Another name …`}</button>`
        : say`Your name is asked for with the first tick.`
    }</p>
  </section>`;
}

/** All ticks, stale ones first, each with its place, name and date. */
export function tickList(
  desk: Desk,
  ticks: readonly Review[],
  go: (place: ReviewPlace) => void,
): TemplateResult | typeof nothing {
  if (ticks.length === 0) return nothing;
  const sorted = [...ticks].sort((a, b) => Number(b.stale) - Number(a.stale));
  const stale = ticks.filter((one) => one.stale).length;
  const line = (one: Review) => html`<li>
    ${mark(one.stale)} <a href="#" @click=${(event: Event) => {
      event.preventDefault();
      go(one.place);
    }}>${one.place.endsWith(".*") ? say`${one.place.slice(0, -2)}, whole page` : one.place}</a>
    <span class="soft">${tickWords(one)}</span>
    ${one.stale && !one.lost ? html`<button type="button" class="quiet" aria-label=${say`Tick ${one.place} again`} @click=${() => inBackground(tick(desk, one.place))}>${say`Tick again`}</button>` : nothing}
    <button type="button" class="quiet" aria-label=${say`Take the tick of ${one.place} back`} @click=${() => untick(desk, one.place)}>${say`Take back`}</button>
  </li>`;
  return html`<details ?open=${ticks.length <= 12}>
    <summary>${counted(ticks.length, "tick")}${stale > 0 ? say`, ${stale} stale` : ""}</summary>
    <ul class="ticks">${sorted.map(line)}</ul>
  </details>`;
}
