import { describe, expect, it } from "vitest";
import { auditNotebook } from "../../../src/audit/audit";
import { review, reviewsOf } from "../../../src/audit/review";
import { Engine } from "../../../src/engine/engine";
import { callFunction } from "../../../src/formula/call";
import { setCells } from "../../../src/notebook/edit-cells";
import { addPage } from "../../../src/notebook/edit-pages";
import { readNotebook, writeNotebook } from "../../../src/notebook/files";
import { familiesOf } from "../../../src/notebook/function-families";
import { LiveNotebook } from "../../../src/notebook/live";
import { firstOption, type Notebook, pageByName } from "../../../src/notebook/model";
import { shippedFunction } from "../../../src/notebook/named-function";
import { beginFunction, copyFunction } from "../../../src/notebook/own/add-function";
import { finderOf, ownFunctions } from "../../../src/notebook/own/own-functions";
import { positionOf, readAddress } from "../../../src/notebook/rows";
import { unfoldCall } from "../../../src/notebook/unfold";
import { workingOf } from "../../../src/notebook/working";
import { packNotebook, unpackNotebook } from "../../../src/notebook/zip";
import { chainOf } from "../../../src/study/kernel/chain";
import { compileKernel } from "../../../src/study/kernel/kernel";
import { at, sample } from "../sample";

const drop = shippedFunction("CONDUCTOR.DROP");
if (!drop) throw new Error("CONDUCTOR.DROP");

const header = "Part,Name,Formula,Unit,Limits,Why,Source";
const cut = `function,YARD.CUT,,,,length to buy,common practice
argument,length,,m,0 to 100,length of the run,
argument,loss,0.05,1,0 to 1,share cut away,
constant,whole,1,1,,one,common practice
step,factor,whole + loss,1,,with what is cut away,
result,L,length * factor,m,,length to buy,
valid,,,,,"Straight runs.",
example,,"10, 0.1",,11 ± 1e-12,,own arithmetic: 10 * 1.1`;

/** A notebook with a page that defines functions and a row that calls one. */
function notebook(rows: string, call = "YARD.CUT(E2,0.1)"): Notebook {
  return readNotebook(
    new Map([
      [
        "notebook.json",
        JSON.stringify({
          version: 1,
          title: "Own",
          pages: [
            { name: "Runs", file: "runs.csv" },
            { name: "Own functions", file: "own-functions.csv" },
          ],
        }),
      ],
      [
        "runs.csv",
        `Quantity,Key,Unit,Basis,A,B\nRun,run,m,measured,10,20\nTo buy,buy,m,rule,"=${call}","=${call.replaceAll("E", "F")}"\nDouble,double,m,rule,=2*E3,=2*F3\nBeside,beside,m,rule,=E2+1,=F2+1\n`,
      ],
      ["own-functions.csv", `${header}\n${rows}\n`],
    ]),
  );
}

const value = (live: LiveNotebook, cell: string) => live.value(at(live.notebook, "Runs", cell));

function shown(rows: string, call?: string, cell = "E3") {
  const live = new LiveNotebook(notebook(rows, call));
  const found = value(live, cell);
  live.close();
  return found;
}

