// Past 150 lines: the choices and what is done with the table that they make share one sentence.

import { html, nothing, type TemplateResult } from "lit/html.js";
import { inFixedInk } from "../../figures/draw/ink";
import { isDrawn } from "../../figures/figure";
import { optionsTable } from "../../figures/studies/options-table";
import { addOption } from "../../notebook/edit-options";
import { isOptionPage, optionsOf } from "../../notebook/model";
import { Refusal } from "../../notebook/refusal";
import { usualPage } from "../../notebook/usual-page";
import { checkRows, keyedRows, quantityOf, rowsNamed, type StudyRow } from "../../study/rows";
import { sideBySideSentence } from "../../study/sentences";
import { type SideBySide, sideBySide } from "../../study/side-by-side";
import { sideBySideCsv } from "../../study/side-by-side-csv";
import { say } from "../../words/say";
import { inBackground } from "../background";
import { copyPicture } from "../files/copy-picture";
import { handOut } from "../files/hand-out";
import type { Bench, Part } from "./bench";
import { besideTable } from "./beside-table";
import { byPage, choose, chooseFrom, typed } from "./choose";

const rowChoices = { all: "*.*", checks: "checks", named: "named" } as const;

/** Options beside each other: values, differences, who is best and who is ruled out. */
export class OptionsBeside implements Part {
  readonly name = say`Side by side`;
  private left: ReadonlySet<string> = new Set();
  private rows: string;
  private named: string;
  private base = "";
  private best = "";
  private bestIs: "least" | "most" = "least";
  private hidesEqual = false;
  private newName = "";
  private like = "";
  private done = "";
  private refusal = "";

  constructor(
    private readonly bench: Bench,
    private readonly update: () => void,
  ) {
    const { notebook, page } = bench.desk;
    const pages = notebook.pages.filter(isOptionPage);
    const first = usualPage(pages, "Compare") ?? (isOptionPage(page) ? page : pages[0]);
    this.named = `${usualPage(pages, "Compare")?.name ?? "Compare"}.*, *.price_*`;
    this.rows = first ? `${first.name}.*` : rowChoices.all;
    const prices = keyedRows(notebook).filter(({ name }) => name.endsWith(".price_80"));
    this.best = (prices.find(({ page: one }) => one === first) ?? prices[0])?.name ?? "";
  }

  leave(): void {
    this.done = "";
    this.refusal = "";
  }

  show(): TemplateResult {
    const { desk } = this.bench;
    const options = optionsOf(desk.notebook);
    const shown = options.filter((name) => !this.left.has(name));
    const base = shown.includes(this.base) ? this.base : (shown[0] ?? "");
    const table = this.table(shown, base);
    const set = (change: () => void) => () => this.set(change);
    return html`<form class="ask" @submit=${(event: Event) => event.preventDefault()}>
        <fieldset class="options"><legend>${say`Options`}</legend>${options.map(
          (name) =>
            html`<label><input type="checkbox" .checked=${!this.left.has(name)} @change=${set(() => this.toggle(name))} /> ${name}</label>`,
        )}</fieldset>
        ${choose(
          say`Rows`,
          [
            ...desk.notebook.pages
              .filter(isOptionPage)
              .map(({ name }) => ({ value: `${name}.*`, label: say`page ${name}` })),
            { value: rowChoices.checks, label: say`checks of all pages` },
            { value: rowChoices.all, label: say`all rows` },
            { value: rowChoices.named, label: say`named by key` },
          ],
          this.rows,
          (rows) => this.set(() => (this.rows = rows)),
        )}
        ${
          this.rows === rowChoices.named
            ? typed("Page.key, * for any letters", this.named, (text) => this.set(() => (this.named = text)), {
                size: 30,
              })
            : nothing
        }
        ${choose(
          say`Compared with`,
          shown.map((name) => ({ value: name, label: name })),
          base,
          (name) => this.set(() => (this.base = name)),
        )}
        ${choose(
          say`Best has the`,
          [
            { value: "least", label: say`least` },
            { value: "most", label: say`most` },
          ],
          this.bestIs,
          (one) => this.set(() => (this.bestIs = one === "most" ? "most" : "least")),
        )}
        ${chooseFrom(say`of`, byPage(this.measured()), this.best, (name) => this.set(() => (this.best = name)))}
        <label class="tick"><input type="checkbox" .checked=${this.hidesEqual} @change=${set(() => (this.hidesEqual = !this.hidesEqual))} /> ${say`Hide rows that are equal`}</label>
      </form>
      <p class="verdict-line ${this.refusal ? "short" : ""}" role="status">${this.refusal || this.done || (table && sideBySideSentence(table))}</p>
      ${table ? this.comparison(table) : nothing}
      ${this.copyForm(options)}`;
  }

