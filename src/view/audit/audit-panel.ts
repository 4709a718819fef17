// Past 150 lines: one panel whose filters, lists and sentence share the same report.
import { repeat } from "lit/directives/repeat.js";
import { html, nothing, type TemplateResult } from "lit/html.js";
import type { Severity } from "../../audit/finding";
import { ruleWords } from "../../audit/rule-words";
import type { Position } from "../../notebook/model";
import { retold } from "../../words/retold";
import { counted, say } from "../../words/say";
import { inBackground } from "../background";
import { one } from "../block";
import type { Desk } from "../desk";
import { cornerMark } from "../marks";
import { capital } from "../shown/count-words";
import type { Beside } from "../side";
import { findingMarks, tickMarks } from "./audit-marks";
import { Auditor, type Said } from "./auditor";
import { FindingList, groupKey } from "./finding-list";
import { KeyboardPlace } from "./keyboard-place";
import { type FindingGroup, groupsOf } from "./standing-findings";
import { tickHere, tickList } from "./tick-part";
import { ticksOf } from "./ticks";

const levels: readonly Severity[] = ["error", "warning", "note"];

const pick = (
  label: string,
  among: readonly (readonly [value: string, words: string])[],
  chosen: string,
  take: (value: string) => void,
): TemplateResult => html`<label>${label}
  <select @change=${(event: Event) => take(among[(event.target as HTMLSelectElement).selectedIndex]?.[0] ?? "")}>
    ${among.map(([value, words]) => html`<option ?selected=${value === chosen}>${words}</option>`)}
  </select>
</label>`;

/** Findings and ticks of the notebook, beside the cells. */
export class AuditPanel implements Beside {
  readonly name = say`Audit`;
  private readonly auditor: Auditor;
  private readonly list: FindingList;
  private readonly keyboard = new KeyboardPlace();
  private where: "page" | "all" = "all";
  private level = "";
  private rule = "";
  private isShown = false;
  private isEntering = false;
  private sorted:
    | { readonly said: Said; readonly accepted: unknown; readonly groups: readonly FindingGroup[] }
    | undefined;

  constructor(
    private readonly desk: Desk,
    private readonly update: () => void,
    private readonly toCells: () => void,
    private readonly close: () => void,
  ) {
    this.list = new FindingList(desk, (page, row, column) => this.go({ page, row, column }), update);
    this.auditor = new Auditor(desk, () => {
      this.mark();
      update();
    });
    // Ticks and acceptances show at once; what a change means for them is said by the next report.
    desk.subscribe(({ kind }) => {
      if (kind === "change" || kind === "opened") setTimeout(() => this.mark());
    });
  }

  enter(): void {
    this.isShown = true;
    this.isEntering = true;
    this.mark();
  }

  /** Ticks stay in the cells; findings are marked while they are read. */
  leave(): void {
    this.isShown = false;
    this.mark();
  }

  /** Whoever opens it is led to it, and whoever works in it stays in it. */
  drawn(): void {
    const head = document.querySelector<HTMLElement>(".side h2");
    this.list.drawn();
    this.keyboard.restore(head);
    if (!this.isEntering) return;
    this.isEntering = false;
    head?.focus({ preventScroll: true });
    const side = head?.closest("aside");
    const cells = document.querySelector("#cells");
    // On a narrow screen it stands below the cells, out of sight.
    const isBelow = side && cells && side.getBoundingClientRect().top >= cells.getBoundingClientRect().bottom;
    if (isBelow) side.scrollIntoView({ block: "start" });
  }

  show(): TemplateResult {
    const { desk } = this;
    const key = (event: KeyboardEvent) => {
      if (event.key === "Escape") this.close();
    };
    const { said } = this.auditor;
    const ticks = ticksOf(desk.notebook, said);
    return html`<h2 tabindex="-1">${say`Audit`} <button type="button" class="quiet" @click=${this.close}>${say`Close`}</button></h2>
      <div class="audit" @keydown=${key} @focusin=${this.keyboard.note}>
        ${said ? html`<p class="sum">${this.sentence(said)}</p>` : this.waiting()}
        ${said?.report.audit.note ? html`<p class="soft">${retold(said.report.audit.note)}</p>` : nothing}
        <div class="choices">
          <button type="button" ?disabled=${!said} @click=${() => this.record("print")}>${say`Print record`}</button>
          <button type="button" ?disabled=${!said} @click=${() => this.record("save")}>${say`Save record`}</button>
        </div>
        ${tickHere(desk, ticks)}
        ${tickList(desk, ticks, (place) => this.goTo(place))}
        ${said ? this.findings(said) : nothing}
      </div>`;
  }

  private waiting(): TemplateResult {
    const { problem } = this.auditor;
    return problem
      ? html`<p class="short">${cornerMark} ${say`The notebook could not be audited: ${problem}. Change something, or load the page again.`}</p>`
      : html`<p class="soft" role="status">${say`Auditing …`}</p>`;
  }