describe("a function of the notebook's own", () => {
  it("calculates in cells, takes its default, and answers wrong input with a sentence", () => {
    expect(shown(cut)).toEqual({ kind: "number", value: 10 * (1 + 0.1) });
    expect(shown(cut, "yard.cut(E2)", "F3")).toEqual({ kind: "number", value: 20 * (1 + 0.05) });
    expect(shown(cut, "YARD.CUT(-1)")).toMatchObject({ kind: "error", sentence: "length: -1 m (allowed 0 to 100 m)" });
    expect(shown(cut, "YARD.CUT(E2,0,1)")).toMatchObject({ sentence: "YARD.CUT: takes 2 arguments, got 3" });
  });

  it("has a working with its steps, is found with the shipped ones, and is marked as the notebook's own", () => {
    const live = new LiveNotebook(notebook(cut));
    const [call] = workingOf(live, at(live.notebook, "Runs", "E3"))?.calls ?? [];
    expect(call?.explanation?.steps.map(({ numbers }) => numbers?.text)).toEqual(["factor = 1 + 0.1", "L = 10 × 1.1"]);
    expect(call?.explanation?.ownOf).toBe("Own functions");
    expect(familiesOf(live.notebook)[0]).toMatchObject({
      name: "The notebook's own",
      functions: [{ name: "YARD.CUT" }],
    });
    expect(live.find("YARD.CUT")?.ownOf).toBe("Own functions");
    expect(live.find("CONDUCTOR.DROP")?.ownOf).toBeUndefined();
    live.close();
  });

  it("is known to its own notebook alone, also when another is calculated in the meantime", () => {
    const one = new LiveNotebook(notebook(cut));
    const other = new LiveNotebook(notebook(cut.replace("whole + loss", "whole + 2 * loss")));
    const engine = new Engine([{ name: "Page", rows: [["=YARD.CUT(1)"]] }]);
    expect(engine.value({ sheet: 0, row: 0, column: 0 })).toMatchObject({ kind: "error", code: "#NAME?" });
    expect(value(other, "E3")).toEqual({ kind: "number", value: 10 * (1 + 2 * 0.1) });
    one.apply("run", (now) => setCells(now, [{ ...at(now, "Runs", "E2"), text: "30" }]));
    expect(value(one, "E3")).toEqual({ kind: "number", value: 30 * (1 + 0.1) });
    engine.dispose();
    one.close();
    other.close();
  });

  it("follows every edit of its page, undo and redo", () => {
    const live = new LiveNotebook(notebook(cut));
    const formula = (now: Notebook, text: string) => setCells(now, [{ ...at(now, "Own functions", "C6"), text }]);
    live.apply("formula", (now) => formula(now, "whole + 3 * loss"));
    expect(value(live, "E3")).toEqual({ kind: "number", value: 10 * (1 + 3 * 0.1) });
    live.apply("mistake", (now) => formula(now, "whole + rum"));
    expect(value(live, "E3")).toMatchObject({
      kind: "error",
      sentence: "Own functions, row 6: step factor: rum is not defined before its use",
    });
    // The rest of the notebook calculates.
    expect(value(live, "E5")).toEqual({ kind: "number", value: 11 });
    live.undo();
    live.undo();
    expect(value(live, "E3")).toEqual({ kind: "number", value: 11 });
    live.redo();
    expect(value(live, "E3")).toEqual({ kind: "number", value: 10 * (1 + 3 * 0.1) });
    live.close();
  });

  it("survives saving, loading, the zip, a page's export and import", () => {
    const before = notebook(cut);
    const files = writeNotebook(before);
    expect(files.get("own-functions.csv")).toBe(`${header}\n${cut}\n`);
    const again = [readNotebook(files), unpackNotebook(packNotebook(before))];
    for (const one of again) {
      const live = new LiveNotebook(one);
      expect(value(live, "E3")).toEqual({ kind: "number", value: 11 });
      live.close();
    }
    // The rows of the page in another notebook are the function there.
    const other = addPage(sample(), "Taken in", "free");
    const page = pageByName(other, "Taken in");
    const taken = setCells(
      other,
      (before.pages[1]?.rows ?? []).flatMap((row, r) =>
        row.map((text, column) => ({ page: page?.id ?? "", row: r, column, text })),
      ),
    );
    expect(finderOf(taken)("YARD.CUT")).toMatchObject({ ownOf: "Taken in", title: "length to buy" });
  });

  it("is unfolded like a shipped one", () => {
    const before = notebook(cut);
    const definition = finderOf(before)("YARD.CUT");
    if (!definition) throw new Error("no definition");
    const after = unfoldCall(before, before.pages[0]?.id ?? "", 2, definition);
    const live = new LiveNotebook(after.notebook);
    expect(live.value({ page: before.pages[0]?.id ?? "", row: after.row, column: firstOption })).toEqual({
      kind: "number",
      value: 11,
    });
    live.close();
  });

  it("is taken in by a study's kernel with the engine's bits, in both variants", () => {
    const live = new LiveNotebook(notebook(cut));
    const source = { notebook: live.notebook, parsed: live.parsed.bind(live), isSpilled: live.isSpilled.bind(live) };
    const chain = structuredClone(
      chainOf(source, firstOption, [positionOf(live.notebook, readAddress("Runs.double@A"))]),
    );
    for (const variant of ["text", "closures"] as const) {
      const kernel = compileKernel(chain, variant);
      expect(kernel.run([10])).toEqual([2 * (10 * (1 + 0.1))]);
      expect(kernel.run([37.3])).toEqual([2 * (37.3 * (1 + 0.1))]);
      expect(kernel.run([101])).toEqual([Number.NaN]);
    }
    live.close();
  });

  it("makes a tick stale when its definition changes", () => {
    const ticked = review(notebook(cut), "Runs.buy", "R. Tern", "2026-11-26");
    expect(reviewsOf(ticked)).toMatchObject([{ stale: false }]);
    const changed = setCells(ticked, [{ ...at(ticked, "Own functions", "E3"), text: "0 to 90" }]);
    expect(reviewsOf(changed)).toMatchObject([{ stale: true }]);
  });
});

