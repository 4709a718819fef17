import type { TemplateResult } from "lit/html.js";
import { firstOption, isOptionPage, lead, type Page, textAt } from "../../notebook/model";
import { Refusal } from "../../notebook/refusal";
import { usualPage } from "../../notebook/usual-page";
import type { AskWishes } from "../../study/client";
import type { Studies, StudyName } from "../../study/messages";
import { cellOf, checkRows, columnOf, keyedRows, optionName, quantityOf, type StudyRow } from "../../study/rows";
import { type Subject, subjectOf } from "../../study/subject";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { StudyTalk } from "./talk";

/** What all parts of the studies share: the notebook, the option and result that are looked at, the worker. */
export class Bench {
  option: string;
  /** `Estimate.price_80` */
  result: string;
  private readonly talk = new StudyTalk();
  private subjects = new Map<string, Subject>();
  private of: readonly Page[] = [];

  constructor(readonly desk: Desk) {
    const { notebook, page, block } = desk;
    const { row, column } = block.from;
    const isOption = isOptionPage(page) && column >= firstOption;
    this.option = optionName(notebook, isOption ? column : firstOption);
    const key = isOption ? textAt(page, row, lead.key) : "";
    const results = this.results();
    const priced = ["Compare", "Estimate"].map((name) => `${usualPage(notebook.pages, name)?.name}.price_80`);
    const usual = priced.find((name) => results.some((one) => one.name === name));
    const selected = results.find((one) => one.name === `${page.name}.${key}`);
    this.result = selected?.name ?? usual ?? results[0]?.name ?? "";
  }

  get column(): number {
    return columnOf(this.desk.notebook, this.option);
  }

  /** Rows that are calculated to a number for the option. */
  results(): (StudyRow & { readonly quantity: string })[] {
    const { live, notebook } = this.desk;
    const { column } = this;
    return keyedRows(notebook).flatMap((row) => {
      const at = cellOf(row, column);
      const isResult = textAt(row.page, row.row, column).startsWith("=") && live?.value(at).kind === "number";
      return isResult ? [{ ...row, quantity: quantityOf(row) }] : [];
    });
  }

  /** The result that is looked at; another one when the option has it not. */
  resultRow(): StudyRow {
    const results = this.results();
    const found = results.find(({ name }) => name === this.result) ?? results[0];
    if (!found) throw new Refusal(say`${this.option} has no row that is calculated to a number.`);
    this.result = found.name;
    return found;
  }

  /** Checks that have a number for the option; open ones cannot hold, whatever is varied. */
  closedChecks(): { readonly rows: readonly StudyRow[]; readonly open: number } {
    const { column } = this;
    const all = checkRows(this.desk.notebook).filter(({ page, row }) => textAt(page, row, column) !== "");
    const rows = all.filter((row) => this.desk.live?.value(cellOf(row, column)).kind === "number");
    return { rows, open: all.length - rows.length };
  }

  /**
   * The chosen result and all checks that have a number.
   *
   * @returns with how many checks are open; a sentence where it cannot be studied.
   */
  resultWithChecks(): { readonly subject: Subject; readonly open: number } | string {
    try {
      const result = this.resultRow();
      const { rows, open } = this.closedChecks();
      return { subject: this.subject([result, ...rows.filter(({ name }) => name !== result.name)]), open };
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      return problem.message;
    }
  }

  /** Chains are walked once for each question, as long as the cells stay as they are. @throws Refusal */
  subject(rows: readonly StudyRow[], column = this.column): Subject {
    const { live } = this.desk;
    if (!live) throw new Refusal(say`The notebook is not calculated yet.`);
    if (this.of !== live.notebook.pages) {
      this.of = live.notebook.pages;
      this.subjects = new Map();
    }
    const key = `${column} ${rows.map(({ name }) => name).join(" ")}`;
    const known = this.subjects.get(key) ?? subjectOf(live, column, rows);
    this.subjects.set(key, known);
    return known;
  }

  /** @throws Stopped, or an Error with one sentence. */
  async ask<K extends StudyName>(
    study: K,
    subject: Subject,
    question: Studies[K]["question"],
    wishes: AskWishes,
  ): Promise<Studies[K]["answer"]> {
    const { answer } = await this.talk.ask(study, subject, this.desk.notebook.pages, question, wishes);
    return answer;
  }

  close(): void {
    this.talk.close();
  }
}

/** A part of the studies: its tab, and what it shows. */
export interface Part {
  readonly name: string;
  readonly show: () => TemplateResult;
  /** Stops what runs; another part comes to the front, or the studies close. */
  readonly leave: () => void;
}
