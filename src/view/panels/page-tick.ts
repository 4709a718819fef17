import { html, type TemplateResult } from "lit/html.js";
import { say } from "../../words/say";
import type { CellMark } from "../cell-marks";
import type { Desk } from "../desk";
import { staleMark, tickMark } from "../marks";
import { capital } from "../shown/count-words";

const isStale = ({ kind }: CellMark): boolean => kind.includes("stale");

const shape = (mark: CellMark): TemplateResult => (isStale(mark) ? staleMark : tickMark);

/** The tick of the whole page, in words, beside its title. */
export const titleTick = ({ marks, page }: Desk): readonly TemplateResult[] =>
  marks
    .ofPage(page.id)
    .map(
      (mark) =>
        html`<p class="page-tick ${isStale(mark) ? "open" : "holds"}">${shape(mark)} ${say`Whole page`}: ${mark.words}.</p>`,
    );

/** The same in the list of pages, short; who ticked it and when is there on hovering, and for those who listen. */
export const listedTick = ({ marks }: Desk, page: string): readonly TemplateResult[] =>
  marks
    .ofPage(page)
    .map(
      (mark) =>
        html`<small class="page-tick ${isStale(mark) ? "open" : "holds"}" title=${capital(mark.words)}>${shape(mark)} ${isStale(mark) ? say`tick stale` : say`reviewed`}<span class="unseen">: ${mark.words}</span></small>`,
    );
