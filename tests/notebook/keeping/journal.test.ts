import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { writeNotebook } from "../../../src/notebook/files";
import { History } from "../../../src/notebook/history";
import { type Entry, Replay, stepEntry } from "../../../src/notebook/keeping/journal";
import { shortened } from "../../../src/notebook/keeping/shorten";
import { notebookOf, snapshotOf } from "../../../src/notebook/keeping/snapshot";
import type { Notebook } from "../../../src/notebook/model";
import { Refusal } from "../../../src/notebook/refusal";
import { anyKind, type Deed, deed, edit, small } from "./deeds";

/** The sequences that must hold; more of them on demand. */
const sequences = Number(process.env.ATHWART_SEQUENCES ?? 2000);

const printed = new WeakMap<Notebook, string>();
const filesOf = (notebook: Notebook): string => {
  const files = printed.get(notebook) ?? JSON.stringify([...writeNotebook(notebook)]);
  printed.set(notebook, files);
  return files;
};

/** What the database gives back of what it is given: a copy of plain data, with nothing shared. */
const stored = <T>(data: T): T => structuredClone(data);

/** A notebook with its history as an open one has it, without a calculation. */
class Worked {
  history = new History();
  seq = 0;
  entries: Entry[] = [];

  constructor(public notebook: Notebook) {}

  /** @returns the entry for the journal, or undefined when nothing came of it. */
  do(one: Deed): Entry | undefined {
    if (one.kind === "undo" || one.kind === "redo") {
      const step = one.kind === "undo" ? this.history.back() : this.history.forward();
      if (!step) return undefined;
      this.notebook = one.kind === "undo" ? step.before : step.after;
      return { seq: ++this.seq, when: this.seq, label: step.label, way: one.kind };
    }
    const before = this.notebook;
    const after = edit(before, one);
    if (after === before) return undefined;
    const at = before.pages.slice(0, 1).map(({ id }) => ({ page: id, row: 0, column: 0 }));
    const step = { label: one.kind, before, after, at };
    this.history.add(step);
    this.notebook = after;
    return stepEntry(++this.seq, this.seq, step);
  }
}

const done = (history: History) => history.all.steps.map(({ label }) => label).join() + history.all.done;

describe("the journal of a notebook", () => {
  it(`gives back texts, files and history after every step of ${sequences} random sequences of 50, reloads among them`, () => {
    fc.assert(
      fc.property(fc.array(deed(anyKind), { minLength: 50, maxLength: 50 }), (deeds) => {
        let worked = new Worked(small());
        const base = stored(snapshotOf(worked.notebook));
        const replay = new Replay(notebookOf(base));
        const entries: Entry[] = [];
        let files = filesOf(worked.notebook);
        for (const one of deeds) {
          if (one.kind === "reload") {
            // From the beginning; from then on the work goes on with what was read.
            const read = new Replay(notebookOf(base));
            for (const entry of entries) read.follow(entry);
            const again = new Worked(read.notebook);
            again.history = read.history;
            again.seq = worked.seq;
            worked = again;
          } else {
            try {
              const entry = worked.do(one);
              if (!entry) continue;
              entries.push(stored(entry));
              replay.follow(entries.at(-1) as Entry);
              files = filesOf(worked.notebook);
            } catch (cause) {
              if (!(cause instanceof Refusal)) throw cause;
            }
          }
          expect(filesOf(worked.notebook)).toBe(files);
          expect(filesOf(replay.notebook)).toBe(files);
          expect(done(replay.history)).toBe(done(worked.history));
        }
      }),
      { numRuns: sequences },
    );
  }, 600_000);

  it("is told with fewer entries, and still gives every later state and the whole history", () => {
    fc.assert(
      fc.property(
        fc.array(deed(anyKind), { minLength: 60, maxLength: 60 }),
        fc.integer({ min: 0, max: 40 }),
        (deeds, kept) => {
          const worked = new Worked(small());
          const base = snapshotOf(worked.notebook);
          const entries: Entry[] = [];
          const states = new Map([[0, filesOf(worked.notebook)]]);
          for (const one of deeds) {
            try {
              const entry = one.kind === "reload" ? undefined : worked.do(one);
              if (!entry) continue;
              entries.push(entry);
              states.set(entry.seq, filesOf(worked.notebook));
            } catch (cause) {
              if (!(cause instanceof Refusal)) throw cause;
            }
          }
          const shorter = shortened({ base: notebookOf(base), seq: 0, entries }, kept);
          expect(shorter.entries.length).toBeLessThanOrEqual(entries.length);
          const replay = new Replay(notebookOf(stored(snapshotOf(shorter.base))));
          let { seq } = shorter;
          const untold = entries.length - kept;
          for (const entry of stored(shorter.entries)) {
            expect(entry.seq).toBe(++seq);
            replay.follow(entry);
            if (seq >= untold) expect(filesOf(replay.notebook)).toBe(states.get(seq));
          }
          expect(filesOf(replay.notebook)).toBe(filesOf(worked.notebook));
          expect(done(replay.history)).toBe(done(worked.history));
          while (worked.history.last) {
            const before = worked.history.back()?.before as Notebook;
            expect(filesOf(replay.history.back()?.before as Notebook)).toBe(filesOf(before));
          }
        },
      ),
      { numRuns: 200 },
    );
  }, 120_000);

  it("keeps small what is small: one cell of a large page", () => {
    const notebook = notebookOf({
      about: JSON.stringify({ version: 1, title: "Large", pages: [{ name: "A", file: "a.csv" }] }),
      pages: [
        { name: "A", file: "a.csv", rows: Array.from({ length: 2000 }, (_, i) => [String(i), "a text", "another"]) },
      ],
    });
    const worked = new Worked(notebook);
    const entry = worked.do({ kind: "edit", a: 0, b: 1000, c: 1, text: "350" });
    expect(JSON.stringify(entry).length).toBeLessThan(300);
  });
});
