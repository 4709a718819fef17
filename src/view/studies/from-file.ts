// Past 150 lines: a file's options as they were understood, and both ways to take them.

import { html, nothing, type TemplateResult } from "lit/html.js";
import { isOptionPage, optionsOf } from "../../notebook/model";
import { Refusal } from "../../notebook/refusal";
import { detectShape, readTable } from "../../notebook/table-in";
import { usualPage } from "../../notebook/usual-page";
import { addOptions } from "../../study/options/into";
import { printOptions } from "../../study/options/print";
import { type OptionTable, readOptions } from "../../study/options/read";
import { type OptionResults, placesIn } from "../../study/options/run";
import { checkRows, rowsNamed, type StudyRow } from "../../study/rows";
import type { Subject } from "../../study/subject";
import { valueWords } from "../../study/words";
import { counted, say } from "../../words/say";
import { inBackground } from "../background";
import { chooseFile, handOut } from "../files/hand-out";
import { chooseOption } from "./about-option";
import type { Bench, Part } from "./bench";
import { choose } from "./choose";
import { Running } from "./running";

interface Answer {
  readonly subject: Subject;
  readonly results: readonly OptionResults[];
}

const mostShown = 40;
const checks = "checks";

/** Many options from one CSV file, a boat a row: as columns of the notebook, or only calculated. */
export class FromFile implements Part {
  readonly name = say`Options from a file`;
  private file: { readonly name: string; readonly bytes: Uint8Array } | undefined;
  private rows: string;
  private done = "";
  private readonly running: Running<Answer>;

  constructor(
    private readonly bench: Bench,
    private readonly update: () => void,
  ) {
    this.running = new Running(update);
    const pages = bench.desk.notebook.pages.filter(isOptionPage);
    this.rows = `${(usualPage(pages, "Compare") ?? pages[0])?.name ?? ""}.*`;
  }

  leave(): void {
    this.running.clear();
    this.done = "";
  }

  show(): TemplateResult {
    const { desk, option } = this.bench;
    const table = this.table();
    const changed = () => {
      this.done = "";
      this.running.clear();
      this.update();
    };
    const { answer } = this.running;
    const hint =
      this.done ||
      (typeof table === "string"
        ? table
        : table
          ? say`${this.file?.name ?? ""}: ${counted(table.options.length, "option")}, ${counted(table.rows.length, "input")} each; everything else as for ${option}.`
          : say`The first column is option, the others Page.key of inputs, a unit in square brackets if you like: Supply.run [m]. An option a line; an empty cell keeps the value of the option below.`);
    return html`<form class="ask" @submit=${(event: Event) => this.submit(event, table)}>
        <button type="button" @click=${() => inBackground(this.choose())}>${say`Choose a CSV file …`}</button>
        ${chooseOption(this.bench, changed)}
        ${choose(
          say`Results`,
          [
            ...desk.notebook.pages
              .filter(isOptionPage)
              .map(({ name }) => ({ value: `${name}.*`, label: say`page ${name}` })),
            { value: checks, label: say`checks of all pages` },
            { value: "*.*", label: say`all rows` },
          ],
          this.rows,
          (rows) => {
            this.rows = rows;
            changed();
          },
        )}
        ${this.running.button(say`Calculate only`, typeof table !== "object")}
        <button type="button" ?disabled=${typeof table !== "object"} @click=${() => typeof table === "object" && this.take(table)}>${say`Take them in as option columns`}</button>
      </form>
      ${typeof table === "string" && !this.running.isRunning ? html`<p class="verdict-line short" role="alert">${table}</p>` : this.running.line(hint)}
      ${answer ? this.results(answer) : nothing}`;
  }

  private async choose(): Promise<void> {
    const file = await chooseFile(".csv,.tsv,.txt,text/csv,text/plain");
    if (!file) return;
    this.file = { name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) };
    this.done = "";
    this.running.clear();
    this.update();
  }

  /** The options of the file, or the sentence why they cannot be read. */
  private table(): OptionTable | string | undefined {
    const { file, bench } = this;
    if (!file) return undefined;
    try {
      const rows = readTable(file.name, file.bytes, detectShape(file.bytes));
      return readOptions(bench.desk.notebook, file.name, rows, bench.column);
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      return problem.message;
    }
  }

  private wanted(): readonly StudyRow[] {
    const { notebook } = this.bench.desk;
    return this.rows === checks ? checkRows(notebook) : rowsNamed(notebook, this.rows);
  }

  private submit(event: Event, table: OptionTable | string | undefined): void {
    event.preventDefault();
    if (this.running.isRunning) {
      this.running.cancel();
      return;
    }
    if (typeof table !== "object") return;
    this.done = "";
    try {
      const { bench } = this;
      const subject = bench.subject(this.wanted());
      const question = { places: placesIn(subject, table.rows), options: table.options };
      inBackground(
        this.running.start(
          async (wishes) => ({ subject, results: await bench.ask("options", subject, question, wishes) }),
          (answer) => this.words(answer),
        ),
      );
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      this.running.say(problem.message, true);
    }
  }

  private words({ subject, results }: Answer): string {
    const places = subject.results.flatMap(({ isCheck }, i) => (isCheck ? [i] : []));
    const holding = results.filter(({ results: values }) =>
      places.every((i) => Number(values[i]) >= 0 && typeof values[i] === "number"),
    );
    const held = places.length === 0 ? "" : say`; every check among them holds for ${holding.length}`;
    return say`${counted(results.length, "option")} calculated, ${counted(subject.results.length, "row")} each${held}.`;
  }

  private take(table: OptionTable): void {
    const { desk, option } = this.bench;
    const name = this.file?.name ?? "";
    const before = optionsOf(desk.notebook).length;
    const isTaken = desk.apply(say`options of ${name}`, (notebook) => addOptions(notebook, table, option));
    this.running.clear();
    if (isTaken) {
      this.file = undefined;
      this.done = say`${counted(optionsOf(desk.notebook).length - before, "option")} of ${name} taken in as columns, one step that undo takes back.`;
      this.update();
    } else this.running.say(say`${desk.notice.sentence} Nothing was changed.`, true);
  }

  private results(answer: Answer): TemplateResult {
    const { subject, results } = answer;
    const save = () => {
      const text = [...printOptions({ subject, results: () => results })].join("");
      handOut("options-results.csv", text, "text/csv;charset=utf-8");
      this.running.say(say`Saved as options-results.csv: option, then Page.key columns, full precision.`);
    };
    return html`<div class="choices"><button type="button" @click=${save}>${say`Save the results as CSV`}</button>
        <span class="soft">${results.length > mostShown ? say`The first ${mostShown} are shown; the file holds all.` : nothing}</span></div>
      <div class="study-table" tabindex="0" role="region" aria-label=${say`Results of the options`}><table class="many">
        <thead><tr><th scope="col">${say`Option`}</th>${subject.results.map(({ name, quantity }) => html`<th scope="col" class="right" title=${name}>${quantity}</th>`)}</tr></thead>
        <tbody>${results
          .slice(0, mostShown)
          .map(
            ({ name, results: values }) =>
              html`<tr><th scope="row">${name}</th>${values.map((value, i) =>
                typeof value === "string"
                  ? html`<td class="words">${value}</td>`
                  : html`<td class="right ${subject.results[i]?.isCheck && typeof value === "number" && value < 0 ? "short" : ""}">${value === null ? "" : valueWords(value, subject.results[i]?.unit ?? "")}</td>`,
              )}</tr>`,
          )}</tbody>
      </table></div>`;
  }
}
