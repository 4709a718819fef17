import { expect } from "vitest";
import { writeNotebook } from "../../../src/notebook/files";
import { type Entry, Replay, stepEntry } from "../../../src/notebook/keeping/journal";
import { notebookOf, snapshotOf } from "../../../src/notebook/keeping/snapshot";
import { type Change, LiveNotebook } from "../../../src/notebook/live";
import type { Notebook } from "../../../src/notebook/model";
import { Refusal } from "../../../src/notebook/refusal";
import { sample } from "../sample";
import { type Deed, edit } from "./deeds";

const printed = new WeakMap<Notebook, string>();
export function filesOf(notebook: Notebook): string {
  const files = printed.get(notebook) ?? JSON.stringify([...writeNotebook(notebook)]);
  printed.set(notebook, files);
  return files;
}

/** What the database gives back of what it is given: a copy of plain data, with nothing shared. */
const stored = <T>(data: T): T => structuredClone(data);

/** An open notebook with its journal, as the program has it, without a browser. */
export class Work {
  live = this.listen(new LiveNotebook(sample()));
  readonly base = stored(snapshotOf(this.live.notebook));
  readonly entries: Entry[] = [];
  private readonly replay = new Replay(notebookOf(this.base));
  private last = this.live.notebook;
  /** Whether the last step was written into the running engine, which could go wrong where a new one cannot. */
  wasWritten = false;

  private listen(live: LiveNotebook): LiveNotebook {
    live.subscribe((change) => this.note(change));
    return live;
  }

  private note({ way, label, at, structure }: Change): void {
    this.wasWritten = !structure;
    const seq = this.entries.length + 1;
    const after = this.live.notebook;
    const entry: Entry =
      way === "step" ? stepEntry(seq, seq, { label, before: this.last, after, at }) : { seq, when: seq, label, way };
    this.last = after;
    this.entries.push(stored(entry));
    this.replay.follow(this.entries.at(-1) as Entry);
  }

  /** The notebook as the journal leads to it. */
  get replayed(): Notebook {
    return this.replay.notebook;
  }

  /** Closes the program and opens it again: everything comes from the journal. */
  reload(): void {
    const read = new Replay(notebookOf(this.base));
    for (const entry of this.entries) read.follow(entry);
    this.live.close();
    this.live = this.listen(new LiveNotebook(read.notebook, read.history));
    this.last = read.notebook;
  }
}

/** Does one thing, and says what the files must be after it by an oracle that only copies. */
export function carryOut(work: Work, one: Deed, oracle: { past: string[]; now: number }): void {
  if (one.kind === "reload") {
    work.reload();
  } else if (one.kind === "undo") {
    expect(work.live.undo() !== undefined).toBe(oracle.now > 0);
    oracle.now = Math.max(0, oracle.now - 1);
  } else if (one.kind === "redo") {
    expect(work.live.redo() !== undefined).toBe(oracle.now < oracle.past.length - 1);
    oracle.now = Math.min(oracle.past.length - 1, oracle.now + 1);
  } else {
    try {
      if (work.live.apply(one.kind, (notebook) => edit(notebook, one))) {
        oracle.past = [...oracle.past.slice(0, oracle.now + 1), filesOf(work.live.notebook)];
        oracle.now = oracle.past.length - 1;
      }
    } catch (cause) {
      if (!(cause instanceof Refusal)) throw cause;
      expect(cause.message).toMatch(/^[A-Z"].{10,}\.$|@$/s);
    }
  }
}
