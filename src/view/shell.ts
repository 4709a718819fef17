// Past 150 lines: the frame of the screen, drawn as one template.

import { html, nothing, render, type TemplateResult } from "lit/html.js";
import { optionsOf, type Page, type Position } from "../notebook/model";
import { isFunctionPage } from "../notebook/own/function-page";
import type { Check } from "../notebook/verdict";
import { listed } from "../words/isolated";
import { say } from "../words/say";
import { cellName, one } from "./block";
import type { Tasks } from "./course/tasks";
import type { Desk, Happening } from "./desk";
import type { FeedGraph } from "./feeds/feed-graph";
import type { ownSide } from "./functions/own-side";
import { alarms } from "./keeping/alarms";
import { isAlarming } from "./keeping/safety";
import { cornerMark, hullMark } from "./marks";
import type { Offline } from "./offline/offline";
import type { CellLine } from "./panels/cell-line";
import type { Drawings } from "./panels/drawing";
import type { Notes } from "./panels/notes";
import { pageList, showInList } from "./panels/page-list";
import { titleTick } from "./panels/page-tick";
import { divider } from "./panels/side-width";
import { titleBlock } from "./panels/title-block";
import { tools } from "./panels/tools";
import { verdictLines } from "./panels/verdict-lines";
import type { WorkingParts, working } from "./panels/working";
import type { Beside, Side } from "./side";
import { newsOf, type Standing, standingAfter, standingOf } from "./standing";
import type { Wishes } from "./wishes";

/** Runs something when the browser has nothing better to do, but soon. */
const whenIdle = (act: () => void): void => {
  if ("requestIdleCallback" in window) requestIdleCallback(act, { timeout: 150 });
  else setTimeout(act, 30);
};

/** Everything around the grid, drawn from the desk whenever something happens on it. */
export class Shell {
  private standing: Standing | undefined;
  private news: readonly string[] = [];
  private work: typeof working | undefined;
  private own: typeof ownSide | undefined;
  private graph: FeedGraph | undefined;
  private isDue = false;
  /** The page that was last brought into sight in the list. */
  private listed = "";
  private isSideDue = false;

  constructor(
    private readonly desk: Desk,
    private readonly root: HTMLElement,
    private readonly gridHost: HTMLElement,
    private readonly parts: {
      readonly line: CellLine;
      readonly notes: Notes;
      readonly drawings: Drawings;
      readonly tasks: Tasks;
      readonly side: Side;
      readonly offline: Offline;
    },
    private readonly wishes: Wishes,
  ) {
    root.replaceChildren();
    desk.subscribe((happening) => this.follow(happening));
    desk.marks.subscribe((layer) => {
      if (layer === "reviews") this.due();
    });
    this.draw();
  }

  workWith(work: typeof working, graph: FeedGraph, own: typeof ownSide): void {
    this.work = work;
    this.own = own;
    this.graph = graph;
    this.due();
  }

  /** Draws once, soon, however much has happened until then. */
  due(): void {
    if (this.isDue) return;
    this.isDue = true;
    queueMicrotask(() => {
      this.isDue = false;
      this.draw();
    });
  }

  private follow(happening: Happening): void {
    if (happening.kind === "change" || happening.kind === "calculating" || happening.kind === "opened") {
      const before = this.standing;
      const { live } = this.desk;
      const change = happening.kind === "change" ? happening.change : undefined;
      this.standing = live && (change ? standingAfter(live, before, change) : standingOf(live));
      const isComparable = happening.kind === "change" && !happening.change.structure && before && this.standing;
      this.news = isComparable ? newsOf(before, this.standing as Standing) : [];
    }
    this.due();
  }

  private draw(): void {
    render(this.page(), this.root);
    if (this.listed !== this.desk.page.id) {
      this.listed = this.desk.page.id;
      showInList(this.root);
    }
    this.parts.line.update();
    if (this.isSideDue) return;
    // The working is looked at after the cell is: it must not hold up keys.
    this.isSideDue = true;
    whenIdle(() => {
      this.isSideDue = false;
      const side = this.root.querySelector<HTMLElement>(".side-content");
      if (side) render(this.side(), side);
      this.beside?.drawn?.();
    });
  }

  private page(): TemplateResult {
    const { desk, wishes } = this;
    const { notebook, page } = desk;
    const number = notebook.pages.indexOf(page) + 1;
    const { tasks } = this.parts;
    const isTask = tasks.shows(page);
    document.title = listed([page.name, notebook.about.title]);
    return html`
      <a class="skip" href=${isTask ? "#task" : "#cells"} @click=${(event: Event) => {
        event.preventDefault();
        if (isTask) this.root.querySelector<HTMLElement>("#task :is(input, button)")?.focus();
        else wishes.toCells();
      }}>${isTask ? say`To the task` : say`To the cells`}</a>
      <nav class="left" aria-label=${say`Pages of the notebook`}>
        <p class="brand">${hullMark}<span>Athwart</span></p>
        <p class="job" title=${notebook.about.title}>${notebook.about.title}</p>
        <p class="soft options">${listed(optionsOf(notebook))}</p>
        ${pageList(desk, this.standing, (one, byMouse) => this.go(one, byMouse), tasks.keepsPages ? undefined : wishes)}
        ${this.files()}
      </nav>
      <main>
        ${alarms(desk, this.parts.offline.stored, wishes.remedies)}
        <header class="head"><h1><span class="number">${number}</span>${page.name}</h1>${titleTick(desk)}${tasks.tools()}${isTask ? nothing : tools(desk, wishes, this.beside?.name, tasks.isTraineeSide)}</header>
        ${isTask ? tasks.main(page) : this.cells(page)}
        ${this.said()}
      </main>
      <aside class="side" aria-label=${isTask ? say`Rule and limits` : (this.beside?.name ?? (isFunctionPage(page) ? say`Function and notes` : say`Drawing, working and notes`))}>${divider()}<div class="side-content"></div></aside>
      <footer aria-label=${say`Title block`}>${titleBlock(notebook)}</footer>`;
  }