  private set(change: () => void): void {
    change();
    this.done = "";
    this.refusal = "";
    this.update();
  }

  private toggle(name: string): void {
    const left = new Set(this.left);
    if (!left.delete(name)) left.add(name);
    this.left = left;
  }

  private wanted(): readonly StudyRow[] {
    const { notebook } = this.bench.desk;
    if (this.rows === rowChoices.checks) return checkRows(notebook);
    return rowsNamed(notebook, this.rows === rowChoices.named ? this.named : this.rows);
  }

  /** Rows that can say which option is best: every result but checks. */
  private measured(): { readonly name: string; readonly quantity: string }[] {
    return keyedRows(this.bench.desk.notebook)
      .filter(({ page, row }) => page.rows[row]?.[2] !== "margin" && page.rows[row]?.[2] !== "")
      .map((row) => ({ name: row.name, quantity: quantityOf(row) }));
  }

  private table(options: readonly string[], base: string): SideBySide | undefined {
    const { live } = this.bench.desk;
    if (!live || options.length === 0) {
      this.refusal ||= options.length === 0 ? say`No option is chosen; choose at least one.` : "";
      return undefined;
    }
    try {
      const rows = this.wanted();
      const best = { name: this.best, is: this.bestIs };
      return sideBySide(live, { options, rows, base, hideEqual: this.hidesEqual, best });
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      this.refusal = problem.message;
      return undefined;
    }
  }

  private comparison(table: SideBySide): TemplateResult {
    const { hidden } = table;
    return html`<div class="choices">
        <button type="button" @click=${() => inBackground(this.copyCsv(table))}>${say`Copy as CSV`}</button>
        <button type="button" @click=${() => this.saveCsv(table)}>${say`Save as CSV`}</button>
        <button type="button" @click=${() => inBackground(this.copyPicture(table))}>${say`Copy as picture`}</button>
        <button type="button" @click=${() => this.savePicture(table)}>${say`Save as picture`}</button>
        <span class="soft">${hidden > 0 ? say`${hidden} rows are equal and hidden.` : nothing}</span>
      </div>
      ${besideTable(table)}`;
  }

  private async copyCsv(table: SideBySide): Promise<void> {
    const copied = navigator.clipboard.writeText(sideBySideCsv(table));
    await this.tellWhen(
      copied,
      say`Copied as CSV: ${table.options.length} options with their differences, full precision.`,
    );
  }

  private async copyPicture(table: SideBySide): Promise<void> {
    const svg = this.picture(table);
    if (svg) await this.tellWhen(copyPicture(svg), say`Copied as a picture.`);
  }

  private async tellWhen(copied: Promise<void>, sentence: string): Promise<void> {
    try {
      await copied;
      this.tell(sentence);
    } catch {
      this.refusal = say`The browser did not let it be copied; save it instead.`;
      this.update();
    }
  }

  private saveCsv(table: SideBySide): void {
    handOut("side-by-side.csv", sideBySideCsv(table), "text/csv;charset=utf-8");
    this.tell(say`Saved as side-by-side.csv, full precision.`);
  }

  private savePicture(table: SideBySide): void {
    const svg = this.picture(table);
    if (!svg) return;
    handOut("side-by-side.svg", svg, "image/svg+xml");
    this.tell(say`Saved as side-by-side.svg.`);
  }

  /** The table as a drawing; none when it is too large for one, which is said. */
  private picture(table: SideBySide): string | undefined {
    const figure = optionsTable(table);
    if (isDrawn(figure)) return inFixedInk(figure.svg);
    this.refusal = figure.sentence;
    this.update();
    return undefined;
  }

  private tell(sentence: string): void {
    this.refusal = "";
    this.done = sentence;
    this.update();
  }

  private copyForm(options: readonly string[]): TemplateResult {
    const like = options.includes(this.like) ? this.like : (options.at(-1) ?? "");
    const add = (event: Event) => {
      event.preventDefault();
      const { desk } = this.bench;
      const name = this.newName.trim();
      const isAdded = desk.apply(say`option ${name} added`, (notebook) => addOption(notebook, name, like));
      if (isAdded) this.newName = "";
      this.refusal = isAdded ? "" : desk.notice.sentence;
      this.done = isAdded ? say`${name} added as a copy of ${like}, one step that undo takes back.` : "";
      this.update();
    };
    return html`<h3>${say`One more option`}</h3>
      <form class="ask" @submit=${add}>
        ${typed(say`Name`, this.newName, (text) => (this.newName = text), { size: 16 })}
        ${choose(
          say`as a copy of`,
          options.map((name) => ({ value: name, label: name })),
          like,
          (name) => {
            this.like = name;
            this.update();
          },
        )}
        <button type="submit">${say`Add the copy`}</button>
      </form>`;
  }
}
