// Past 150 lines: the one gateway to an open notebook: texts, engine and history move together.

import { OutOfTime } from "../engine/allowance";
import { Engine, type EngineCell } from "../engine/engine";
import type { Parsed } from "../engine/parsed";
import { blank, type CellValue } from "../engine/value";
import { say } from "../words/say";
import type { Change } from "./change";
import { changedTexts, sameShape, type Written } from "./difference";
import { History, type Step } from "./history";
import { type Notebook, type Page, type Position, pageById, textAt } from "./model";
import type { FindFunction } from "./named-function";
import { finderOf, ownCalls, sameFunctions } from "./own/own-functions";
import { type RowRemark, rowRemark } from "./own/row-remark";
import { Refusal } from "./refusal";

export type { Change };

const tooLong = ({ message }: OutOfTime): Refusal =>
  new Refusal(say`This was not done: ${message}. Use smaller ranges, or fewer formulas over the same cells.`);

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
  private readonly listeners = new Set<Listener>();

  /**
   * @param history the steps that led to this notebook, where they were kept; empty for one that is new.
   * @throws Refusal when the notebook takes too long to calculate.
   */
  constructor(
    notebook: Notebook,
    private readonly history = new History(),
  ) {
    this.current = notebook;
    this.engine = this.build(notebook);
  }

  get notebook(): Notebook {
    return this.current;
  }

  /** Finds a named function that the cells can call. */
  get find(): FindFunction {
    return finderOf(this.current);
  }

  /**
   * Makes a change, as one step of the history.
   *
   * @param edit gives the new notebook; when it throws, or its calculation takes too long, nothing has changed.
   * @returns whether there was anything to change.
   */
  apply(label: string, edit: (notebook: Notebook) => Notebook, at: readonly Position[] = []): boolean {
    const before = this.current;
    const after = edit(before);
    if (after === before) return false;
    const cells = this.show(after);
    this.history.add({ label, before, after, at });
    this.tell("step", label, at, cells);
    return true;
  }

  /** Calculates another state of the notebook without making it a step: for a follower that has no history. */
  follow(after: Notebook): void {
    if (after !== this.current) this.show(after);
  }

  /** Takes the last step back; undefined when there is none. */
  undo(): Step | undefined {
    const step = this.history.last;
    if (!step) return undefined;
    const cells = this.show(step.before);
    this.history.back();
    this.tell("undo", step.label, step.at, cells);
    return step;
  }

  /** Does again what was taken back last; undefined when there is nothing. */
  redo(): Step | undefined {
    const step = this.history.next;
    if (!step) return undefined;
    const cells = this.show(step.after);
    this.history.forward();
    this.tell("redo", step.label, step.at, cells);
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

  /** The values of a row from a column on, those that are numbers. */
  numbers(page: Page, row: number, from: number): number[] {
    const sheet = this.current.pages.findIndex(({ id }) => id === page.id);
    return sheet < 0 ? [] : this.engine.numbers(sheet, row, from, page.rows[row]?.length ?? 0);
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

  /**
   * The values of a formula that stands in no cell of the notebook.
   *
   * @param page the page that references without one mean; the first when left out.
   */
  calculate(formula: string, page?: string): CellValue[][] {
    return this.engine.calculate(formula, this.sheetOf(page));
  }

  /** How the engine reads the formula of a cell; sheets in it are the places of pages in the notebook. */
  parsed(at: Position): Parsed | undefined {
    const cell = this.engineCell(at);
    return cell && this.engine.parsed(cell);
  }

  /** How the engine reads a formula that stands in no cell; undefined when it does not show that. */
  parse(formula: string, page?: string): Parsed | undefined {
    return this.engine.parse(formula, this.sheetOf(page));
  }

  /** Whether `parsed` and `parse` can answer; without them the notebook calculates all the same. */
  get showsFormulas(): boolean {
    return this.engine.showsFormulas;
  }

  /** What is to be said of a row of a function page; undefined where there is nothing. */
  ownRemark(page: Page, row: number): RowRemark | undefined {
    return rowRemark(this.current, page, row);
  }

  close(): void {
    this.listeners.clear();
    this.engine.dispose();
  }

  private sheetOf(page: string | undefined): number {
    return page === undefined
      ? 0
      : Math.max(
          0,
          this.current.pages.findIndex((one) => one.id === page),
        );
  }

  private engineCell(at: Position): EngineCell | undefined {
    const sheet = this.current.pages.findIndex((page) => page.id === at.page);
    return sheet < 0 ? undefined : { sheet, row: at.row, column: at.column };
  }

  /** Brings texts and engine to another state; the cells that changed, or undefined when everything may have. */
  private show(after: Notebook): readonly EngineCell[] | undefined {
    const before = this.current;
    const isSame = sameShape(before, after) && sameFunctions(before, after);
    const cells = isSame ? this.write(after, changedTexts(before, after)) : this.rebuild(after);
    this.current = after;
    return cells;
  }

  private tell(
    way: Change["way"],
    label: string,
    at: readonly Position[],
    cells: readonly EngineCell[] | undefined,
  ): void {
    const { pages } = this.current;
    const change: Change = {
      way,
      label,
      structure: cells === undefined,
      at,
      cells: (cells ?? []).map(({ sheet, row, column }) => ({ page: (pages[sheet] as Page).id, row, column })),
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
    } catch (cause) {
      if (!(cause instanceof OutOfTime)) return this.rebuild(after);
      // What was written so far is void: the texts before the change are calculated anew.
      this.rebuild(this.current);
      throw tooLong(cause);
    }
  }

  private build(notebook: Notebook): Engine {
    try {
      return new Engine(notebook.pages, ownCalls(notebook));
    } catch (cause) {
      throw cause instanceof OutOfTime ? tooLong(cause) : cause;
    }
  }

  private rebuild(after: Notebook): undefined {
    const engine = this.build(after);
    this.engine.dispose();
    this.engine = engine;
    return undefined;
  }
}
