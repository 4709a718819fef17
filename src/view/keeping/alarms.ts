import { html, nothing, type TemplateResult } from "lit/html.js";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { cornerMark } from "../marks";
import type { Stored } from "../offline/offline";
import { isAlarming, type Safety } from "./safety";

/** What can be done about it when the work is not safe, or a newer version of the program waits. */
export interface Remedies {
  readonly save: () => void;
  /** Opens the list of notebooks, where some can be erased to make room. */
  readonly notebooks: () => void;
  /** Offers to the database once more what it refused. */
  readonly tryAgain: () => void;
  /** Takes the notebook from the window that has it. */
  readonly takeOver: () => void;
  /** Shows what the window that has the notebook has changed since. */
  readonly reread: () => void;
  /** Takes the newer version, once the work is kept. */
  readonly takeNewer: () => void;
}

const button = (label: string, act: () => void, isMain = false): TemplateResult =>
  html`<button type="button" class=${isMain ? "main" : ""} @click=${act}>${label}</button>`;

function buttons(kind: Safety["kind"], remedies: Remedies): TemplateResult {
  const save = button(say`Save to a file`, remedies.save, true);
  const takeOver = button(say`Take it over`, remedies.takeOver, kind === "closed");
  if (kind === "taken") return html`${save} ${takeOver}`;
  if (kind === "closed") return takeOver;
  if (kind === "behind") return html`${button(say`Show what was changed`, remedies.reread, true)} ${takeOver}`;
  return html`${save} ${button(say`Try again`, remedies.tryAgain)} ${button(say`Notebooks …`, remedies.notebooks)}`;
}

/** What is said of a newer version of the program, and what its button is called. */
function newsOf(stored: Stored): readonly [sentence: string, label: string] | undefined {
  if (stored === "newer") {
    return [say`A newer version of this program is ready. It waits until it is taken.`, say`Take the newer version`];
  }
  if (stored !== "replaced") return undefined;
  return [
    say`Another window has taken a newer version of this program, and parts of this one may be missing: load the page again.`,
    say`Load the page again`,
  ];
}

/** Lines above the page: that the work is not kept, or not here, and that a newer version waits. Each with its remedy. */
export function alarms({ safety }: Desk, stored: Stored, remedies: Remedies): TemplateResult {
  const [sentence, label] = newsOf(stored) ?? [];
  const line = isAlarming(safety)
    ? html`<p class="alarm" role="alert"><span class="short">${cornerMark}</span> <span>${safety.sentence}</span> ${buttons(safety.kind, remedies)}</p>`
    : nothing;
  // The place for news of the program is there before the news, so that it is read out.
  return html`<div class="alarms">${line}<div role="status">${
    sentence && label
      ? html`<p class="alarm"><span>${sentence}</span> ${button(label, remedies.takeNewer)}</p>`
      : nothing
  }</div></div>`;
}
