import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isFormula } from "../../src/engine/content";
import { Engine } from "../../src/engine/engine";
import { sameValue } from "../../src/engine/value";
import { readNotebook, writeNotebook } from "../../src/notebook/files";
import { History } from "../../src/notebook/history";
import { LiveNotebook } from "../../src/notebook/live";
import { anyKind, deed, edit } from "./keeping/deeds";
import { carryOut, filesOf, Work } from "./keeping/work";
import { sample } from "./sample";

/** So many sequences, from this seed on; more of them on demand (DEVELOPERS.md has the figures of the long run). */
const sequences = Number(process.env.ATHWART_HISTORIES ?? 24);
const seed = Number(process.env.ATHWART_SEED ?? 7);

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
