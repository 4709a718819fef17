import { unsafeHTML } from "lit/directives/unsafe-html.js";
import { html, nothing, type TemplateResult } from "lit/html.js";
import { isGiven } from "../../course/asked";
import { taskAtWork } from "../../course/at-work";
import { type Numbers, numbersTried, scalarOf, type Tried } from "../../course/numbers";
import type { Scalar } from "../../course/scalar";
import { shown } from "../../course/shown";
import type { Task } from "../../course/task";
import { movedBy } from "../../course/working";
import { isDrawn } from "../../figures/figure";
import { say } from "../../words/say";
import { cornerMark, openMark } from "../marks";
import { Curve } from "./curve";
import { figureFor } from "./rule-figure";
import { slider } from "./slider";
import { Steps } from "./steps";

/** A rule to be tried out: sliders on the task's inputs, what follows from them, a figure, and the steps on demand. */
export class RuleAtWork {
  private readonly task: Task;
  private readonly own: Numbers;
  private slid: ReadonlyMap<string, Scalar>;
  /** The last numbers that came to something; they stay on the screen while others do not. */
  private tried: Tried;
  private refusal = "";
  private moved: string;
  private readonly steps: Steps;
  private readonly curve: Curve;

  /** @param of the task with the trainee's numbers. */
  constructor(
    readonly of: Numbers,
    private readonly update: () => void,
  ) {
    this.own = taskAtWork(of);
    this.task = this.own.task;
    this.slid = this.own.drawn;
    this.tried = { numbers: this.own, remark: undefined };
    this.moved = this.task.drawn.find(({ amount }) => amount.kind === "steps")?.name ?? this.task.drawn[0]?.name ?? "";
    this.steps = new Steps(update);
    this.curve = new Curve(this.task);
  }

  show(): TemplateResult {
    const { numbers, remark } = this.tried;
    const isOwn = this.isOwn();
    const figure = figureFor(numbers);
    return html`<section class="rule-at-work" aria-label=${say`The rule at work`}>
      <h2>${say`The rule at work`}</h2>
      <p class="soft">${say`Move a number and see what follows. Your task above keeps its own numbers.`}</p>
      <div class="try">
        <div class="sliders">
          ${this.task.drawn.map((one) => slider(one, this.slid.get(one.name) ?? "", (value) => this.slide(one.name, value)))}
          <button type="button" ?disabled=${isOwn} @click=${() => this.reset()}>${say`Back to my numbers`}</button>
        </div>
        <div class="follows">
          ${this.refusal ? html`<p class="short">${cornerMark} ${say`${this.refusal}. Below stand the numbers before.`}</p>` : nothing}
          ${remark ? html`<p class="open">${openMark} ${say`A task would not ask for these numbers: ${remark}.`}</p>` : nothing}
          ${this.values(numbers)}
          ${this.chart(numbers)}
          ${figure && isDrawn(figure) ? html`<figure><div class="drawing">${unsafeHTML(figure.svg)}</div><figcaption class="soft">${figure.title}.</figcaption></figure>` : nothing}
          ${figure && !isDrawn(figure) ? html`<p class="soft">${figure.sentence}</p>` : nothing}
        </div>
      </div>
      ${this.steps.show(numbers, isOwn ? say`with your own numbers` : say`with the numbers of the sliders`)}
    </section>`;
  }

  private isOwn(): boolean {
    return [...this.slid].every(([name, value]) => this.own.drawn.get(name) === value);
  }

  private reset(): void {
    this.slid = this.own.drawn;
    this.tried = { numbers: this.own, remark: undefined };
    this.refusal = "";
    this.update();
  }

  private slide(name: string, value: Scalar): void {
    this.slid = new Map([...this.slid, [name, value]]);
    this.moved = name;
    const tried = numbersTried(this.task, this.own.trainee, this.slid);
    this.refusal = typeof tried === "string" ? tried : "";
    if (typeof tried !== "string") this.tried = tried;
    this.update();
  }

  /** What follows: numbers that the question gives, then the answers. */
  private values({ worked }: Numbers): TemplateResult {
    const row = ({ name, about, unit }: { name: string; about: string; unit: string }, isAnswer: boolean) => {
      const value = scalarOf(worked.values.get(name));
      const text =
        value === undefined ? "" : shown(typeof value === "number" ? Number(value.toPrecision(4)) : value, unit);
      return html`<tr><th scope="row">${about}</th><td>${isAnswer ? html`<b>${text}</b>` : text}</td></tr>`;
    };
    const given = isGiven(this.task);
    return html`<table class="given" aria-live="polite">
      <caption>${say`What follows`}</caption>
      <tbody>${this.task.made.filter(({ name }) => given(name)).map((one) => row(one, false))}${this.task.answers.map((one) => row(one, true))}</tbody>
    </table>`;
  }

  private chart(numbers: Numbers): TemplateResult | typeof nothing {
    const input = this.task.drawn.find(({ name }) => name === this.moved);
    const answer = this.task.answers.find(
      ({ name, allowance }) => allowance.kind !== "choice" && movedBy(numbers, name).includes(this.moved),
    );
    if (!input) return nothing;
    if (!answer) return html`<p class="soft">${say`No number that is asked for follows from ${input.about}.`}</p>`;
    const figure = this.curve.draw(numbers, input, answer);
    return isDrawn(figure)
      ? html`<figure><div class="drawing">${unsafeHTML(figure.svg)}</div><figcaption class="soft">${say`${answer.about}, over ${input.about}; everything else stays.`}</figcaption></figure>`
      : html`<p class="soft">${figure.sentence}</p>`;
  }
}
