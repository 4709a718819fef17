import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Engine } from "../../src/engine/engine";
import { sameValue } from "../../src/engine/value";
import { setCells } from "../../src/notebook/edit-cells";
import { insertColumns, insertRows, removeColumns, removeRowGroups, removeRows } from "../../src/notebook/edit-lines";
import { addOption, removeOption, renameOption } from "../../src/notebook/edit-options";
import { addPage, movePage, removePage, renamePage, setNote } from "../../src/notebook/edit-pages";
import { readNotebook, writeNotebook } from "../../src/notebook/files";
import { LiveNotebook } from "../../src/notebook/live";
import { columnsOf, firstOption, isOptionPage, type Notebook, optionsOf, type Page } from "../../src/notebook/model";
import { shiftFormula } from "../../src/notebook/references";
import { Refusal } from "../../src/notebook/refusal";
import { sample } from "./sample";

const texts = fc.constantFrom(
  "350",
  "95",
  "",
  "0",
  "007",
  "1.5",
  "text",
  "=E3*2",
  "=SUM(E3:G5)",
  "='Side force'!E2/Supply!E3",
  "=Free!B1",
  "=CONDUCTOR.DROP(E3,E4,E5,50)",
  "=CONDUCTOR.DROP(E3,,E5)",
  "=1/0",
  "=1+(",
  "=TRANSPOSE(A1:B2)",
  "=E3:E5*1",
  "TRUE",
  "'=x",
  "=1E-5",
);
const n = fc.nat(1000);

type Deed = { kind: string; a: number; b: number; c: number; text: string };
const deed: fc.Arbitrary<Deed> = fc.record({
  kind: fc.constantFrom(
    "edit",
    "edit",
    "edit",
    "edit",
    "fill",
    "insert",
    "remove",
    "groups",
    "columns",
    "add option",
    "remove option",
    "rename option",
    "add page",
    "remove page",
    "rename page",
    "move page",
    "note",
    "undo",
    "undo",
    "redo",
  ),
  a: n,
  b: n,
  c: n,
  text: texts,
});

const pick = <T>(list: readonly T[], index: number): T => list[index % list.length] as T;

function edit(notebook: Notebook, { kind, a, b, c, text }: Deed): Notebook {
  const page: Page = pick(notebook.pages, a);
  const row = b % page.rows.length;
  const column = c % columnsOf(page);
  switch (kind) {
    case "edit":
      return setCells(notebook, [
        { page: page.id, row, column: isOptionPage(page) ? firstOption + (c % 2) : column, text },
      ]);
    case "fill":
      return setCells(
        notebook,
        [0, 1, 2].map((down) => ({
          page: page.id,
          row: row + down,
          column,
          text: text.startsWith("=") ? shiftFormula(text, down, 0) : text,
        })),
      );
    case "insert":
      return insertRows(notebook, page.id, row, 1 + (c % 2));
    case "remove":
      return removeRows(notebook, page.id, row, 1 + (c % 3));
    case "groups":
      return removeRowGroups(notebook, page.id, [
        { at: row, count: 1 },
        { at: row + 2, count: 1 },
      ]);
    case "columns":
      return b % 2 ? insertColumns(notebook, page.id, column) : removeColumns(notebook, page.id, column);
    case "add option":
      return addOption(notebook, `Option ${a}`);
    case "remove option":
      return removeOption(notebook, pick(optionsOf(notebook), b));
    case "rename option":
      return renameOption(notebook, pick(optionsOf(notebook), b), `Hull ${a}`);
    case "add page":
      return addPage(notebook, `Page ${a}`, b % 2 ? "options" : "free");
    case "remove page":
      return removePage(notebook, page.id);
    case "rename page":
      return renamePage(notebook, page.id, `Sheet ${a}`);
    case "move page":
      return movePage(notebook, page.id, b % notebook.pages.length);
    default:
      return setNote(notebook, page.name, text);
  }
}

const filesOf = (notebook: Notebook) => JSON.stringify([...writeNotebook(notebook)]);

/** The running calculation must equal one made from the saved files, cell by cell, formula and value. */
function compareWithReload(live: LiveNotebook): void {
  const reloaded = readNotebook(writeNotebook(live.notebook));
  const engine = new Engine(reloaded.pages);
  live.notebook.pages.forEach((page, sheet) => {
    expect(reloaded.pages[sheet]?.rows).toEqual(page.rows);
    page.rows.forEach((cells, row) => {
      cells.forEach((text, column) => {
        const at = { page: page.id, row, column };
        const cell = { sheet, row, column };
        expect(live.engineFormula(at)).toBe(engine.formula(cell));
        if (!sameValue(live.value(at), engine.value(cell))) {
          expect({ at: `${page.name} ${row} ${column} ${text}`, value: live.value(at) }).toEqual({
            at: "",
            value: engine.value(cell),
          });
        }
      });
    });
  });
  engine.dispose();
}

describe("one history for the whole notebook", () => {
  it("keeps grid text, engine text and saved files equal through any sequence of 200 edits, undos and redos", () => {
    fc.assert(
      fc.property(fc.array(deed, { minLength: 200, maxLength: 200 }), (deeds) => {
        const live = new LiveNotebook(sample());
        // The oracle: whole file sets, by plain copying.
        let past = [filesOf(live.notebook)];
        let now = 0;
        deeds.forEach((one, i) => {
          if (one.kind === "undo") {
            const step = live.undo();
            expect(step !== undefined).toBe(now > 0);
            now = Math.max(0, now - 1);
          } else if (one.kind === "redo") {
            const step = live.redo();
            expect(step !== undefined).toBe(now < past.length - 1);
            now = Math.min(past.length - 1, now + 1);
          } else {
            try {
              if (live.apply(one.kind, (notebook) => edit(notebook, one))) {
                past = [...past.slice(0, now + 1), filesOf(live.notebook)];
                now = past.length - 1;
              }
            } catch (cause) {
              if (!(cause instanceof Refusal)) throw cause;
              expect(cause.message).toMatch(/^[A-Z"].{10,}\.$|@$/s);
            }
          }
          expect(filesOf(live.notebook)).toBe(past[now]);
          if (i % 20 === 19) compareWithReload(live);
        });
        live.close();
      }),
      { numRuns: 8 },
    );
  }, 300_000);
});