  private groups(said: Said): readonly FindingGroup[] {
    const { accepted } = this.desk.notebook.about;
    if (this.sorted?.said !== said || this.sorted.accepted !== accepted) {
      this.sorted = { said, accepted, groups: groupsOf(this.desk.notebook, said) };
    }
    return this.sorted.groups;
  }

  private sentence(said: Said): TemplateResult {
    const groups = this.groups(said);
    const cells = (wanted: (group: FindingGroup) => boolean) =>
      groups.filter(wanted).reduce((sum, { findings }) => sum + findings.length, 0);
    const [errors, warnings, notes] = levels.map((level) =>
      cells(({ findings, acceptance }) => !acceptance && findings[0].severity === level),
    ) as [number, number, number];
    const accepted = cells(({ acceptance }) => acceptance !== undefined);
    const { ticked, of } = said.report.covered;
    const stale = ticksOf(this.desk.notebook, said).filter((tick) => tick.stale).length;
    const open = say`${errors === 0 ? say`No errors` : capital(counted(errors, "error"))}, ${counted(warnings, "warning")}, ${counted(notes, "note")} open in ${said.report.audit.formulas} formulas; ${accepted} accepted.`;
    const reviewed = say`${ticked} of ${of} filled cells reviewed${stale > 0 ? say`; ${counted(stale, "tick")} stale` : ""}.`;
    return html`<b class=${errors > 0 ? "short" : ""}>${errors > 0 ? cornerMark : nothing} ${open}</b> ${reviewed}${
      this.auditor.isFresh ? nothing : html` <span class="soft">${say`Checking what changed …`}</span>`
    }`;
  }

  private findings(said: Said): TemplateResult {
    const { page } = this.desk;
    const groups = this.groups(said);
    const present = said.report.rules.filter(({ name }) => groups.some(({ findings }) => findings[0].rule === name));
    const fits = ({ findings: [{ page: at, severity, rule }] }: FindingGroup) =>
      (this.where === "all" || at === page.name) &&
      (this.level === "" || severity === this.level) &&
      (this.rule === "" || rule === this.rule);
    const shown = groups.filter(fits);
    const open = shown.filter(({ acceptance }) => !acceptance);
    const accepted = shown.filter(({ acceptance }) => acceptance);
    const take = (change: () => void) => {
      change();
      this.update();
    };
    return html`<div class="filters" role="group" aria-label=${say`Which findings`}>
        ${pick(
          say`Pages`,
          [
            ["all", say`All pages`],
            ["page", say`This page`],
          ],
          this.where,
          (value) => take(() => (this.where = value === "page" ? "page" : "all")),
        )}
        ${pick(say`Level`, [["", say`Any`], ...levels.map((level) => [level, { error: say`Errors`, warning: say`Warnings`, note: say`Notes` }[level]] as const)], this.level, (value) => take(() => (this.level = value)))}
        ${pick(say`Check`, [["", say`Any`], ...present.map(({ name }) => [name, capital(ruleWords(name))] as const)], this.rule, (value) => take(() => (this.rule = value)))}
      </div>
      ${open.length === 0 ? html`<p class="soft">${groups.length === 0 ? say`Nothing found.` : say`Nothing open here.`}</p>` : this.byPage(open)}
      ${accepted.length > 0 ? html`<details class="accepted"><summary>${counted(accepted.length, "accepted finding")}</summary>${this.byPage(accepted)}</details>` : nothing}`;
  }

  private byPage(groups: readonly FindingGroup[]): TemplateResult {
    const pages = [...new Set(groups.map(({ findings: [{ page }] }) => page))];
    return html`${pages.map((page) => {
      const own = groups.filter(({ findings }) => findings[0].page === page);
      return html`<h3>${page} <span class="soft">${own.length}</span></h3>
        <ul class="findings">${repeat(own, groupKey, (group) => this.list.show(group))}</ul>`;
    })}`;
  }

  private mark(): void {
    const { notebook, marks } = this.desk;
    const { said } = this.auditor;
    marks.set("findings", said && this.isShown ? findingMarks(this.desk, this.groups(said)) : new Map());
    marks.set("reviews", tickMarks(notebook, ticksOf(notebook, said)));
  }

  private go({ page, row, column }: Position): void {
    this.desk.select(one({ row, column }), page);
    this.toCells();
  }

  private goTo(place: string): void {
    inBackground(
      import("../../audit/review").then(({ cellsOfPlace }) => {
        const [first] = cellsOfPlace(this.desk.notebook, place) ?? [];
        if (first) this.go(first);
      }),
    );
  }

  private record(what: "print" | "save"): void {
    const { said } = this.auditor;
    if (!said) return;
    inBackground(import("./print-record").then(({ handRecord }) => handRecord(this.desk, said.report, what)));
  }
}
