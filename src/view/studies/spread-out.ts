// Past 150 lines: what varies, how it is drawn, and the answer stand on one screen.

import { html, nothing, type TemplateResult } from "lit/html.js";
import { Refusal } from "../../notebook/refusal";
import { rowsNamed } from "../../study/rows";
import { spreadSentence } from "../../study/sentences";
import type { SpreadAnswer } from "../../study/spread/spread";
import { type StoredSpread, storedSpread, storeSpread } from "../../study/stored";
import type { StudyInput, Subject } from "../../study/subject";
import { heldStill, variedTexts } from "../../study/varied";
import { readShape } from "../../study/vary";
import { valueWords } from "../../study/words";
import { withDecimalSign } from "../../words/decimal-sign";
import { say } from "../../words/say";
import { inBackground } from "../background";
import { chooseOption, chooseResult } from "./about-option";
import type { Bench, Part } from "./bench";
import { byPage, chooseFrom, typed } from "./choose";
import { Running } from "./running";
import { spreadTable } from "./spread-answer";
import {
  aboutNow,
  isMeasured,
  readSettings,
  shapeFields,
  shapeText,
  type TypedSettings,
  type TypedShape,
} from "./spread-settings";

/** How results spread when several inputs turn out otherwise at once. */
export class SpreadOut implements Part {
  readonly name = say`Spread`;
  /** What is typed for each input, by name; a blank text holds it still. */
  private readonly shapes = new Map<string, TypedShape>();
  private settings: TypedSettings;
  private next = "";
  private shown = 0;
  private open = 0;
  private readonly running: Running<SpreadAnswer>;

  constructor(
    private readonly bench: Bench,
    private readonly update: () => void,
  ) {
    this.running = new Running(update);
    const { trials, common, seed } = storedSpread(bench.desk.notebook);
    this.settings = { trials: String(trials), common: withDecimalSign(String(common)), seed: String(seed) };
  }

  leave(): void {
    this.running.clear();
  }

  show(): TemplateResult {
    const subject = this.subject();
    const changed = () => this.changed();
    if (typeof subject === "string") {
      return html`<form class="ask">${chooseOption(this.bench, changed)}</form><p class="verdict-line short" role="status">${subject}</p>`;
    }
    const shapes = this.shapesOf(subject);
    const varied = subject.inputs.filter(({ name }) => shapes.has(name));
    const { answer } = this.running;
    return html`<form class="ask" @submit=${(event: Event) => this.submit(event, subject)}>
        ${chooseOption(this.bench, changed)} ${chooseResult(this.bench, changed)}
        ${typed(say`Trials`, this.settings.trials, (trials) => this.changed(() => (this.settings = { ...this.settings, trials })), { size: 7 })}
        ${typed(say`Common cause, 0 to 1`, this.settings.common, (common) => this.changed(() => (this.settings = { ...this.settings, common })), { size: 5 })}
        ${typed(say`Seed`, this.settings.seed, (seed) => this.changed(() => (this.settings = { ...this.settings, seed })), { size: 8 })}
        ${this.running.button(say`Spread`, varied.length === 0)}
      </form>
      ${this.running.line(
        varied.length === 0
          ? say`Nothing varies yet: add inputs below, each with low, likely and high.`
          : say`${varied.length} inputs vary at once; what is typed here is kept in the notebook with the seed, so that the same numbers come again.`,
      )}
      ${answer ? spreadTable(answer, { shown: this.shown, draw: (i) => this.draw(i), open: this.open }) : nothing}
      ${this.inputs(subject, varied, shapes)}
      <p class="soft">${say`Sampling: each input's cases are cut into as many equally likely parts as there are trials, and each part is met once, in random order. Common cause: how far all varied inputs turn out high or low together.`}</p>`;
  }

  private changed(change?: () => void): void {
    change?.();
    this.running.clear();
    this.update();
  }

  /** The result and all checks that have a number. */
  private subject(): Subject | string {
    const found = this.bench.resultWithChecks();
    if (typeof found === "string") return found;
    this.open = found.open;
    return found.subject;
  }

  /** What varies: the notebook's own and stored spreads, then what is typed here. */
  private shapesOf(subject: Subject): Map<string, TypedShape> {
    const { notebook } = this.bench.desk;
    const there = Object.entries(storedSpread(notebook).vary).filter(([pattern]) => {
      try {
        return rowsNamed(notebook, pattern).length > 0;
      } catch (problem) {
        if (!(problem instanceof Refusal)) throw problem;
        return false;
      }
    });
    const stored = new Map(
      [...variedTexts(notebook, subject, there)].flatMap(([place, text]): [string, TypedShape][] => {
        const name = subject.inputs[place]?.name;
        return name === undefined || text.trim() === heldStill ? [] : [[name, shapeFields(text)]];
      }),
    );
    for (const [name, shape] of this.shapes) {
      if (shape === still) stored.delete(name);
      else if (subject.inputs.some((input) => input.name === name)) stored.set(name, shape);
    }
    return stored;
  }