describe("a mistake in a function page is one sentence with its row", () => {
  const row = (from: string, to: string) => {
    expect(cut).toContain(from);
    return cut.replace(from, to);
  };
  it.each([
    ["an unknown name", row("length * factor", "length * facto"), 7, "step L: facto is not defined before its use"],
    ["a later name", row("whole + loss", "L + loss"), 6, "step factor: L is not defined before its use"],
    ["code", row("length * factor", "length.constructor(1)"), 7, 'step L: formula "length.constructor(1)"'],
    ["a function of the language", row("length * factor", "toString(1)"), 7, "function toString is not known"],
    [
      "a number where a condition is due",
      row("result,L,length * factor", "result,L,(length + 1) ? 1 : 2"),
      7,
      "step L: ",
    ],
    ["an equals sign", row("length * factor", "=length * factor"), 7, "write the formula without the equals sign"],
    ["an unknown unit", row("length * factor,m", "length * factor,metre"), 7, 'unit "metre" is not known'],
    ["no unit", row("length * factor,m", "length * factor,"), 7, "the unit is missing"],
    ["limits", row("0 to 100", "between 0 and 100"), 3, 'limits "between 0 and 100" cannot be read'],
    ["turned limits", row("0 to 100", "100 to 0"), 3, 'limits "100 to 0" cannot be read'],
    ["a default", row("loss,0.05", "loss,little"), 4, '"little" cannot be what is taken when it is left out'],
    ["a constant", row("whole,1,", "whole,one,"), 5, 'constant whole: "one" is not a number'],
    ["a name", row("argument,loss", "argument,my loss"), 4, 'argument "my loss": a name is letters, digits and _'],
    [
      "a name of the language",
      row("argument,loss", "argument,sqrt"),
      4,
      "argument sqrt: this word means something else",
    ],
    [
      "a name of objects",
      row("argument,loss", "argument,constructor"),
      4,
      "argument constructor: this word means something else",
    ],
    ["the same name twice", row("constant,whole", "constant,length"), 5, "constant: length is defined twice"],
    ["an unknown part", row("valid,", "remark,"), 8, '"remark" is no part of a function'],
    ["no result", row("result,", "step,"), 2, "YARD.CUT: no row is its result"],
    ["two results", row("step,factor", "result,factor"), 7, "factor is the result already"],
    ["an example", row('"10, 0.1"', '"10, much"'), 9, '"much" for loss is no number'],
    ["an expectation", row("11 ± 1e-12", "eleven"), 9, "write in the column Limits what comes out"],
    ["a pointer", row("length * factor", "as YARD.CUT"), 7, "there is no shipped function YARD.CUT"],
    [
      "a pointer without step",
      row("length * factor", "as CONDUCTOR.DROP"),
      7,
      "CONDUCTOR.DROP has no step of this name",
    ],
    [
      "no title",
      row("length to buy,common practice", ",common practice"),
      2,
      "say in the column Why what the function gives",
    ],
  ])("%s", (_, rows, line, sentence) => {
    const live = new LiveNotebook(notebook(rows));
    const found = value(live, "E3");
    const said = found.kind === "error" ? found.sentence : JSON.stringify(found);
    expect(said.startsWith(`Own functions, row ${line}: `), said).toBe(true);
    expect(said).toContain(sentence);
    expect(value(live, "E5")).toEqual({ kind: "number", value: 11 });
    const errors = auditNotebook(live).open.filter(({ rule }) => rule === "own-function");
    expect(errors.map(({ severity, cell }) => [severity, cell])).toEqual([["error", `A${line}`]]);
    live.close();
  });

  it.each([
    ["CONDUCTOR.DROP", "CONDUCTOR.DROP is a shipped function"],
    ["NORM.DIST", "NORM.DIST is a function of the formula language"],
    ["Yard.Cut", '"Yard.Cut" cannot be a function\'s name'],
    ["CUT", '"CUT" cannot be a function\'s name'],
    ["A1.B2(", "cannot be a function's name"],
  ])("a name that cannot be taken: %s", (name, sentence) => {
    const [one] = ownFunctions(notebook(cut.replace("YARD.CUT", name)));
    expect(one?.mistakes).toMatchObject([{ row: 1 }]);
    expect(one?.mistakes[0]?.sentence).toContain(sentence);
    // What is shipped stays what it is.
    expect(shown(cut.replace("YARD.CUT", "CONDUCTOR.DROP"), "CONDUCTOR.DROP(300,10,50)")).toMatchObject({
      kind: "number",
    });
  });

  it("two functions of one name, and rows before the first", () => {
    const twice = ownFunctions(notebook(`${cut}\n${cut}`));
    expect(twice.map(({ mistakes }) => mistakes[0]?.sentence)).toEqual([
      undefined,
      "YARD.CUT is defined in row 2 of Own functions already; give one of them another name",
    ]);
    expect(ownFunctions(notebook(`step,a,1,1,,x,\n${cut}`)).map(({ mistakes }) => mistakes[0]?.row)).toEqual([
      1,
      undefined,
    ]);
  });
});

