// Past 150 lines: one class is what lies on the table; all the screen asks it.

import type { History } from "../notebook/history";
import type { Change, LiveNotebook } from "../notebook/live";
import { type Notebook, type Page, pageById } from "../notebook/model";
import { hasHeader } from "../notebook/own/function-page";
import { Refusal } from "../notebook/refusal";
import { counted, say } from "../words/say";
import { type Block, cellOf, firstBlock, within } from "./block";
import { CellMarks } from "./cell-marks";
import { calm, type Safety } from "./keeping/safety";
import { capital } from "./shown/count-words";

/** What the person is told: something done, or something that could not be done. */
export interface Notice {
  readonly kind: "done" | "refused";
  readonly sentence: string;
}

export type Happening =
  | { readonly kind: "opened" | "page" | "selection" | "notice" | "calculating" }
  | { readonly kind: "change"; readonly change: Change };

/** What may not be done with the open notebook for now. */
export interface Bounds {
  /** Why the notebook is not handed out. */
  readonly save: string;
  /** @throws Refusal for an edit that may not be made. */
  readonly hold: (before: Notebook, after: Notebook) => void;
}

type MakeLive = (notebook: Notebook, history?: History) => LiveNotebook;
type Listener = (happening: Happening) => void;

/** What lies on the table: the open notebook, the page that is shown, what is selected on it, and what was last said. */
export class Desk {
  /** What lies over the cells. */
  readonly marks = new CellMarks();
  /** Answers undefined where everything may be done. */
  bounds: () => Bounds | undefined = () => undefined;
  private shown: string;
  private readonly blocks = new Map<string, Block>();
  private readonly listeners = new Set<Listener>();
  private calculated: LiveNotebook | undefined;
  private makeLive: MakeLive | undefined;
  private startHistory: History | undefined;
  private howSafe: Safety = calm("open");
  private said: Notice = { kind: "done", sentence: "" };
  private kept: Notebook;

  /** @param first shown at once, and calculated when the engine is there. */
  constructor(private first: Notebook) {
    this.shown = (first.pages[0] as Page).id;
    this.kept = first;
  }

  get notebook(): Notebook {
    return this.calculated?.notebook ?? this.first;
  }

  /** Undefined until the engine is loaded. */
  get live(): LiveNotebook | undefined {
    return this.calculated;
  }

  get page(): Page {
    return pageById(this.notebook, this.shown) ?? (this.notebook.pages[0] as Page);
  }

  get block(): Block {
    return within(this.page, this.blocks.get(this.page.id) ?? firstBlock(this.page));
  }

  get notice(): Notice {
    return this.said;
  }

  /** Whether anything changed since the notebook was opened or saved that only this window has. */
  get isUnsaved(): boolean {
    return this.notebook !== this.kept && this.howSafe.kind !== "kept";
  }

  /** Whether the work is kept, and what is said of that. */
  get safety(): Safety {
    return this.howSafe;
  }

  setSafety(safety: Safety): void {
    if (safety.kind === this.howSafe.kind && safety.sentence === this.howSafe.sentence) return;
    this.howSafe = safety;
    this.tell({ kind: "notice" });
  }

  /** Why nothing can be changed here; undefined where it can. */
  get closed(): string | undefined {
    const { kind, sentence } = this.howSafe;
    return kind === "closed" || kind === "behind" ? sentence : undefined;
  }

  subscribe(listener: Listener): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Brings the engine in; from then on everything is calculated. */
  calculateWith(makeLive: MakeLive): void {
    this.makeLive = makeLive;
    this.calculate(this.first, this.startHistory);
    this.tell({ kind: "calculating" });
  }

  /**
   * Puts another notebook in the place of the open one.
   *
   * @param history the steps that led to it, where they were kept.
   * @throws Error when it cannot be calculated.
   */
  open(notebook: Notebook, history?: History): void {
    if (this.makeLive) this.calculate(notebook, history);
    this.first = notebook;
    this.startHistory = history;
    this.kept = notebook;
    this.blocks.clear();
    this.shown = (notebook.pages[0] as Page).id;
    this.tell({ kind: "opened" });
  }

  saved(): void {
    this.kept = this.notebook;
    this.tell({ kind: "notice" });
  }

  go(page: string): void {
    if (page === this.shown || !pageById(this.notebook, page)) return;
    this.shown = page;
    this.tell({ kind: "page" });
  }

  /** Selects cells, on their own page. */
  select(block: Block, page = this.page.id): void {
    this.blocks.set(page, block);
    if (page === this.page.id) this.tell({ kind: "selection" });
    else this.go(page);
  }

  say(sentence: string, kind: Notice["kind"] = "done"): void {
    this.said = { kind, sentence };
    this.tell({ kind: "notice" });
  }

  /** Runs something that may be refused; the refusal is said and nothing has changed. */
  attempt<T>(what: () => T): T | undefined {
    try {
      return what();
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      this.say(problem.message, "refused");
      return undefined;
    }
  }

  /**
   * Makes a change to the notebook as one step.
   *
   * @returns whether it was made; a refusal is said, and one whose cells already read so is no change.
   */
  apply(label: string, edit: (notebook: Notebook) => Notebook, block = this.block): boolean {
    const { calculated, closed } = this;
    if (!calculated) return false;
    if (closed !== undefined) {
      this.say(closed, "refused");
      return false;
    }
    const { page } = this;
    const { row, column } = cellOf(block);
    const last = { page: page.id, row: block.to.row, column: block.to.column };
    const bounds = this.bounds();
    const held = (before: Notebook): Notebook => {
      const after = edit(before);
      bounds?.hold(before, after);
      return after;
    };
    const isChanged = this.attempt(() => calculated.apply(label, held, [{ page: page.id, row, column }, last]));
    if (isChanged === false) this.say(say`Nothing changed: it reads so already.`);
    return isChanged ?? false;
  }

  private calculate(notebook: Notebook, history?: History): void {
    const live = this.makeLive?.(notebook, history);
    this.calculated?.close();
    this.calculated = live;
    live?.subscribe((change) => {
      const others = change.cells.length - 1;
      const followed = change.structure || others < 1 ? "" : say`; ${counted(others, "other cell")} followed`;
      this.said = { kind: "done", sentence: `${capital(change.label)}${followed}.` };
      this.tell({ kind: "change", change });
    });
  }

  private tell(happening: Happening): void {
    for (const listener of this.listeners) listener(happening);
  }
}

/** The first line of a page that holds cells: below a header. */
export const firstLine = (page: Pick<Page, "rows">): number => (hasHeader(page) ? 1 : 0);
