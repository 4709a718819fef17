import { html, type TemplateResult } from "lit/html.js";
import { type Cell, cellName } from "../block";

/** A part of a sentence that leads to a cell. */
export const cellLink = (page: string, cell: Cell, words: string, go: () => void): TemplateResult => {
  const follow = (event: Event) => {
    event.preventDefault();
    go();
  };
  return html`<a href=${`#${encodeURIComponent(page)}!${cellName(cell)}`} @click=${follow}>${words}</a>`;
};