  private inputs(
    subject: Subject,
    varied: readonly StudyInput[],
    shapes: ReadonlyMap<string, TypedShape>,
  ): TemplateResult {
    const set = (name: string, shape: TypedShape) => this.changed(() => this.shapes.set(name, shape));
    const others = subject.inputs.filter(
      ({ name, value, choices }) => typeof value === "number" && !choices && !shapes.has(name),
    );
    const next = others.find(({ name }) => name === this.next) ?? others[0];
    const pageOf = ({ name }: StudyInput) => name.slice(0, name.lastIndexOf("."));
    const ofPage = next ? others.filter((input) => pageOf(input) === pageOf(next) && isMeasured(input)) : [];
    const add = (list: readonly StudyInput[], shape: (input: StudyInput) => TypedShape) =>
      this.changed(() => {
        for (const input of list) this.shapes.set(input.name, shape(input));
      });
    const holdAll = () =>
      this.changed(() => {
        for (const { name } of varied) this.shapes.set(name, still);
      });
    const field = (input: StudyInput, key: keyof TypedShape, words: string, size: number) => {
      const shape = shapes.get(input.name) ?? still;
      return html`<td><input aria-label=${say`${words} of ${input.name}`} size=${size} autocomplete="off" .value=${shape[key]}
        @input=${(event: Event) => set(input.name, { ...shape, [key]: (event.target as HTMLInputElement).value })} /></td>`;
    };
    return html`<h3>${say`Inputs that vary`}</h3>
      ${
        varied.length === 0
          ? nothing
          : html`<div class="study-table low" tabindex="0" role="region" aria-label=${say`Inputs that vary`}><table>
            <thead><tr><th scope="col">${say`Input`}</th><th scope="col">${say`Now`}</th><th scope="col">${say`Low`}</th><th scope="col">${say`Likely`}</th><th scope="col">${say`High`}</th><th scope="col">${say`or stated`}</th><th></th></tr></thead>
            <tbody>${varied.map(
              (input) => html`<tr>
                <th scope="row">${input.quantity} <span class="soft">${input.name}</span></th>
                <td>${valueWords(input.value, input.unit)}</td>
                ${field(input, "low", say`Low`, 8)} ${field(input, "likely", say`Likely`, 8)} ${field(input, "high", say`High`, 8)}
                ${field(input, "stated", say`Stated spread`, 8)}
                <td><button type="button" aria-label=${say`Hold ${input.name} still`} @click=${() => set(input.name, still)}>${say`Hold still`}</button></td>
              </tr>`,
            )}</tbody></table></div>`
      }
      <div class="ask">
        ${chooseFrom(say`Vary also`, byPage(others), next?.name ?? "", (name) => {
          this.next = name;
          this.update();
        })}
        <button type="button" ?disabled=${!next} @click=${() => next && add([next], aboutNow)}>${say`Add the input`}</button>
        <button type="button" ?disabled=${ofPage.length === 0} @click=${() => add(ofPage, () => shapeFields("±5%"))}>${say`Add all ${ofPage.length} measured ones of ${next ? pageOf(next) : say`its page`} at ±5%`}</button>
        <button type="button" ?disabled=${varied.length === 0} @click=${holdAll}>${say`Hold all still`}</button>
      </div>
      <p class="soft">${say`Without a likely value every value from low to high is alike. Stated: ±5% or ±2 about the value now, 12±0.5 for a normal spread.`}</p>`;
  }

  private submit(event: Event, subject: Subject): void {
    event.preventDefault();
    if (this.running.isRunning) {
      this.running.cancel();
      return;
    }
    try {
      const settings = readSettings(this.settings);
      const shapes = this.shapesOf(subject);
      const varied = subject.inputs.flatMap((input, place) => {
        const shape = shapes.get(input.name);
        return shape ? [{ input: place, shape: readShape(input, shapeText(shape)) }] : [];
      });
      this.keep({ ...settings, vary: this.varyText(subject, shapes) });
      this.shown = 0;
      // Keeping it changed no cell: the subject is still the same.
      const question = { ...settings, varied };
      inBackground(this.running.start((wishes) => this.bench.ask("spread", subject, question, wishes), spreadSentence));
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      this.running.say(problem.message, true);
    }
  }

  /** What is stored for other results stays; what is held still here and spread otherwise is stored as held. */
  private varyText({ inputs }: Subject, shapes: ReadonlyMap<string, TypedShape>): Record<string, string> {
    const { vary } = storedSpread(this.bench.desk.notebook);
    const held = [...this.shapes]
      .filter(([, shape]) => shape === still)
      .map(([name]): [string, string] => [name, heldStill]);
    // Without a word they would vary again by a pattern, or by what the notebook says of their row.
    const needsWord =
      Object.keys(vary).some((name) => name.includes("*")) || inputs.some(({ likely }) => likely !== undefined);
    const kept = Object.entries(vary).filter(([name]) => !held.some(([one]) => one === name));
    return Object.fromEntries([
      ...kept,
      ...[...shapes].map(([name, shape]): [string, string] => [name, shapeText(shape)]),
      ...(needsWord ? held : []),
    ]);
  }

  private keep(spread: StoredSpread): void {
    const { desk } = this.bench;
    if (storeSpread(desk.notebook, spread) === desk.notebook || desk.closed !== undefined) return;
    desk.apply(say`how inputs spread`, (notebook) => storeSpread(notebook, spread));
  }

  private draw(i: number): void {
    this.shown = i;
    this.update();
  }
}

/** An input that does not vary. */
const still: TypedShape = { low: "", likely: "", high: "", stated: "" };
