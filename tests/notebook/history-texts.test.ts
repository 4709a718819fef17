import fc from "fast-check";
import { expect, it, vi } from "vitest";
import type { EngineCell, SheetTexts } from "../../src/engine/engine";
import type { LiveNotebook } from "../../src/notebook/live";
import { anyKind, deed } from "./keeping/deeds";
import { carryOut, filesOf, Work } from "./keeping/work";

/**
 * In the engine's place: keeps the texts that it is given and calculates nothing, so that what is written to an engine
 * can be looked at after every step of very many sequences. `history.test.ts` has the real one calculate fewer.
 */
vi.mock(import("../../src/engine/engine"), async (original) => {
  class Engine {
    readonly hasArrays = false;
    private sheets: string[][][];

    constructor(sheets: readonly SheetTexts[]) {
      this.sheets = sheets.map(({ rows }) => rows.map((row) => [...row]));
    }

    write(changes: readonly (EngineCell & { readonly text: string })[]): EngineCell[] {
      for (const { sheet, row, column, text } of changes) {
        const cells = this.sheets[sheet]?.[row];
        if (!cells) throw new Error(`There is no row ${row} in sheet ${sheet}.`);
        cells[column] = text;
      }
      return changes.map(({ sheet, row, column }) => ({ sheet, row, column }));
    }

    /** Whatever was given for a cell, formula or not. */
    formula({ sheet, row, column }: EngineCell): string | undefined {
      return this.sheets[sheet]?.[row]?.[column];
    }

    dispose(): void {
      this.sheets = [];
    }
  }
  return { ...(await original()), Engine: Engine as never };
});

/** What the grid shows as typed, and what the engine was given, must be what the notebook holds. */
function compareTexts(live: LiveNotebook): void {
  for (const page of live.notebook.pages) {
    page.rows.forEach((cells, row) => {
      cells.forEach((text, column) => {
        const at = { page: page.id, row, column };
        const [shown, given] = [live.text(at), live.engineFormula(at) ?? ""];
        if (shown !== text || given !== text)
          expect({ page: page.name, row, column, text, shown, given }).toBe("equal texts");
      });
    });
  }
}

const sequences = 2000;
const seed = 11;

it(`grid text, texts given to the engine, journal and saved files are equal after every step of ${sequences} random sequences of 50`, () => {
  fc.assert(
    fc.property(fc.array(deed(anyKind), { minLength: 50, maxLength: 50 }), (deeds) => {
      const work = new Work();
      const oracle = { past: [filesOf(work.live.notebook)], now: 0 };
      for (const one of deeds) {
        carryOut(work, one, oracle);
        expect(filesOf(work.live.notebook)).toBe(oracle.past[oracle.now]);
        expect(filesOf(work.replayed)).toBe(oracle.past[oracle.now]);
        compareTexts(work.live);
      }
      work.live.close();
    }),
    { numRuns: sequences, seed },
  );
}, 600_000);
