// Past 150 lines: two questions about one input, with their answers and the step that writes them.

import { html, nothing, type TemplateResult } from "lit/html.js";
import { setCells } from "../../notebook/edit-cells";
import { Refusal } from "../../notebook/refusal";
import type { Plain } from "../../study/kernel/plain";
import { valueText } from "../../study/options/print";
import { checkRows } from "../../study/rows";
import type { SmallestAnswer } from "../../study/smallest";
import type { Solution, SolveAnswer } from "../../study/solve";
import type { StudyInput, Subject } from "../../study/subject";
import { quantityWords, valueWords } from "../../study/words";
import { withDecimalSign } from "../../words/decimal-sign";
import { listed } from "../../words/isolated";
import { say } from "../../words/say";
import { inBackground } from "../background";
import { one } from "../block";
import { unitText } from "../shown/unit-text";
import { chooseOption, chooseResult } from "./about-option";
import type { Bench, Part } from "./bench";
import { byPage, choose, chooseFrom, typed } from "./choose";
import { Running } from "./running";
import { neededNumber, typedNumber } from "./typed-number";

type Aim = "value" | "checks";

type Answer =
  | { readonly aim: "value"; readonly subject: Subject; readonly place: number; readonly found: SolveAnswer }
  | { readonly aim: "checks"; readonly subject: Subject; readonly place: number; readonly found: SmallestAnswer };

/** From a result back to the input that gives it. */
export class SolveBack implements Part {
  readonly name = say`Solve back`;
  private aim: Aim = "value";
  private wanted = "";
  private input = "";
  private enough: "at least" | "at most" = "at least";
  private low = "";
  private high = "";
  private readonly running: Running<Answer>;

  constructor(
    private readonly bench: Bench,
    private readonly update: () => void,
  ) {
    this.running = new Running(update);
    const { page, block } = bench.desk;
    const key = page.rows[block.from.row]?.[1] ?? "";
    this.input = `${page.name}.${key}`;
  }

  leave(): void {
    this.running.clear();
  }

  show(): TemplateResult {
    const subject = this.subject();
    if (typeof subject === "string") {
      return html`<form class="ask">${chooseOption(this.bench, () => this.changed())}${this.aims()}</form>
        <p class="verdict-line short" role="status">${subject}</p>`;
    }
    const input = this.chosen(subject);
    const result = subject.results[0];
    const isList = input?.choices !== undefined && this.low === "" && this.high === "";
    return html`<form class="ask" @submit=${(event: Event) => this.submit(event, subject)}>
        ${chooseOption(this.bench, () => this.changed())}
        ${this.aims()}
        ${
          this.aim === "value"
            ? html`${chooseResult(this.bench, () => this.changed())}
              ${
                isList
                  ? choose(
                      say`is to be`,
                      [
                        { value: "at least", label: say`at least` },
                        { value: "at most", label: say`at most` },
                      ],
                      this.enough,
                      (word) => this.changed(() => (this.enough = word === "at most" ? "at most" : "at least")),
                    )
                  : nothing
              }
              ${typed(`${isList ? "" : say`is to be`} ${result && result.unit !== "1" ? unitText(result.unit) : ""}`.trim() || say`wanted value`, this.wanted, (text) => this.changed(() => (this.wanted = text)))}`
            : nothing
        }
        ${chooseFrom(say`by changing`, byPage(subject.inputs.filter(canMove)), input?.name ?? "", (name) =>
          this.changed(() => {
            this.input = name;
            this.low = "";
            this.high = "";
          }),
        )}
        ${typed(say`from`, this.low, (text) => this.changed(() => (this.low = text)), { placeholder: rangeEnd(input?.low) })}
        ${typed(say`to`, this.high, (text) => this.changed(() => (this.high = text)), { placeholder: rangeEnd(input?.high) })}
        ${this.running.button(this.aim === "value" ? say`Solve back` : say`Find the smallest`, input === undefined)}
      </form>
      ${this.running.line(this.hint(input))}
      ${this.answer()}`;
  }

  private aims(): TemplateResult {
    return choose(
      say`Find`,
      [
        { value: "value", label: say`what gives a result` },
        { value: "checks", label: say`the smallest with which all checks hold` },
      ],
      this.aim,
      (aim) => this.changed(() => (this.aim = aim === "checks" ? "checks" : "value")),
    );
  }

  private hint(input: StudyInput | undefined): string {
    if (!input) return say`No typed input of this option moves it.`;
    const where = input.choices
      ? say`It is picked from a list of ${input.choices.length}.`
      : input.low !== undefined && input.high !== undefined
        ? say`The notebook expects ${quantityWords(input.low, "")} to ${quantityWords(input.high, input.unit)}.`
        : say`The notebook has no limits for it: half to twice its value is looked through.`;
    return say`${input.name} is ${valueWords(input.value, input.unit)} now. ${where}`;
  }

