import { html, nothing, type TemplateResult } from "lit/html.js";
import { accept, unaccept } from "../../audit/accept";
import { type Finding, placeOf, type Severity } from "../../audit/finding";
import { ruleWords } from "../../audit/rule-words";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { askName, today } from "../dialogs/ask-name";
import { cornerMark, noteMark, openMark } from "../marks";
import { cellLink } from "../panels/cell-link";
import { startOf } from "../shown/start-of";
import { findingWords } from "./finding-words";
import { type FindingGroup, positionOf } from "./standing-findings";

const marks = {
  error: html`<span class="short">${cornerMark}</span>`,
  warning: html`<span class="open">${openMark}</span>`,
  note: html`<span class="soft">${noteMark}</span>`,
} as const;

/** More cells than this are not linked one by one. */
const mostLinks = 12;

/** What tells a group from the others, so that its form stays with it. */
export const groupKey = ({ findings: [first] }: FindingGroup): string =>
  `${first.rule} ${first.page} ${first.key || first.cell} ${first.message}`;

/** How grave a finding is, in a word. */
export const severityWords = (severity: Severity): string =>
  ({ error: say`error`, warning: say`warning`, note: say`note` })[severity];

/** Findings with their cells, each to be accepted with a reason, or to be opened again. */
export class FindingList {
  /** The group whose reason is being typed. */
  private accepting: string | undefined;
  /** Its form is asked for and not drawn yet. */
  private isBeginning = false;

  constructor(
    private readonly desk: Desk,
    private readonly go: (page: string, row: number, column: number) => void,
    private readonly update: () => void,
  ) {}

  show(group: FindingGroup): TemplateResult {
    const { findings, acceptance } = group;
    const [first] = findings;
    const key = groupKey(group);
    const { row, quantity } = this.rowOf(first);
    return html`<li class="finding" data-rule=${first.rule}>
      <p>${marks[first.severity]} <b>${severityWords(first.severity)}</b> <span class="soft">${ruleWords(first.rule)}</span></p>
      <p class="cells-of">${quantity ? html`<span>${quantity}</span>` : nothing} ${findings.slice(0, mostLinks).map((one) => this.link(one, row))}${
        findings.length > mostLinks
          ? html`<span class="soft">${say`and ${findings.length - mostLinks} more`}</span>`
          : nothing
      }</p>
      <p class="evidence">${startOf(findingWords(this.desk, first))}</p>
      ${
        acceptance
          ? html`<p class="soft">${say`Accepted by ${acceptance.who} on ${acceptance.when}: ${startOf(acceptance.reason)}`}</p>
            <button type="button" class="quiet" @click=${() => this.withdraw(findings)}>${say`Withdraw acceptance`}</button>`
          : this.accepting === key
            ? this.form(findings)
            : html`<button type="button" class="quiet" @click=${() => this.begin(key)}>${say`Accept with reason …`}</button>`
      }
    </li>`;
  }

  private rowOf(finding: Finding): { readonly row: number; readonly quantity: string } {
    const at = positionOf(this.desk.notebook, finding);
    const page = this.desk.notebook.pages.find(({ id }) => id === at?.page);
    return { row: at?.row ?? -1, quantity: finding.key ? startOf(page?.rows[at?.row ?? -1]?.[0] ?? finding.key) : "" };
  }

  private link(finding: Finding, row: number): TemplateResult {
    const at = positionOf(this.desk.notebook, finding);
    const place = finding.cell || (finding.key && row >= 0 ? say`row ${row + 1}` : finding.page);
    const words = finding.option ? `${finding.option}, ${finding.cell}` : place;
    if (!at) return html`<span>${words}</span>`;
    return cellLink(finding.page, { row: Math.max(0, row), column: at.column }, words, () =>
      this.go(at.page, at.row, at.column),
    );
  }

  private begin(key: string): void {
    this.accepting = key;
    this.isBeginning = true;
    this.update();
  }

  /** The side is drawn when the browser finds the time; only then can the reason be typed. */
  drawn(): void {
    if (!this.isBeginning) return;
    this.isBeginning = false;
    document.querySelector<HTMLElement>(".side .accept textarea")?.focus();
  }

  private form(findings: readonly Finding[]): TemplateResult {
    const leave = () => {
      this.accepting = undefined;
      this.update();
    };
    const keep = async (event: SubmitEvent) => {
      event.preventDefault();
      const form = event.currentTarget as HTMLFormElement;
      const reason = String(new FormData(form).get("reason") ?? "");
      const who = await askName();
      if (who === undefined) return;
      const [first] = findings;
      const label = say`${ruleWords(first?.rule ?? "finding")} accepted at ${first ? placeOf(first) : ""}`;
      if (this.desk.apply(label, (notebook) => accept(notebook, findings, reason, who, today()))) leave();
    };
    const key = (event: KeyboardEvent) => {
      event.stopPropagation();
      if (event.key === "Escape") leave();
    };
    return html`<form class="accept" @submit=${keep} @keydown=${key}>
      <label>${say`Why it may stand`} <textarea name="reason" rows="3" required></textarea></label>
      <div class="choices">
        <button type="submit" class="main">${say`Accept`}</button>
        <button type="button" @click=${leave}>${say`Leave it open`}</button>
      </div>
    </form>`;
  }

  private withdraw(findings: readonly Finding[]): void {
    const [first] = findings;
    this.desk.apply(say`acceptance at ${first ? placeOf(first) : say`a cell`} withdrawn`, (notebook) =>
      unaccept(notebook, findings),
    );
  }
}
