import { html, type TemplateResult } from "lit/html.js";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { type DialogHandle, openDialog } from "../dialogs/dialog";
import { Bench, type Part } from "./bench";
import { FromFile } from "./from-file";
import { OptionsBeside } from "./options-beside";
import { SolveBack } from "./solve-back";
import { SpreadOut } from "./spread-out";
import { TwoInputs } from "./two-inputs";
import { WhatMoves } from "./what-moves";

let lastShown = 0;

const tabId = (i: number): string => `study-tab-${i}`;

/** The row of tabs: arrows move along it, Tab leaves it. */
function tabs(parts: readonly Part[], shown: number, show: (i: number) => void): TemplateResult {
  const onKey = (event: KeyboardEvent) => {
    const steps: Readonly<Record<string, number>> = { ArrowRight: shown + 1, ArrowLeft: shown - 1, Home: 0, End: -1 };
    const to = steps[event.key];
    if (to === undefined) return;
    event.preventDefault();
    const next = (to + parts.length) % parts.length;
    show(next);
    document.getElementById(tabId(next))?.focus();
  };
  return html`<div class="study-tabs" role="tablist" aria-label=${say`Studies`} @keydown=${onKey}>${parts.map(
    (
      { name },
      i,
    ) => html`<button type="button" role="tab" id=${tabId(i)} aria-selected=${i === shown} aria-controls="study-part"
      tabindex=${i === shown ? 0 : -1} @click=${() => show(i)}>${name}</button>`,
  )}</div>`;
}

/** The place for studies: options side by side, and what a result would be if its inputs were otherwise. */
export async function openStudies(desk: Desk): Promise<void> {
  const bench = new Bench(desk);
  let handle: DialogHandle | undefined;
  const update = () => handle?.update();
  const parts: readonly Part[] = [
    new OptionsBeside(bench, update),
    new SolveBack(bench, update),
    new WhatMoves(bench, update),
    new SpreadOut(bench, update),
    new TwoInputs(bench, update),
    new FromFile(bench, update),
  ];
  const show = (i: number) => {
    if (i !== lastShown) parts[lastShown]?.leave();
    lastShown = i;
    update();
  };
  await openDialog(
    say`Studies`,
    (one) => {
      handle = one;
      return html`<button type="button" class="study-close" @click=${one.close}>${say`Close`}</button>
        ${tabs(parts, lastShown, show)}
        <section class="study" role="tabpanel" id="study-part" aria-labelledby=${tabId(lastShown)}>${parts[lastShown]?.show()}</section>`;
    },
    "whole",
  );
  handle = undefined;
  for (const part of parts) part.leave();
  bench.close();
}