  private changed(change?: () => void): void {
    change?.();
    this.running.clear();
    this.update();
  }

  private subject(): Subject | string {
    try {
      const { bench } = this;
      return bench.subject(this.aim === "value" ? [bench.resultRow()] : checkRows(bench.desk.notebook));
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      return problem.message;
    }
  }

  private chosen(subject: Subject): StudyInput | undefined {
    const inputs = subject.inputs.filter(canMove);
    return (
      inputs.find(({ name }) => name === this.input) ??
      inputs.find(({ value, low }) => typeof value === "number" && low !== undefined) ??
      inputs[0]
    );
  }

  private submit(event: Event, subject: Subject): void {
    event.preventDefault();
    if (this.running.isRunning) {
      this.running.cancel();
      return;
    }
    const input = this.chosen(subject);
    if (!input) return;
    const place = subject.inputs.indexOf(input);
    try {
      const [low, high] = [typedNumber("from", this.low), typedNumber("to", this.high)];
      const asked = { ...(low !== undefined && { low }), ...(high !== undefined && { high }) };
      const range = Object.keys(asked).length > 0 ? { range: asked } : {};
      const { bench, enough } = this;
      const words = ({ found }: Answer) => found.sentence;
      if (this.aim === "checks") {
        const ask = { input: place, ...range };
        inBackground(
          this.running.start(
            async (wishes) => ({
              aim: "checks",
              subject,
              place,
              found: await bench.ask("smallest", subject, ask, wishes),
            }),
            words,
          ),
        );
        return;
      }
      const wanted = neededNumber(say`The value that is wanted`, this.wanted);
      const ask = { input: place, result: 0, wanted, enough, ...range };
      inBackground(
        this.running.start(
          async (wishes) => ({ aim: "value", subject, place, found: await bench.ask("solve", subject, ask, wishes) }),
          words,
        ),
      );
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      this.running.say(problem.message, true);
    }
  }

  private answer(): TemplateResult | typeof nothing {
    const { answer } = this.running;
    if (!answer) return nothing;
    const input = answer.subject.inputs[answer.place] as StudyInput;
    const values: readonly Plain[] =
      answer.aim === "value"
        ? answer.found.solutions.map((solution: Solution) => solution.input)
        : answer.found.value === undefined
          ? []
          : [answer.found.value];
    return html`<ul class="found">${values.map(
      (value) => html`<li>
        <span>${input.name} <b>${valueWords(value, input.unit)}</b> ${fullText(value, input.unit)}</span>
        <button type="button" ?disabled=${value === input.value} @click=${() => this.write(answer, value)}>${say`Write it into the cell of ${this.bench.option}`}</button>
      </li>`,
    )}</ul>
    ${
      answer.aim === "checks" && answer.found.unmoved.length + answer.found.open.length > 0
        ? html`<p class="soft">${answer.found.unmoved.length > 0 ? html`${say`Short whatever it is: ${listed(answer.found.unmoved)}.`} ` : nothing}${answer.found.open.length > 0 ? html`${say`Open: ${listed(answer.found.open)}.`}` : nothing}</p>`
        : nothing
    }`;
  }

  private write({ subject, place }: Answer, value: Plain): void {
    const { desk, option } = this.bench;
    const input = subject.inputs[place] as StudyInput;
    const cell = subject.chain.inputs[place]?.cell;
    const page = cell && desk.notebook.pages[cell.sheet];
    if (!cell || !page) return;
    const { row, column } = cell;
    // The step remembers where it was made, so that undo shows the cell.
    desk.select(one({ row, column }), page.id);
    const isWritten = desk.apply(say`${input.name} solved back`, (notebook) =>
      setCells(notebook, [{ page: page.id, row, column, text: valueText(value) }]),
    );
    this.running.clear();
    if (isWritten) {
      this.running.say(
        say`${input.name} of ${option} is now ${valueWords(value, input.unit)}; one step, undo takes it back.`,
      );
    } else this.running.say(desk.notice.sentence, true);
  }
}

/** Words without a list leave nothing to try. */
const canMove = ({ value, choices }: StudyInput): boolean => typeof value === "number" || choices !== undefined;

/** Every digit that is written, where the sentence rounds. */
const fullText = (value: Plain, unit: string): TemplateResult | typeof nothing =>
  valueWords(value, unit).startsWith(valueText(value))
    ? nothing
    : html`<span class="soft">${say`in full ${valueText(value)}`}</span>`;

const rangeEnd = (value: number | undefined): string => (value === undefined ? "" : withDecimalSign(String(value)));
