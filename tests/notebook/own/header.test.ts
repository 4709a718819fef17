import { describe, expect, it } from "vitest";
import { setCells } from "../../../src/notebook/edit-cells";
import { insertColumns, insertRows, removeColumns, removeRows } from "../../../src/notebook/edit-lines";
import { replacePage } from "../../../src/notebook/edit-pages";
import { LiveNotebook } from "../../../src/notebook/live";
import { type Notebook, type Page, pageByName } from "../../../src/notebook/model";
import { beginFunction } from "../../../src/notebook/own/add-function";
import { functionColumns } from "../../../src/notebook/own/function-page";
import { ownFunctions } from "../../../src/notebook/own/own-functions";
import { parsePage, printPage } from "../../../src/notebook/page-csv";
import { likelyHeader, withHeader } from "../../../src/notebook/table-change";
import { moveBlock } from "../../../src/view/edits/move-block";
import { sample } from "../sample";

const begun = beginFunction(sample(), "YARD.CUT").notebook;
const page = pageByName(begun, "Own functions") as Page;
const stays = "Row 1 of Own functions names the columns of its functions";
const columns = "its first 7 columns hold the parts of functions";
const cells = (rows: readonly (readonly string[])[], row: number, column: number) =>
  rows.flatMap((texts, r) => texts.map((text, c) => ({ page: page.id, row: row + r, column: column + c, text })));

describe("the first row of a function page", () => {
  it.each<[string, string, (notebook: Notebook) => Notebook]>([
    ["is typed over", stays, (now) => setCells(now, cells([["Teil"]], 0, 0))],
    ["is emptied", stays, (now) => setCells(now, cells([functionColumns.map(() => "")], 0, 0))],
    ["is pasted over with the rows below", stays, (now) => setCells(now, cells([["a"], ["b"], ["c"]], 0, 2))],
    [
      "is moved away",
      stays,
      (now) =>
        moveBlock(now, page.id, { from: { row: 0, column: 0 }, to: { row: 0, column: 6 } }, page.id, {
          row: 12,
          column: 0,
        }),
    ],
    [
      "has another block moved onto it",
      stays,
      (now) =>
        moveBlock(now, page.id, { from: { row: 3, column: 0 }, to: { row: 3, column: 1 } }, page.id, {
          row: 0,
          column: 0,
        }),
    ],
    ["is removed", "row 1 cannot be changed here (allowed 2 to", (now) => removeRows(now, page.id, 0)],
    ["is pushed down", "row 1 cannot be changed here (allowed 2 to", (now) => insertRows(now, page.id, 0)],
    ["loses a column", columns, (now) => removeColumns(now, page.id, 2)],
    ["gets a column among its own", columns, (now) => insertColumns(now, page.id, 6)],
    [
      "is not in a table that is taken in",
      "Own functions defines functions; the table must begin with Part, Name, Formula, Unit, Limits, Why, Source",
      (now) => replacePage(now, page.id, [["function", "YARD.CUT", "", "", "", "title", "source"]]),
    ],
  ])("stays when it %s, with one sentence", (_, sentence, edit) => {
    const live = new LiveNotebook(begun);
    expect(() => live.apply("edit", edit)).toThrow(sentence);
    expect(live.notebook).toBe(begun);
    expect(live.steps.undo).toBeUndefined();
    expect(ownFunctions(live.notebook).map(({ name, mistakes }) => [name, mistakes])).toEqual([["YARD.CUT", []]]);
    live.close();
  });

  it("lets through what writes it as it reads, rows below it, and columns behind it", () => {
    const again = setCells(begun, cells([[...functionColumns]], 0, 0));
    expect(again).toBe(begun);
    const wider = insertColumns(removeRows(begun, page.id, 7), page.id, 7);
    expect(ownFunctions(wider)[0]?.definition?.examples).toHaveLength(1);
    const [, first = []] = pageByName(insertRows(begun, page.id, 1), "Own functions")?.rows ?? [];
    expect(first.join("")).toBe("");
    expect(ownFunctions(setCells(wider, cells([["remarks"]], 0, 7)))[0]?.definition).toBeDefined();
  });

  it("is put in for the first row of a table of the same width, as for an option page", () => {
    const [, ...rows] = page.rows;
    const other = [["Teil", "Name", "Formel", "Einheit", "Grenzen", "Warum", "Quelle"], ...rows];
    expect(likelyHeader(other, page)).toBe("replaced");
    expect(likelyHeader(page.rows, page)).toBe("kept");
    expect(replacePage(begun, page.id, withHeader(other, "replaced", page))).toBe(begun);
  });
});

describe("a function page from a file", () => {
  const text = printPage(page.rows).replace("length * (1 + loss)", "length * (1 + los)");

  it("is taken in with a mistake in a row, says it with its row where the function is called, and goes by undo", () => {
    const live = new LiveNotebook(begun);
    live.apply("import", (now) => replacePage(now, page.id, parsePage("own.csv", text)));
    expect(ownFunctions(live.notebook)[0]?.mistakes[0]?.sentence).toBe("step L: los is not defined before its use");
    expect(live.calculate("=YARD.CUT(10)")[0]?.[0]).toMatchObject({
      kind: "error",
      sentence: "Own functions, row 6: step L: los is not defined before its use",
    });
    const now = pageByName(live.notebook, "Own functions") as Page;
    expect(live.ownRemark(now, 5)).toEqual({
      kind: "mistake",
      sentence: "step L: los is not defined before its use",
    });
    live.undo();
    expect(live.notebook).toBe(begun);
    expect(live.calculate("=YARD.CUT(10, 0.1)")[0]?.[0]).toMatchObject({ kind: "number", value: 10 * 1.1 * 1.2 });
    expect(live.ownRemark(page, 8)?.kind).toBe("holds");
    expect(live.ownRemark(page, 5)).toBeUndefined();
    live.redo();
    expect(printPage(pageByName(live.notebook, "Own functions")?.rows ?? [])).toBe(text);
    live.close();
  });

  it("says of an example that does not hold what the function gives", () => {
    const [example] = cells([["10, 0.2"]], 8, 2);
    const live = new LiveNotebook(setCells(begun, example ? [example] : []));
    const now = pageByName(live.notebook, "Own functions") as Page;
    expect(live.ownRemark(now, 8)).toEqual({
      kind: "differs",
      sentence: `the example gives ${10 * 1.2 * 1.2} and says 13.2 ± 1e-9; mend the formula or the example`,
    });
    live.close();
  });
});
