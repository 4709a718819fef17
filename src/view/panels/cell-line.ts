// Past 150 lines: one line of the screen, whose typing and showing share their state.

import { html, nothing, render, type TemplateResult } from "lit/html.js";
import { firstOption, isOptionPage, lead, type Page, pageById, textAt } from "../../notebook/model";
import { isFunctionPage, part } from "../../notebook/own/function-page";
import { namesAbove } from "../../notebook/own/names-above";
import { rowEntry } from "../../notebook/row-entry";
import { betweenNumbers, withDecimalSign } from "../../words/decimal-sign";
import { isolated } from "../../words/isolated";
import { said, say } from "../../words/say";
import { inBackground } from "../background";
import { type Cell, cellName, one } from "../block";
import type { Desk } from "../desk";
import { choicesAt, typedText } from "../edits/as-typed";
import { closedCell, typeInto } from "../edits/type-into";
import { cornerMark, openMark } from "../marks";
import { beginPointing, endPointing, type Pointing } from "../pointing";
import { capital } from "../shown/count-words";
import { rowDecimals } from "../shown/row-decimals";
import { rowUnits } from "../shown/row-units";
import { startOf } from "../shown/start-of";
import { withUnit } from "../shown/unit-text";
import { worthText } from "../shown/value-text";
import { FormulaTyping } from "../typing/formula-typing";
import type { KnownFunction } from "../typing/known-function";

interface Origin {
  readonly page: string;
  readonly cell: Cell;
  readonly text: string;
}

/** The line above the grid: which cell, what was typed (to read and to change), what it comes to. */
export class CellLine {
  readonly element = document.createElement("section");
  private readonly where = document.createElement("div");
  private readonly field = document.createElement("textarea");
  private readonly worth = document.createElement("output");
  private readonly sentence = document.createElement("p");
  private typing: FormulaTyping | undefined;
  private pointing: Pointing | undefined;
  /** The cell that is typed into; it stays while other pages are looked at to point at their cells. */
  private origin: Origin | undefined;

  constructor(
    private readonly desk: Desk,
    private readonly functions: () => readonly KnownFunction[],
    private readonly backToGrid: () => void,
  ) {
    this.element.className = "cell-line";
    this.element.setAttribute("aria-label", say`Selected cell`);
    this.where.className = "where";
    this.worth.className = "worth";
    this.sentence.className = "sentence";
    this.field.rows = 1;
    this.field.spellcheck = false;
    this.field.autocomplete = "off";
    this.field.addEventListener("focus", () => this.begin());
    this.field.addEventListener("blur", () => this.commit());
    this.field.addEventListener("keydown", (event) => this.key(event));
    this.element.append(this.where, this.field, this.worth, this.sentence);
  }

  /** Whether a formula is being typed here, so that a change of page only looks for cells to point at. */
  get isPointing(): boolean {
    return this.origin !== undefined && this.field.value.startsWith("=");
  }

  focus(): void {
    this.field.focus();
  }

  update(): void {
    const page = (this.origin && pageById(this.desk.notebook, this.origin.page)) ?? this.desk.page;
    const cell = this.origin?.cell ?? this.desk.block.from;
    if (!this.origin) this.field.value = typedText(this.desk.notebook, page, cell);
    const closed = closedCell(this.desk, page, cell);
    this.field.readOnly = closed !== undefined;
    this.field.setAttribute("aria-label", say`What was typed in ${cellName(cell)}`);
    render(this.place(page, cell), this.where);
    render(this.value(page, cell), this.worth);
    render(html`${closed ?? this.about(page, cell)}${this.laid(page, cell)}`, this.sentence);
  }

  private place(page: Page, cell: Cell): TemplateResult {
    const row = page.rows[cell.row] ?? [];
    const isOption = isOptionPage(page) && cell.column >= firstOption;
    const quantity = isOptionPage(page) ? startOf(row[lead.quantity] ?? "") : "";
    const option = isOption ? page.rows[0]?.[cell.column] : isOptionPage(page) ? page.rows[0]?.[cell.column] : "";
    const isAway = this.origin !== undefined && this.desk.page.id !== page.id;
    const ofFunction = isFunctionPage(page) ? this.ofFunction(page, cell) : "";
    return html`<b>${isAway ? `${page.name}, ` : ""}${cellName(cell)}</b>${quantity || ofFunction ? html`<span>${quantity || ofFunction}</span>` : nothing}${option ? html`<span>${option}</span>` : nothing}`;
  }

  /** `step L, Formula`: the row of a function, and the column. */
  private ofFunction(page: Page, { row, column }: Cell): string {
    const cells = page.rows[row] ?? [];
    const own = startOf([cells[part.part], cells[part.name]].filter(Boolean).join(" "));
    return [own, said(page.rows[0]?.[column] ?? "")].filter(Boolean).join(", ");
  }

  private value(page: Page, cell: Cell): TemplateResult | string {
    const { live } = this.desk;
    if (!live || isFunctionPage(page)) return "";
    const value = live.value({ page: page.id, ...cell });
    if (value.kind === "error") return html`<span class="short">${cornerMark} ${say`no value`}</span>`;
    const units = rowUnits(live.notebook, page, cell.row);
    const isNumber = isOptionPage(page) && cell.column >= firstOption;
    return worthText(value, isNumber ? units : { ...units, unit: "" }, rowDecimals(live, page, cell.row));
  }

