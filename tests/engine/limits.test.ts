import { afterEach, describe, expect, it } from "vitest";
import { clock } from "../../src/engine/allowance";
import { builtInNames, Engine } from "../../src/engine/engine";
import { guardEngine } from "../../src/engine/guard";
import { limits, textFault } from "../../src/engine/limits";
import { setCells } from "../../src/notebook/edit-cells";
import { LiveNotebook } from "../../src/notebook/live";
import { Refusal } from "../../src/notebook/refusal";
import { at, sample } from "../notebook/sample";

function sentence(formula: string): string {
  const engine = new Engine([{ name: "A", rows: [["1", formula]] }]);
  const value = engine.value({ sheet: 0, row: 0, column: 1 });
  engine.dispose();
  return value.kind === "error" ? value.sentence : `no error but ${JSON.stringify(value)}`;
}

describe("a formula that asks for too much", () => {
  it("can be held: this version of the engine lets its limits be put in", () => {
    expect(guardEngine()).toBe(true);
  });

  it.each([
    ["a block of the whole page", "=SUM(C1:XFD20000)", "327640000 cells"],
    ["two large blocks", "=SUMPRODUCT(C1:ZZ20000,C1:ZZ20000)", "14000000 cells"],
    ["a fixed corner and a moving one", "=SUM($C$1:XFD20000)", "327640000 cells"],
    ["a series over many cells", "=SEQUENCE(20000,16384)", "327680000 cells"],
    ["a series whose length is calculated", "=SUM(SEQUENCE(A1*20000,16384))", "327680000 cells"],
    ["a product of two long lines", "=SUM(MMULT(C1:C20000,D1:ZZ1))", "cells are meant at once"],
    ["a column against a row", "=SUM(C1:C20000*D1:ZZ1)", "13980000 cells"],
    ["a function over a column against a row", "=SUM(POWER(C1:C20000,D1:ZZ1))", "cells are meant at once"],
    ["half a gigabyte of text", '=LEN(REPT("x",500000000))', "500000000 letters"],
    ["more text than there can be", '=REPT("x",1e9)', "failed in itself"],
  ])("is an error in its own cell, with a sentence: %s", (_, formula, words) => {
    expect(sentence(formula)).toContain(words);
  });

  it.each([
    ["too long", `=1${" ".repeat(limits.formula)}`, "the letters of the formula are 8194 (allowed 8192)"],
    ["brackets too deep", `=${"(".repeat(200)}1${")".repeat(200)}`, "are 200 (allowed 64)"],
    ["functions too deep", `=${"ABS(".repeat(200)}1${")".repeat(200)}`, "are 200 (allowed 64)"],
    ["too many operators", `=1${"+1".repeat(2000)}`, "are 2000 (allowed 400)"],
    ["a ladder of signs", `=${"-".repeat(4000)}1`, "are 4000 (allowed 400)"],
    ["a text of a megabyte", "x".repeat(1_000_000), "the letters of the text are 1000000 (allowed 100000)"],
  ])("does not get as far as the engine: %s", (_, text, words) => {
    expect(textFault(text)).toContain(words);
    const notebook = sample();
    expect(() => setCells(notebook, [{ ...at(notebook, "Free", "A1"), text }])).toThrow(Refusal);
    expect(() => setCells(notebook, [{ ...at(notebook, "Free", "A1"), text }])).toThrow("Free, A1: ");
  });

  it.each([
    ["brackets and operators inside quotation marks", `="${"(+-".repeat(500)}"`],
    ["the deepest brackets that are allowed", `=${"(".repeat(64)}1${")".repeat(64)}`],
    ["the most operators that are allowed", `=1${"+1".repeat(400)}`],
    ["a long sum of arguments", `=SUM(${"1,".repeat(2000)}1)`],
  ])("is not refused without need, and is calculated: %s", (_, text) => {
    expect(textFault(text)).toBe(undefined);
    expect(sentence(text)).toContain("no error");
  });
});

describe("a calculation that takes too long", () => {
  const { now } = clock;
  afterEach(() => {
    clock.now = now;
  });

  /** Every look at the clock finds it a second later. */
  const slowClock = (): void => {
    let seconds = 0;
    clock.now = () => seconds++;
  };

  it("is stopped, and nothing has changed: texts, values and history are those of before", () => {
    const live = new LiveNotebook(sample());
    const before = live.notebook;
    const free = at(before, "Free", "A3");
    const busy = "=SUMPRODUCT(SQRT(ABS(SEQUENCE(4000,50))))";
    slowClock();
    expect(() => live.apply("busy", (notebook) => setCells(notebook, [{ ...free, text: busy }]))).toThrow(
      "This was not done: the calculation took longer than 10 seconds and was stopped.",
    );
    clock.now = now;
    expect(live.notebook).toBe(before);
    expect(live.steps).toEqual({ undo: undefined, redo: undefined });
    expect(live.value(at(before, "Free", "B2"))).toEqual({ kind: "number", value: 970 });
    live.apply("run", (notebook) => setCells(notebook, [{ ...at(before, "Supply", "E3"), text: "340" }]));
    expect(live.value(at(before, "Free", "B2"))).toEqual({ kind: "number", value: 1070 });
    live.close();
  });

  it("is stopped when a notebook is opened as well, in one sentence", () => {
    const notebook = sample();
    const busy = setCells(notebook, [
      { ...at(notebook, "Free", "A3"), text: "=SUMPRODUCT(SQRT(ABS(SEQUENCE(4000,50))))" },
    ]);
    slowClock();
    expect(() => new LiveNotebook(busy)).toThrow("took longer than 60 seconds and was stopped");
  });

  it("is stopped where it stands in no cell", () => {
    const live = new LiveNotebook(sample());
    slowClock();
    const [[value] = []] = live.calculate("=SUMPRODUCT(SQRT(ABS(SEQUENCE(4000,50))))");
    expect(value).toMatchObject({
      kind: "error",
      sentence: "the calculation took longer than 10 seconds and was stopped",
    });
    live.close();
  });
});

describe("the functions that a formula can call", () => {
  it("fetch nothing, run nothing, and know nothing of page, machine or files", () => {
    const reaching =
      /^(HYPERLINK|WEBSERVICE|FILTERXML|ENCODEURL|IMPORT\w*|IMAGE|STOCKHISTORY|RTD|DDE|CALL|REGISTER.*|EVALUATE|EXEC|INDIRECT|INFO|CELL|SQL.*|CUBE\w*|GETPIVOTDATA|PY|LAMBDA|TRANSLATE|GOOGLE\w*|SCRIPT\w*|FETCH\w*|OPEN\w*|FILE\w*)$/;
    expect(builtInNames().filter((name) => reaching.test(name))).toEqual([]);
    expect(builtInNames().length).toBeGreaterThan(300);
  });

  it.each(["HYPERLINK", "WEBSERVICE", "IMPORTDATA", "DDE", "INDIRECT", "IMAGE"])(
    "do not include %s: a formula that calls it says so",
    (name) => {
      expect(sentence(`=${name}("https://example.org/")`)).toContain(`function ${name} is not known`);
    },
  );

  it.each(["=constructor", "=__proto__", "=toString()", "=A1.constructor", "=ABS.call(1)", '=window["alert"](1)'])(
    "are reached by name alone; nothing of the program's own is: %s",
    (formula) => {
      expect(sentence(formula)).not.toContain("no error");
    },
  );
});