  private cells(page: Page): TemplateResult {
    return html`${verdictLines(this.standing?.get(page.id), (check) => this.show(check))}
        ${this.parts.line.element}
        ${this.gridHost}
        <p class="keys soft">${say`Enter or typing edits, = begins a formula, Shift F10 opens what can be done, Alt Page Up and Page Down turn the page, Escape then Tab leaves the cells.`}</p>`;
  }

  /** What stands beside the cells; findings speak of every page, solutions included, and stay off the trainee's side. */
  private get beside(): Beside | undefined {
    return this.parts.tasks.isTraineeSide ? undefined : this.parts.side.shown;
  }

  private changed(): TemplateResult | typeof nothing {
    if (!this.desk.isUnsaved) return nothing;
    return html`<span class="dot" title=${say`Changed since it was opened or saved`}></span><span class="unseen">${say`, has changes`}</span>`;
  }

  private files(): TemplateResult {
    const { desk, wishes } = this;
    const off = !desk.live;
    return html`<div class="files" role="group" aria-label=${say`Files`}>
      <p class="group">${say`Notebook`}</p>
      <button type="button" ?disabled=${off} aria-haspopup="dialog" @click=${wishes.notebooks}>${say`Notebooks …`}</button>
      <button type="button" ?disabled=${off} @click=${wishes.openNotebook}>${say`Open …`}</button>
      ${this.parts.tasks.isTraineeSide ? nothing : html`<button type="button" ?disabled=${off} @click=${wishes.saveNotebook}>${say`Save`}${this.changed()}</button>`}
      <button type="button" aria-haspopup="dialog" @click=${wishes.language}>${say`Language …`}</button>
      ${desk.safety.brief ? html`<p class="safety ${isAlarming(desk.safety) ? "short" : "soft"}">${desk.safety.brief}</p>` : nothing}
      ${this.parts.tasks.shows(desk.page) ? nothing : this.pageFiles(off)}
    </div>`;
  }

  private pageFiles(off: boolean): TemplateResult {
    const { wishes } = this;
    return html`<p class="group">${say`This page as CSV`}</p>
      <button type="button" ?disabled=${off} @click=${wishes.importPage}>${say`Import …`}</button>
      <button type="button" ?disabled=${off} @click=${() => wishes.exportPage("typed")} title=${say`What was typed, formulas included`}>${say`Export`}</button>
      <button type="button" ?disabled=${off} @click=${() => wishes.exportPage("values")} title=${say`Results in the place of formulas`}>${say`Values only`}</button>
      <button type="button" ?disabled=${off} aria-haspopup="dialog" @click=${wishes.exportFor} title=${say`With another separator and decimal sign`}>${say`For others …`}</button>`;
  }

  private said(): TemplateResult {
    const { kind, sentence } = this.desk.notice;
    const news = kind === "refused" ? [] : this.news;
    const shown = news.slice(0, 2).join("; ");
    return html`<p class="said ${kind}" role="status">${kind === "refused" ? html`<span class="short">${cornerMark}</span> ` : nothing}${sentence}${
      news.length > 0
        ? html` <b>${say`Changed: ${shown}${news.length > 2 ? say`; and ${news.length - 2} more checks` : ""}.`}</b>`
        : nothing
    }</p>`;
  }

  private side(): TemplateResult {
    const { desk } = this;
    const { page, block, live } = desk;
    if (this.parts.tasks.shows(page)) return html`${this.parts.tasks.side(page)}`;
    const { beside } = this;
    if (beside) return beside.show();
    if (isFunctionPage(page) && live && this.own)
      return html`${this.own(desk, page, this.wishes.toCells)}${this.parts.notes.show()}`;
    const name = cellName(block.from);
    const go = ({ page: at, row, column }: Position) => {
      desk.select(one({ row, column }), at);
      this.wishes.toCells();
    };
    const parts: WorkingParts = {
      graph: live && this.graph?.show(live, { page: page.id, ...block.from }),
      about: this.wishes.functions,
      unfold: this.wishes.unfold,
    };
    return html`
      ${this.parts.drawings.show()}
      ${live && this.work ? html`<h2>${say`Working`} <em>${name}</em></h2>${this.work(live, page, block.from, go, parts)}` : nothing}
      ${this.parts.notes.show()}`;
  }

  private go(page: Page, byMouse: boolean): void {
    this.desk.go(page.id);
    if (byMouse && !this.parts.line.isPointing) this.wishes.toCells();
  }

  private show({ page, row, column }: Check): void {
    this.desk.select(one({ row, column }), page.id);
    this.wishes.toCells();
  }
}
