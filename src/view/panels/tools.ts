import { html, nothing, type TemplateResult } from "lit/html.js";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { redo, undo } from "../edits/back";
import type { Wishes } from "../wishes";

const arrow = (flip: boolean): TemplateResult =>
  html`<svg class="mark" viewBox="0 0 15 15" aria-hidden="true"><path d=${flip ? "M9.5 2 13 5.5 9.5 9M13 5.5H6A4 4 0 0 0 6 13H8" : "M5.5 2 2 5.5 5.5 9M2 5.5H9A4 4 0 0 1 9 13H7"} fill="none" stroke="currentColor" stroke-width="1.5" /></svg>`;

/**
 * The few things that are done to a page, at its top right.
 *
 * @param beside what stands beside the cells in the place of drawing, working and notes.
 * @param isTrainee leaves out what looks over the whole notebook, and with it at the solutions of tasks.
 */
export function tools(
  desk: Desk,
  wishes: Pick<Wishes, "menu" | "options" | "units" | "paper" | "audit" | "functions" | "studies">,
  beside: string | undefined,
  isTrainee: boolean,
): TemplateResult {
  const steps = desk.live?.steps;
  const menuUnder = (button: HTMLElement) => {
    const { left, bottom } = button.getBoundingClientRect();
    wishes.menu(left, bottom + 2);
  };
  const opens = (name: string, open: () => void) =>
    html`<button type="button" ?disabled=${!desk.live} aria-haspopup="dialog" @click=${open}>${name}</button>`;
  return html`<div class="tools" role="group" aria-label=${say`Changes`}>
    <button type="button" class="step" ?disabled=${!steps?.undo} title=${steps?.undo ? say`Undo ${steps.undo} (Ctrl+Z)` : say`Nothing to undo`} @click=${() => undo(desk)}>
      ${arrow(false)} ${say`Undo`}<span class="what">${steps?.undo ? ` ${steps.undo}` : ""}</span>
    </button>
    <button type="button" class="step" ?disabled=${!steps?.redo} title=${steps?.redo ? say`Redo ${steps.redo} (Ctrl+Y)` : say`Nothing to redo`} @click=${() => redo(desk)}>
      ${arrow(true)} ${say`Redo`}<span class="what">${steps?.redo ? ` ${steps.redo}` : ""}</span>
    </button>
    <button type="button" ?disabled=${!desk.live} aria-haspopup="menu" @click=${(event: Event) => menuUnder(event.currentTarget as HTMLElement)}>${say`Rows and cells`}</button>
    ${isTrainee ? nothing : opens(say`Options`, wishes.options)} ${isTrainee ? nothing : opens(say`Studies`, wishes.studies)}
    ${opens(say`Units`, wishes.units)}
    ${isTrainee ? nothing : opens(say`Paper`, wishes.paper)}
    ${opens(say`Functions`, () => wishes.functions())}
    ${
      isTrainee
        ? nothing
        : html`<button type="button" ?disabled=${!desk.live} aria-pressed=${beside === say`Audit` ? "true" : "false"} @click=${wishes.audit}>${say`Audit`}</button>`
    }
  </div>`;
}
