import { unsafeHTML } from "lit/directives/unsafe-html.js";
import { html, type TemplateResult } from "lit/html.js";
import { type Figure, isDrawn } from "../../figures/figure";

/** A figure, or the sentence why there is none. */
export const figureBox = (figure: Figure): TemplateResult =>
  isDrawn(figure)
    ? html`<figure><div class="drawing">${unsafeHTML(figure.svg)}</div><figcaption class="soft">${figure.title}</figcaption></figure>`
    : html`<p class="soft">${figure.sentence}</p>`;
