import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isFormula } from "../../src/engine/content";
import { Engine } from "../../src/engine/engine";
import { sameValue } from "../../src/engine/value";
import { readNotebook, writeNotebook } from "../../src/notebook/files";
import { History } from "../../src/notebook/history";
import { type Entry, Replay, stepEntry } from "../../src/notebook/keeping/journal";
import { notebookOf, snapshotOf } from "../../src/notebook/keeping/snapshot";
import { type Change, LiveNotebook } from "../../src/notebook/live";
import type { Notebook } from "../../src/notebook/model";
import { Refusal } from "../../src/notebook/refusal";
import { anyKind, type Deed, deed, edit } from "./keeping/deeds";
import { sample } from "./sample";

/** So many sequences, from this seed on; more of them on demand (DEVELOPERS.md has the figures of the long run). */
const sequences = Number(process.env.ATHWART_HISTORIES ?? 8);
const seed = Number(process.env.ATHWART_SEED ?? 7);

const printed = new WeakMap<Notebook, string>();
function filesOf(notebook: Notebook): string {
  const files = printed.get(notebook) ?? JSON.stringify([...writeNotebook(notebook)]);
  printed.set(notebook, files);
  return files;
}

/** What the database gives back of what it is given: a copy of plain data, with nothing shared. */
const stored = <T>(data: T): T => structuredClone(data);

/** An open notebook with its journal, as the program has it, without a browser. */
class Work {
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

/** Every cell that holds a formula must be one in the engine, and no other. */
function compareTexts(live: LiveNotebook): void {
  for (const page of live.notebook.pages) {
    page.rows.forEach((cells, row) => {
      cells.forEach((text, column) => {
        const at = { page: page.id, row, column };
        const holds = live.engineFormula(at) !== undefined;
        if (live.text(at) !== text || holds !== isFormula(text)) {
          expect({ page: page.name, row, column, text, holds }).toBe("equal texts");
        }
      });
    });
  }
}

/** The running calculation must equal one made from the saved files, cell by cell: text, formula and value. */
function compareWithFiles(live: LiveNotebook): void {
  const reloaded = readNotebook(writeNotebook(live.notebook));
  const engine = new Engine(reloaded.pages);
  const differences: unknown[] = [];
  live.notebook.pages.forEach((page, sheet) => {
    expect(reloaded.pages[sheet]?.rows).toEqual(page.rows);
    page.rows.forEach((cells, row) => {
      cells.forEach((text, column) => {
        const at = { page: page.id, row, column };
        const cell = { sheet, row, column };
        const [shows, wants] = [live.value(at), engine.value(cell)];
        const [holds, reads] = [live.engineFormula(at), engine.formula(cell)];
        if (live.text(at) !== text || holds !== reads || !sameValue(shows, wants)) {
          differences.push({ page: page.name, row, column, text, shows, wants, holds, reads });
        }
      });
    });
  });
  engine.dispose();
  expect(differences).toEqual([]);
}

/** Does one thing, and says what the files must be after it by an oracle that only copies. */
function carryOut(work: Work, one: Deed, oracle: { past: string[]; now: number }): void {
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

describe("one history for the whole notebook", () => {
  it(`keeps grid text, engine text, journal and saved files equal after every step of ${sequences} random sequences of 50`, () => {
    fc.assert(
      fc.property(fc.array(deed(anyKind), { minLength: 50, maxLength: 50 }), (deeds) => {
        const work = new Work();
        const oracle = { past: [filesOf(work.live.notebook)], now: 0 };
        for (const [i, one] of deeds.entries()) {
          work.wasWritten = false;
          carryOut(work, one, oracle);
          expect(filesOf(work.live.notebook)).toBe(oracle.past[oracle.now]);
          expect(filesOf(work.replayed)).toBe(oracle.past[oracle.now]);
          compareTexts(work.live);
          // An engine that was just made of these texts is one of those it would be compared with.
          if (work.wasWritten || i % 10 === 9) compareWithFiles(work.live);
        }
        work.live.close();
      }),
      { numRuns: sequences, seed },
    );
  }, 3_600_000);

  it("forgets the oldest of more than a thousand steps and no other", () => {
    const history = new History();
    const live = new LiveNotebook(sample(), history);
    const [page] = live.notebook.pages;
    for (let i = 0; i < 1005; i++) {
      live.apply(`step ${i}`, (notebook) => edit(notebook, { kind: "edit", a: 0, b: 2, c: 0, text: String(1000 + i) }));
    }
    const { steps } = history.all;
    expect([steps.length, steps[0]?.label, steps.at(-1)?.label]).toEqual([1000, "step 5", "step 1004"]);
    while (live.undo());
    expect(live.text({ page: page?.id ?? "", row: 2, column: 4 })).toBe("1004");
    live.close();
  });
});
