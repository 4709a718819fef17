import { html, nothing, type TemplateResult } from "lit/html.js";
import { whatMoves } from "../../figures/studies/what-moves";
import { Refusal } from "../../notebook/refusal";
import type { Move, MovesAnswer } from "../../study/moves";
import { movesCsv } from "../../study/moves-csv";
import { movesSentence } from "../../study/sentences";
import { valueWords } from "../../study/words";
import { listed } from "../../words/isolated";
import { say } from "../../words/say";
import { inBackground } from "../background";
import { fileName, handOut } from "../files/hand-out";
import { numberText } from "../shown/number-text";
import { unitText } from "../shown/unit-text";
import { chooseOption, chooseResult } from "./about-option";
import type { Bench, Part } from "./bench";
import { figureBox } from "./figure-box";
import { Running } from "./running";

const number = (value: number | undefined): string =>
  value === undefined ? "" : Number.isNaN(value) ? say`no result` : numberText(value);

/** Every input of a result, by how much it moves it. */
export class WhatMoves implements Part {
  readonly name = say`What moves it`;
  private readonly running: Running<MovesAnswer>;

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
    const changed = () => {
      this.running.clear();
      this.update();
    };
    const { answer } = this.running;
    return html`<form class="ask" @submit=${(event: Event) => this.submit(event)}>
        ${chooseOption(this.bench, changed)} ${chooseResult(this.bench, changed)} ${this.running.button(say`Rank the inputs`)}
      </form>
      ${this.running.line(say`Each input by itself is taken through its plausible range, the rest staying as in the notebook.`)}
      ${answer ? this.ranking(answer) : nothing}`;
  }

  private submit(event: Event): void {
    event.preventDefault();
    if (this.running.isRunning) {
      this.running.cancel();
      return;
    }
    try {
      const subject = this.bench.subject([this.bench.resultRow()]);
      inBackground(
        this.running.start((wishes) => this.bench.ask("moves", subject, { result: 0 }, wishes), movesSentence),
      );
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      this.running.say(problem.message, true);
    }
  }

  private ranking(answer: MovesAnswer): TemplateResult {
    const save = () => {
      const name = `what-moves-${fileName(answer.result)}.csv`;
      handOut(name, movesCsv(answer), "text/csv;charset=utf-8");
      this.running.say(say`Saved as ${name}, full precision.`);
    };
    const line = ({ name, quantity, value, unit, low, high, atLow, atHigh, over, percent, note }: Move) => html`<tr>
      <th scope="row">${quantity} <span class="soft">${name}</span></th>
      <td>${valueWords(value, unit)}</td>
      <td>${low === undefined || high === undefined ? "" : say`${valueWords(low, "")} to ${valueWords(high, unit)}`}</td>
      <td>${atLow === undefined ? "" : say`${number(atLow)} to ${number(atHigh)}`}</td>
      <td class="right">${number(over)}</td>
      <td class="right">${number(percent)}</td>
      <td class="soft">${note}</td>
    </tr>`;
    return html`${figureBox(whatMoves(answer))}
      <div class="choices"><button type="button" @click=${save}>${say`Save as CSV`}</button></div>
      <div class="study-table" tabindex="0" role="region" aria-label=${say`Inputs by how much they move the result`}>
        <table>
          <thead><tr><th scope="col">${say`Input`}</th><th scope="col">${say`Now`}</th><th scope="col">${say`Tried`}</th><th scope="col">${say`Result there`}</th>
            <th scope="col" class="right">${say`Change${answer.unit === "1" ? "" : `, ${unitText(answer.unit)}`}`}</th><th scope="col" class="right">${say`For 1 % more`}</th><th scope="col">${say`Note`}</th></tr></thead>
          <tbody>${answer.moves.map(line)}</tbody>
        </table>
      </div>
      ${answer.still.length > 0 ? html`<p class="soft">${say`Move nothing: ${listed(answer.still)}.`}</p>` : nothing}`;
  }
}
