import { describe, expect, it } from "vitest";
import { countsNow } from "../../src/notebook/counts-now";
import { setCells } from "../../src/notebook/edit-cells";
import { LiveNotebook } from "../../src/notebook/live";
import { firstOption } from "../../src/notebook/model";
import { missingBehind } from "../../src/notebook/unfilled";
import { workingOf } from "../../src/notebook/working";
import { sheetOf } from "./arguments-page";

/** Rows 2 to 7 are inputs, a to f; row 8 holds the formula. */
const page = (formula: string) =>
  new LiveNotebook(
    sheetOf(
      `Quantity,Key,Unit,Basis,A\nA,a,1,,1\nB,b,1,,2\nC,c,1,,3\nD,d,1,,4\nE,e,1,,5\nF,f,1,,6\nR,r,1,,"${formula.replaceAll('"', '""')}"\n`,
    ),
  );

const cellOf = (live: LiveNotebook, row: number) => ({
  page: live.notebook.pages[0]?.id ?? "",
  row,
  column: firstOption,
});

const type = (live: LiveNotebook, row: number, text: string) =>
  live.apply("type", (notebook) => setCells(notebook, [{ ...cellOf(live, row), text }]));

const shown = (live: LiveNotebook): string => JSON.stringify(live.value(cellOf(live, 7)));

/** Which arguments of the outermost call count, from left to right. */
function counting(live: LiveNotebook): boolean[] {
  const parsed = live.parsed(cellOf(live, 7));
  if (parsed?.kind !== "call") throw new Error("no call");
  return parsed.args.map((_, i) => countsNow(live, parsed)(i));
}

// Every argument is one input of its own.
const choices = [
  "=IF(E2,E3,E4)",
  "=IF(E2,E3)",
  "=IFS(E2,E3,E4,E5,E6,E7)",
  "=CHOOSE(E2,E3,E4,E5,E6,E7)",
  "=SWITCH(E2,E3,E4,E5,E6,E7)",
  "=SWITCH(E2,E3,E4,E5,E6)",
  "=IFERROR(E2,E3)",
  "=IFNA(E2,E3)",
  "=AND(E2,E3)",
  "=OR(E2,E3)",
] as const;
const texts = ["0", "1", "2", "7", "", "TRUE", "FALSE", "true", "deep", "=1/0", "=NA()"];

describe("which arguments of a choice count now", () => {
  it.each(choices)("changes nothing by an input that does not count: %s", (formula) => {
    const live = page(formula);
    const args = formula.split(",").length;
    let idle = 0;
    let told = 0;
    const changed: object[] = [];
    for (const first of texts) {
      for (const second of texts) {
        type(live, 1, first);
        type(live, 2, second);
        const before = shown(live);
        counting(live).forEach((counts, i) => {
          const row = i + 1;
          const typed = live.text(cellOf(live, row));
          for (const text of texts) {
            type(live, row, text);
            const value = shown(live);
            if (value !== before) told++;
            if (counts) continue;
            idle++;
            if (value !== before) changed.push({ first, second, row, text, value, before });
          }
          type(live, row, typed);
        });
      }
    }
    expect(told).toBeGreaterThan(args);
    // Nothing in AND and OR is passed over: an error behind the answer is the answer.
    expect(changed).toEqual([]);
    expect(idle > 0).toBe(!/^=(AND|OR)/.test(formula));
    live.close();
  });

  it.each([
    ["=IF(E2>0,E3,E4)", [true, true, false]],
    ["=IF(E2<0,E3,E4)", [true, false, true]],
    ['=IF("",E3,E4)', [true, false, true]],
    ["=IFS(E2>5,E3,E2>0,E4,TRUE,E5)", [true, false, true, true, true, false]],
    ["=CHOOSE(E3,E2,E4,E5)", [true, false, true, false]],
    ["=CHOOSE(E7,E2,E4,E5)", [true, false, false, false]],
    ["=SWITCH(E3,1,E4,2,E5,3,E6,E7)", [true, true, false, true, true, false, false, false]],
    ["=SWITCH(E7,1,E4,2,E5,E3)", [true, true, false, true, false, true]],
    ["=IFERROR(E2,E3)", [true, false]],
    ["=IFERROR(E2/0,E3)", [true, true]],
    ["=IFNA(E2/0,E3)", [true, false]],
    ["=IFNA(NA(),E3)", [true, true]],
    ["=OR(E2>0,E3)", [true, true]],
    ["=MAX(E2,E3)", [true, true]],
  ] as const)("of %s", (formula, wanted) => {
    const live = page(formula);
    expect(counting(live)).toEqual(wanted);
    live.close();
  });

  it("counts a branch that is taken for any cell of a block", () => {
    const live = page("=SUM(IF(E2:E7>3,E2:E7,E3))");
    const parsed = live.parsed(cellOf(live, 7));
    const choice = parsed?.kind === "call" ? parsed.args[0] : undefined;
    if (choice?.kind !== "call") throw new Error("no choice");
    expect(choice.args.map((_, i) => countsNow(live, choice)(i))).toEqual([true, true, true]);
    live.close();
  });
});

describe("a blank in a branch", () => {
  it.each([
    ["=IFS(E2=1,5,TRUE,E4)", "2"],
    ["=CHOOSE(E2,5,E4)", "2"],
    ["=SWITCH(E2,1,5,E4)", "2"],
    ["=IFERROR(1/E2,E4)", "0"],
    ["=IFNA(IF(E2=1,5,NA()),E4)", "2"],
    ["=IF(E2=1,5,IFS(E2=2,E4,TRUE,6))", "2"],
  ])("is missing only while the branch is taken: %s", (formula, other) => {
    const live = page(formula);
    type(live, 3, "");
    const missing = () => missingBehind(live, cellOf(live, 7));
    expect(missing()).toBeUndefined();
    type(live, 1, other);
    expect(missing()).toBe("C (Page!E4)");
    type(live, 3, "8");
    expect(missing()).toBeUndefined();
    live.close();
  });

  it("is missing in a condition, whose error would be the cell's", () => {
    const live = page("=IFS(E2=1,5,1/E4>0,6)");
    type(live, 3, "");
    expect(live.value(cellOf(live, 7)).kind).toBe("error");
    expect(missingBehind(live, cellOf(live, 7))).toBe("C (Page!E4)");
    live.close();
  });
});

describe("a working", () => {
  it.each([
    ["IFS", "=IFS(E2=1,OIL.HEAD(200,870),TRUE,OIL.HEAD(300,870))"],
    ["CHOOSE", "=CHOOSE(E2,OIL.HEAD(200,870),OIL.HEAD(300,870))"],
    ["SWITCH", "=SWITCH(E2,1,OIL.HEAD(200,870),OIL.HEAD(300,870))"],
    ["IFERROR", "=IFERROR(OIL.HEAD(200,870)/E2,OIL.HEAD(300,870))"],
    ["IF", "=IF(E2,OIL.HEAD(200,870),OIL.HEAD(300,870))"],
  ])("says which calls of %s are not taken", (name, formula) => {
    const live = page(formula);
    const used = () => workingOf(live, cellOf(live, 7))?.calls.map((call) => call.used);
    expect(used()).toEqual([true, false]);
    type(live, 1, name === "IF" || name === "IFERROR" ? "" : "2");
    // The first argument of IFERROR is worked out in any case: its error decides.
    expect(used()).toEqual([name === "IFERROR", true]);
    live.close();
  });
});