describe("several mistakes in one function", () => {
  const mistakes = (...changes: readonly (readonly [from: string, to: string])[]) => {
    const rows = changes.reduce((text, [from, to]) => {
      expect(text).toContain(from);
      return text.replace(from, to);
    }, cut);
    return (ownFunctions(notebook(rows))[0]?.mistakes ?? []).map(({ row, sentence }) => `${row + 1} ${sentence}`);
  };

  it("are told in their own rows, those that stand for themselves", () => {
    const rows = notebook(cut.replace("0 to 100", "between").replace("length * factor,m", "length * factr,m"));
    const live = new LiveNotebook(rows);
    const page = rows.pages[1];
    if (!page) throw new Error("no page");
    expect([2, 6].map((row) => live.ownRemark(page, row)?.sentence)).toEqual([
      expect.stringContaining('limits "between" cannot be read'),
      "step L: factr is not defined before its use",
    ]);
    // A cell that calls it says the first; the audit has both.
    expect(value(live, "E3")).toMatchObject({ sentence: expect.stringMatching(/^Own functions, row 3: /) });
    const found = auditNotebook(live).open.filter(({ rule }) => rule === "own-function");
    expect(found.map(({ cell }) => cell)).toEqual(["A3", "A7"]);
    live.close();
  });

  it.each([
    ["a step that uses a step with a mistake", [["whole + loss", "whole + los"]], ["6 step factor: los"]],
    ["names behind one that cannot be read", [["argument,loss", "argument,my loss"]], ['4 argument "my loss"']],
    [
      "an example behind an argument that cannot be read",
      [
        ["0 to 1,", "0 upto 1,"],
        ["10, 0.1", "10, 0.1, 3"],
      ],
      ["4 argument loss"],
    ],
    ["no result where the part of a row is not known", [["result,L", "reslt,L"]], ['7 "reslt" is no part']],
    [
      "no result where the result has a mistake",
      [["length * factor,m", "length * factor,"]],
      ["7 result L: the unit is missing"],
    ],
  ] as const)("leaves out what only follows: %s", (_, changes, told) => {
    expect(mistakes(...changes)).toEqual(told.map((start) => expect.stringContaining(start)));
  });

  it("tells two unknown names, a name and a unit, and a missing title with them", () => {
    expect(
      mistakes(
        ["whole + loss", "whol + loss"],
        ["length * factor,m", "length * factor,metre"],
        ["length to buy,common", ",common"],
      ),
    ).toEqual([
      expect.stringContaining("2 YARD.CUT: say in the column Why"),
      expect.stringContaining("6 step factor: whol is not defined"),
      expect.stringContaining('7 result L: unit "metre" is not known'),
    ]);
  });
});

