// Past 150 lines: the question and both forms of its answer stand on one screen.

import { html, nothing, type TemplateResult } from "lit/html.js";
import { twoInputsMap } from "../../figures/studies/two-inputs-map";
import { Refusal } from "../../notebook/refusal";
import type { Plain } from "../../study/kernel/plain";
import { twoInputsSentence } from "../../study/sentences";
import type { StudyInput, Subject } from "../../study/subject";
import type { Axis, TwoInputsAnswer } from "../../study/two-inputs";
import { valueWords } from "../../study/words";
import { withDecimalSign } from "../../words/decimal-sign";
import { say } from "../../words/say";
import { inBackground } from "../background";
import { numberText } from "../shown/number-text";
import { unitText } from "../shown/unit-text";
import { chooseOption, chooseResult } from "./about-option";
import type { Bench, Part } from "./bench";
import { byPage, chooseFrom, typed } from "./choose";
import { figureBox } from "./figure-box";
import { Running } from "./running";
import { neededNumber, typedNumber } from "./typed-number";

type Side = "across" | "down";
interface TypedAxis {
  readonly input: string;
  readonly low: string;
  readonly high: string;
}

const blankAxis: TypedAxis = { input: "", low: "", high: "" };
const mostParts = 60;

/** A result over two inputs, with the region in which all checks hold. */
export class TwoInputs implements Part {
  readonly name = say`Two inputs`;
  private axes: Readonly<Record<Side, TypedAxis>> = { across: blankAxis, down: blankAxis };
  private parts = "20";
  private open = 0;
  private readonly running: Running<TwoInputsAnswer>;

  constructor(
    private readonly bench: Bench,
    private readonly update: () => void,
  ) {
    this.running = new Running(update);
  }

  leave(): void {
    this.running.clear();
  }

  show(): TemplateResult {
    const changed = () => this.changed();
    const subject = this.subject();
    if (typeof subject === "string") {
      return html`<form class="ask">${chooseOption(this.bench, changed)}</form><p class="verdict-line short" role="status">${subject}</p>`;
    }
    const chosen = this.chosen(subject);
    const { answer } = this.running;
    const axis = (side: Side, words: string): TemplateResult => {
      const input = chosen[side];
      const set = (change: Partial<TypedAxis>) =>
        this.changed(
          () => (this.axes = { ...this.axes, [side]: { ...this.axes[side], input: input?.name ?? "", ...change } }),
        );
      return html`<fieldset><legend>${words}</legend>
        ${chooseFrom(say`Input`, byPage(subject.inputs.filter(({ value, choices }) => typeof value === "number" || choices)), input?.name ?? "", (name) => set({ input: name, low: "", high: "" }))}
        ${typed(say`from`, this.axes[side].low, (low) => set({ low }), { size: 6, placeholder: withDecimalSign(String(input?.low ?? "")) })}
        ${typed(say`to`, this.axes[side].high, (high) => set({ high }), { size: 6, placeholder: withDecimalSign(String(input?.high ?? "")) })}
      </fieldset>`;
    };
    return html`<form class="ask" @submit=${(event: Event) => this.submit(event, subject)}>
        ${chooseOption(this.bench, changed)} ${chooseResult(this.bench, changed)}
        ${axis("across", say`Across`)} ${axis("down", say`Upwards`)}
        ${typed(say`Steps`, this.parts, (parts) => this.changed(() => (this.parts = parts)), { size: 4 })}
        ${this.running.button(say`Calculate`, !chosen.across || !chosen.down)}
      </form>
      ${this.running.line(say`Blank limits are those of the notebook, else half to twice the value now; a list is taken as it is.`)}
      ${answer ? this.answer(answer) : nothing}`;
  }

  private changed(change?: () => void): void {
    change?.();
    this.running.clear();
    this.update();
  }

  private subject(): Subject | string {
    const found = this.bench.resultWithChecks();
    if (typeof found === "string") return found;
    this.open = found.open;
    return found.subject;
  }

  /** What is chosen, else two inputs with limits in the notebook. */
  private chosen({ inputs }: Subject): Readonly<Record<Side, StudyInput | undefined>> {
    const limited = inputs.filter(
      ({ value, low, high }) => typeof value === "number" && low !== undefined && high !== undefined,
    );
    // One of an estimate's three points goes past the others before its own limits are reached.
    const free = limited.filter(({ name }) => !/_(low|likely|high)$/.test(name));
    const usual = free.length > 1 ? free : limited;
    const named = (side: Side) => inputs.find(({ name }) => name === this.axes[side].input);
    const across = named("across") ?? usual.find((one) => one !== named("down"));
    const down = named("down") ?? usual.find((one) => one !== across);
    return { across, down };
  }

  private axis(subject: Subject, side: Side, parts: number): Axis {
    const input = this.chosen(subject)[side];
    const { low: from, high: to } = this.axes[side];
    const [low, high] = [typedNumber(say`from`, from), typedNumber(say`to`, to)];
    const range = { ...(low !== undefined && { low }), ...(high !== undefined && { high }) };
    return {
      input: input ? subject.inputs.indexOf(input) : -1,
      parts,
      ...(Object.keys(range).length > 0 && { range }),
    };
  }

  private submit(event: Event, subject: Subject): void {
    event.preventDefault();
    if (this.running.isRunning) {
      this.running.cancel();
      return;
    }
    try {
      const parts = neededNumber(say`Steps`, this.parts);
      if (!Number.isInteger(parts) || parts < 2 || parts > mostParts) {
        throw new Refusal(say`Steps ${parts} (allowed whole numbers from 2 to ${mostParts}).`);
      }
      const { across, down } = this.chosen(subject);
      if (across === down) throw new Refusal(say`Both inputs are the same; choose two.`);
      const question = {
        across: this.axis(subject, "across", parts),
        down: this.axis(subject, "down", parts),
        result: 0,
      };
      inBackground(
        this.running.start((wishes) => this.bench.ask("two inputs", subject, question, wishes), twoInputsSentence),
      );
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      this.running.say(problem.message, true);
    }
  }

  private answer(answer: TwoInputsAnswer): TemplateResult {
    const { across, down, result, results, holds } = answer;
    const head = (value: Plain): string => (typeof value === "number" ? numberText(value) : valueWords(value, ""));
    const unit = (one: string) => (one === "" || one === "1" ? "" : `, ${unitText(one)}`);
    // The table stands as the drawing does: low values at the bottom.
    const lines = down.values.map((value, i) => ({ value, i })).reverse();
    return html`${figureBox(twoInputsMap(answer))}
      <p class="soft">${say`${result.name}${unit(result.unit)}; a tick says that the checks hold there.${this.open > 0 ? say` Left out: ${this.open} checks that are open as the notebook stands.` : ""}`}</p>
      <div class="study-table" tabindex="0" role="region" aria-label=${say`${result.name} over two inputs`}><table class="map">
        <thead><tr><th scope="col">${down.name}${unit(down.unit)} \\ ${across.name}${unit(across.unit)}</th>${across.values.map((value) => html`<th scope="col" class="right">${head(value)}</th>`)}</tr></thead>
        <tbody>${lines.map(
          ({ value, i }) =>
            html`<tr><th scope="row" class="right">${head(value)}</th>${results[i]?.map(
              (one, k) =>
                html`<td class="right ${holds[i]?.[k] ? "inside" : ""}">${Number.isNaN(one) ? say`no result` : numberText(one)}${holds[i]?.[k] ? " ✓" : nothing}</td>`,
            )}</tr>`,
        )}</tbody>
      </table></div>`;
  }
}
