// Past 150 lines: one class is an open kept notebook: its states, versions and standing belong together.

import { say } from "../../words/say";
import type { History } from "../history";
import { checkLength } from "../limits";
import type { LiveNotebook } from "../live";
import type { Notebook } from "../model";
import { Refusal } from "../refusal";
import type { Database, NotebookRecord, Place, Version } from "./database";
import { loaded, stored } from "./load";
import { snapshotSize } from "./sizes";
import { notebookOf, snapshotOf } from "./snapshot";
import { readsSentence, type Standing } from "./standing";
import type { Writer } from "./writer";

/** A state the notebook was in: after the entry of that number; `label` says what led to it. */
export interface State {
  readonly seq: number;
  readonly when: number;
  readonly label: string;
  readonly way: "step" | "undo" | "redo" | "start";
}

/** How far back states are offered. */
const mostStates = 50;

/** What a kept notebook is made of; given by the keeping that opened it. */
export interface Inside {
  readonly database: Database;
  readonly record: NotebookRecord;
  readonly notebook: Notebook;
  readonly history: History;
  readonly mended: string | undefined;
  /** Undefined where another window has the notebook. */
  readonly writer: ((tell: () => void) => Writer) | undefined;
  readonly release: () => void;
  /** Calls when the notebook was changed by the window that has it. */
  readonly onKept: (listener: (last: number) => void) => () => void;
}

/** A notebook that is kept in the browser's database, opened to be written, or to be read beside another window. */
export class Kept {
  readonly id: string;
  /** The notebook and its history as they were kept: `new LiveNotebook(notebook, history)`, then `attach`. */
  readonly notebook: Notebook;
  readonly history: History;
  /** Says what was lost where the journal was damaged. */
  readonly mended: string | undefined;
  private readonly writer: Writer | undefined;
  private readonly listeners = new Set<() => void>();
  private readonly endings: (() => void)[] = [];
  private behind = false;

  constructor(private readonly inside: Inside) {
    this.id = inside.record.id;
    this.notebook = inside.notebook;
    this.history = inside.history;
    this.mended = inside.mended;
    this.writer = inside.writer?.(() => this.tell());
    if (!this.writer) {
      const deaf = inside.onKept(() => {
        this.behind = true;
        this.tell();
      });
      this.endings.push(deaf);
    }
  }

  get standing(): Standing {
    return this.writer?.standing ?? { kind: "reads", sentence: readsSentence, behind: this.behind };
  }

  /** Whether changes made in this window are kept. */
  get writes(): boolean {
    const { kind } = this.standing;
    return kind !== "reads" && kind !== "taken";
  }

  /** Calls whenever the standing has changed. */
  subscribe(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /**
   * Keeps every change of a notebook from now on. In a window that only reads nothing is kept.
   *
   * @param live must be in the state that was kept last.
   * @returns ends it.
   */
  attach(live: LiveNotebook): () => void {
    const { writer } = this;
    if (!writer) return () => undefined;
    if (live.notebook !== writer.state) throw new Error(say`the notebook to keep is not in the state that was kept`);
    const end = live.subscribe((change) => writer.add(change, live.notebook));
    this.endings.push(end);
    return end;
  }

  /** Keeps where the person is, to be there again after opening. */
  remember(place: Place): void {
    this.writer?.remember(place);
  }

  /** Where the person was when the notebook was open last. */
  get place(): Place | undefined {
    return this.inside.record.place;
  }

  /** Waits until everything is written or refused; offers once more what was refused. @returns whether all is kept. */
  async flush(): Promise<boolean> {
    return (await this.writer?.flush()) ?? false;
  }

  /** The last 50 states, the present one first. @throws Refusal or the database's error. */
  async states(): Promise<readonly State[]> {
    await this.writer?.flush();
    const { record, entries } = await stored(this.inside.database, this.id);
    const states = entries.slice(-mostStates).map(({ seq, when, label, way }): State => ({ seq, when, label, way }));
    const start: State = { seq: record.base, when: record.created, label: say`as it was at the start`, way: "start" };
    return (states.length < mostStates ? [start, ...states] : states).reverse();
  }

  /** The notebook in one of its states; `live.apply(label, backTo(it))` goes back to it. @throws Refusal when it is gone. */
  async stateAt(seq: number): Promise<Notebook> {
    await this.writer?.flush();
    const { notebook, last } = loaded(await stored(this.inside.database, this.id), seq);
    if (last !== seq) throw new Refusal(say`This state is no longer kept; choose a later one.`);
    return notebook;
  }

  /** The notebook as the other window has kept it by now; for a window that reads. */
  async reread(): Promise<Notebook> {
    const { notebook } = loaded(await stored(this.inside.database, this.id));
    this.behind = false;
    this.tell();
    return notebook;
  }

  get versions(): readonly Version[] {
    return (this.writer?.kept ?? this.inside.record).versions;
  }

  /** Keeps the present state under a name. @throws Refusal for an empty name or in a window that reads. */
  async nameVersion(name: string): Promise<Version> {
    const writer = this.writing();
    if (name.trim() === "") throw new Refusal(say`A version needs a name.`);
    checkLength(say`Version`, name.trim());
    const state = snapshotOf(writer.state);
    const number = 1 + this.versions.reduce((most, version) => Math.max(most, version.number), 0);
    const version = { number, name: name.trim(), when: Date.now(), size: snapshotSize(state) };
    await writer.amend((old, put) => {
      put.snapshot(number, state);
      return { ...old, versions: [...old.versions, version] };
    });
    return version;
  }

  /** The notebook of a named version. @throws Refusal when it is gone. */
  async versionAt(number: number): Promise<Notebook> {
    const found = await this.inside.database.get("snapshots", [this.id, number]);
    if (!found) throw new Refusal(say`This version is no longer kept; choose another.`);
    return notebookOf(found.state);
  }

  async dropVersion(number: number): Promise<void> {
    await this.writing().amend((old, put) => {
      put.dropSnapshot(number);
      return { ...old, versions: old.versions.filter((version) => version.number !== number) };
    });
  }

  /** Writes what is left and lets other windows have the notebook. */
  async close(): Promise<void> {
    for (const end of this.endings) end();
    await this.writer?.flush();
    this.writer?.stop();
    this.listeners.clear();
    this.inside.release();
  }

  private writing(): Writer {
    if (!this.writer) throw new Refusal(readsSentence);
    return this.writer;
  }

  private tell(): void {
    for (const listener of this.listeners) listener();
  }
}
