import { html, nothing, type TemplateResult } from "lit/html.js";
import type { Numbers } from "../../course/numbers";
import { shown } from "../../course/shown";
import { type WorkingStep, workingOf } from "../../course/working";
import { say } from "../../words/say";
import { callSteps } from "../panels/call-steps";
import { capital } from "../shown/count-words";

const spaced = (formula: string): string => formula.replace(/,(?=\S)/g, ", ");

/** The way to the answers, one step after the other: first the formula, then its numbers and how they come about. */
export class Steps {
  /** Half steps that were asked for: a formula, then what it comes to. */
  private asked = 0;

  constructor(private readonly update: () => void) {}

  show(numbers: Numbers, which: string): TemplateResult {
    const all = workingOf(numbers);
    const seen = all.slice(0, Math.ceil(this.asked / 2));
    const isOver = this.asked >= 2 * all.length;
    const go = (asked: number) => () => {
      this.asked = asked;
      this.update();
    };
    const next = this.asked % 2 === 0 ? say`the next step` : say`what it comes to`;
    return html`<section class="working" aria-label=${say`Working`}>
      <h2>${say`Working, ${which}`}</h2>
      <ol class="way" aria-live="polite">${seen.map((step, i) => this.step(step, this.asked >= 2 * (i + 1)))}</ol>
      <div class="choices">
        ${isOver ? nothing : html`<button type="button" @click=${go(this.asked + 1)}>${this.asked === 0 ? say`Show the first step` : say`Show ${next}`}</button>`}
        <span class="soft">${say`${Math.ceil(this.asked / 2)} of ${all.length} steps`}</span>
        ${this.asked === 0 ? nothing : html`<button type="button" class="quiet" @click=${go(0)}>${say`Hide the steps again`}</button>`}
      </div>
    </section>`;
  }

  private step({ name, about, unit, formula, numbers, value, calls }: WorkingStep, isWhole: boolean): TemplateResult {
    const worth = shown(typeof value === "number" ? Number(value.toPrecision(5)) : value, unit);
    return html`<li>
      <p><b>${capital(about)}</b></p>
      <p class="formula">${name} = ${spaced(formula)}</p>
      ${
        isWhole
          ? html`<p class="read soft">${name} = ${spaced(numbers)}</p>
            <p class="result">= ${worth}</p>
            ${calls.map(({ formula: call, explanation }) => html`<details><summary>${say`Inside ${explanation.title}`}</summary>${callSteps({ name: spaced(call), used: true, explanation, refusal: undefined })}</details>`)}`
          : nothing
      }
    </li>`;
  }
}