  /** What the marks over the cell and its row say. */
  private laid(page: Page, { row, column }: Cell): TemplateResult | typeof nothing {
    const { marks } = this.desk;
    const words = [...marks.at(page.id, row, column), ...marks.at(page.id, row)].flatMap((mark) => mark.words || []);
    return words.length > 0
      ? html` <span class="laid">${capital(words.join("; ").replaceAll("\n", "; "))}.</span>`
      : nothing;
  }

  /** The error's sentence where there is one, else what the row says of itself. */
  private about(page: Page, cell: Cell): TemplateResult | string {
    if (isFunctionPage(page)) return this.ofRow(page, cell.row);
    const { live, notebook } = this.desk;
    const value = live?.value({ page: page.id, ...cell });
    if (value?.kind === "error") {
      const from = value.from ? say` It begins in ${value.from}.` : "";
      return html`<span class="short">${cornerMark} ${value.sentence.replace(/^[a-z]/, (first) => first.toUpperCase())}.${from}</span>`;
    }
    if (!isOptionPage(page))
      return value?.kind === "text" && value.text.length > 20 && textAt(page, cell.row, cell.column) !== value.text
        ? startOf(value.text)
        : "";
    const { low, high, choices } = rowEntry(notebook, page, cell.row) ?? {};
    const { unit, toType } = rowUnits(notebook, page, cell.row);
    const shown = (limit: number) => withDecimalSign(toType(String(limit)));
    const isOutside =
      value?.kind === "number" &&
      cell.column >= firstOption &&
      ((low !== undefined && value.value < low) || (high !== undefined && value.value > high));
    const limits =
      low !== undefined && high !== undefined
        ? say`plausible ${shown(low)} to ${withUnit(shown(high), unit)}`
        : low !== undefined
          ? say`plausible from ${withUnit(shown(low), unit)}`
          : high !== undefined
            ? say`plausible up to ${withUnit(shown(high), unit)}`
            : "";
    const basis = page.rows[cell.row]?.[lead.basis];
    const words = value?.kind === "text" && value.text.length > 20 && cell.column >= firstOption ? value.text : "";
    if (words) return startOf(words);
    return html`${isOutside ? html`<span class="open">${openMark} ${say`Outside what is ${limits}: check it.`}</span> ` : nothing}
      ${basis ? say`Basis: ${startOf(basis)}. ` : ""}${limits && !isOutside ? `${limits.replace(/^p/, "P")}. ` : ""}${choices ? say`One of ${choices.map((choice) => isolated(withDecimalSign(toType(String(choice))))).join(betweenNumbers())}.` : ""}`;
  }

  /** The mistake in a row of a function page, or how its example stands. */
  private ofRow(page: Page, row: number): TemplateResult | string {
    const remark = this.desk.live?.ownRemark(page, row);
    if (!remark) return "";
    // A mistake begins with the word that the row has in its file, which has no capital.
    return remark.kind === "holds"
      ? `${capital(remark.sentence)}.`
      : html`<span class="short">${cornerMark} ${remark.sentence}.</span>`;
  }

  private begin(): void {
    const { page, block } = this.desk;
    if (this.field.readOnly || this.origin) return;
    const cell = block.from;
    this.origin = { page: page.id, cell, text: this.field.value };
    const typing = new FormulaTyping(this.field, {
      functions: this.functions(),
      choices: choicesAt(this.desk.notebook, page, cell),
      names: cell.column === part.formula && isFunctionPage(page) ? namesAbove(page, cell.row) : [],
    });
    this.typing = typing;
    this.pointing = { home: page.id, takes: () => typing.takesPointing, put: (reference) => typing.point(reference) };
    beginPointing(this.pointing);
  }

  /** Ends the typing. @returns where it was, or undefined when nothing was being typed. */
  private end(): Origin | undefined {
    const { origin } = this;
    this.typing?.stop();
    this.typing = undefined;
    endPointing(this.pointing);
    this.origin = undefined;
    return origin;
  }

  private commit(): void {
    const typed = this.field.value.replace(/\n+$/, "");
    const origin = this.end();
    const page = origin && pageById(this.desk.notebook, origin.page);
    if (origin && page) {
      if (page.id !== this.desk.page.id) this.desk.select(one(origin.cell), page.id);
      if (typed !== origin.text)
        inBackground(typeInto(this.desk, page, [{ ...origin.cell, typed }], say`value of ${cellName(origin.cell)}`));
    }
    this.update();
  }

  private key(event: KeyboardEvent): void {
    // Keys that are typed here are not meant for the grid; but it must see Tab, to be entered by it.
    if (event.key !== "Tab") event.stopPropagation();
    if (event.isComposing) return;
    if (event.key === "Enter" && !event.shiftKey && !event.altKey) {
      event.preventDefault();
      this.commit();
      this.backToGrid();
    } else if (event.key === "Escape") {
      event.preventDefault();
      const origin = this.end();
      if (origin && origin.page !== this.desk.page.id) this.desk.select(one(origin.cell), origin.page);
      this.update();
      this.backToGrid();
    }
  }
}