describe("the audit of own functions", () => {
  const findings = (rows: string) => {
    const live = new LiveNotebook(notebook(rows));
    const found = auditNotebook(live).open.filter(({ rule }) => rule === "own-function");
    live.close();
    return found.map(({ severity, cell, message }) => `${severity} ${cell} ${message}`);
  };

  it("is silent about a right one", () => {
    expect(findings(cut)).toEqual([]);
  });

  it("names an example that fails with its row, units that do not close, and what has no source", () => {
    expect(findings(cut.replace("11 ± 1e-12", "12 ± 0.5"))).toEqual([
      "error C9 YARD.CUT: the example gives 11 and says 12 ± 0.5; mend the formula or the example",
    ]);
    expect(findings(cut.replace('"10, 0.1"', '"101"'))).toEqual([
      "error C9 YARD.CUT: the example is refused: length: 101 m (allowed 0 to 100 m)",
    ]);
    expect(findings(cut.replace("length * factor,m", "length * factor,mm"))).toEqual([
      expect.stringMatching(/^error B2 YARD\.CUT, L: .*factor/),
    ]);
    expect(findings(cut.replace("one,common practice", "one,"))).toEqual([
      expect.stringMatching(/^warning G5 YARD\.CUT: no source is named/),
    ]);
    expect(findings(cut.split("\n").slice(0, -1).join("\n"))).toEqual([
      expect.stringMatching(/^note B2 YARD\.CUT has no example/),
    ]);
  });
});

describe("writing one down", () => {
  it("copies a shipped function, which then can be changed step by step, as one step of the history", () => {
    const live = new LiveNotebook(sample());
    const before = live.notebook;
    live.apply("copy", (now) => copyFunction(now, drop, "YARD.DROP").notebook);
    const [own] = ownFunctions(live.notebook);
    expect(own).toMatchObject({ name: "YARD.DROP", page: "Own functions", row: 1, mistakes: [] });
    expect(live.calculate("=YARD.DROP(300,10,50)-CONDUCTOR.DROP(300,10,50)")).toEqual([[{ kind: "number", value: 0 }]]);
    const rows = pageByName(live.notebook, "Own functions")?.rows ?? [];
    const line = rows.findIndex(([part]) => part === "result");
    const cell = { page: pageByName(live.notebook, "Own functions")?.id ?? "", row: line, column: 2 };
    live.apply("margin", (now) => setCells(now, [{ ...cell, text: `1.1 * (${rows[line]?.[2]})` }]));
    expect(live.calculate("=YARD.DROP(300,10,50)")).toEqual([
      [{ kind: "number", value: 1.1 * Number(callFunction(drop, [300, 10, 50])) }],
    ]);
    live.undo();
    live.undo();
    expect(live.notebook).toBe(before);
    live.close();
  });

  it("begins one that calculates and agrees with its example, below those that are there", () => {
    const two = beginFunction(beginFunction(sample(), "YARD.ONE").notebook, "YARD.TWO").notebook;
    expect(ownFunctions(two).map(({ name, mistakes }) => [name, mistakes])).toEqual([
      ["YARD.ONE", []],
      ["YARD.TWO", []],
    ]);
    const live = new LiveNotebook(two);
    expect(auditNotebook(live).open.filter(({ rule }) => rule === "own-function")).toEqual([]);
    live.close();
  });

  it("refuses a name that is taken or cannot be one", () => {
    const once = beginFunction(sample(), "YARD.ONE").notebook;
    expect(() => beginFunction(once, "YARD.ONE")).toThrow("YARD.ONE is one of the notebook's own functions already");
    expect(() => copyFunction(once, drop, "CONDUCTOR.DROP")).toThrow("CONDUCTOR.DROP is a shipped function");
    expect(() => copyFunction(once, drop, "drop")).toThrow('"drop" cannot be a function\'s name');
  });
});
