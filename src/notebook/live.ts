import { Engine, type EngineCell } from "../engine/engine";
import { blank, type CellValue } from "../engine/value";
import type { Change } from "./change";
import { changedTexts, sameShape, type Written } from "./difference";
import { History, type Step } from "./history";
import { type Notebook, type Page, type Position, pageById, textAt } from "./model";

export type { Change };

type Listener = (change: Change) => void;

/**
 * An open notebook: its texts, their calculation, and its one history.
 *
 * Every change goes through `apply`, `undo` or `redo`; the texts are the truth, and the engine is brought up
 * to date from their difference, or built anew when that is not enough.
 */
export class LiveNotebook {
  private current: Notebook;
  private engine: Engine;
  private readonly history = new History();
  private readonly listeners = new Set<Listener>();

  /** @throws Error when the notebook cannot be calculated at all (limits of the engine). */
  constructor(notebook: Notebook) {
    this.current = notebook;
    this.engine = new Engine(notebook.pages);
  }

  get notebook(): Notebook {
    return this.current;
  }

  /**
   * Makes a change, as one step of the history.
   *
   * @param edit gives the new notebook; when it throws, nothing has changed.
   * @returns whether there was anything to change.
   */
  apply(label: string, edit: (notebook: Notebook) => Notebook, at: readonly Position[] = []): boolean {
    const before = this.current;
    const after = edit(before);
    if (after === before) return false;
    this.show(label, after, at);
    this.history.add({ label, before, after, at });
    return true;
  }

  /** Takes the last step back; undefined when there is none. */
  undo(): Step | undefined {
    const step = this.history.back();
    if (step) this.show(step.label, step.before, step.at);
    return step;
  }

  /** Does again what was taken back last; undefined when there is nothing. */
  redo(): Step | undefined {
    const step = this.history.forward();
    if (step) this.show(step.label, step.after, step.at);
    return step;
  }

  /** What undo would take back and redo would do again, in words. */
  get steps(): { readonly undo: string | undefined; readonly redo: string | undefined } {
    return { undo: this.history.last?.label, redo: this.history.next?.label };
  }

  subscribe(listener: Listener): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  text(at: Position): string {
    const page = pageById(this.current, at.page);
    return page ? textAt(page, at.row, at.column) : "";
  }

  value(at: Position): CellValue {
    const cell = this.engineCell(at);
    return cell ? this.engine.value(cell) : blank;
  }

  /** Whether a cell shows part of another cell's result and holds nothing itself. */
  isSpilled(at: Position): boolean {
    const cell = this.engineCell(at);
    return cell ? this.engine.isSpilled(cell) : false;
  }

  /** The formula as the engine holds it; equal texts give equal formulas. */
  engineFormula(at: Position): string | undefined {
    const cell = this.engineCell(at);
    return cell && this.engine.formula(cell);
  }

  /** The values of a formula that stands in no cell of the notebook. */
  calculate(formula: string): CellValue[][] {
    return this.engine.calculate(formula);
  }

  close(): void {
    this.listeners.clear();
    this.engine.dispose();
  }

  private engineCell(at: Position): EngineCell | undefined {
    const sheet = this.current.pages.findIndex((page) => page.id === at.page);
    return sheet < 0 ? undefined : { sheet, row: at.row, column: at.column };
  }

  private show(label: string, after: Notebook, at: readonly Position[]): void {
    const before = this.current;
    const structure = !sameShape(before, after);
    const cells = structure ? this.rebuild(after) : this.write(after, changedTexts(before, after));
    this.current = after;
    const change: Change = {
      label,
      structure: structure || cells === undefined,
      at,
      cells: (cells ?? []).map(({ sheet, row, column }) => ({
        page: (after.pages[sheet] as Page).id,
        row,
        column,
      })),
    };
    for (const listener of this.listeners) listener(change);
  }

  private write(after: Notebook, cells: readonly Written[]): readonly EngineCell[] | undefined {
    if (cells.length === 0) return [];
    // A result over several cells keeps its old shape in the engine when its surroundings change.
    if (this.engine.hasArrays) return this.rebuild(after);
    try {
      const changed = this.engine.write(cells);
      return this.engine.hasArrays ? this.rebuild(after) : changed;
    } catch {
      return this.rebuild(after);
    }
  }

  private rebuild(after: Notebook): undefined {
    const engine = new Engine(after.pages);
    this.engine.dispose();
    this.engine = engine;
    return undefined;
  }
}
