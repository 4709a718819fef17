import { describe, expect, it } from "vitest";
import { Engine } from "../../src/engine/engine";
import type { CellValue } from "../../src/engine/value";

const values = (...rows: string[][]): CellValue[][] => {
  const engine = new Engine([{ name: "Page", rows }]);
  const result = rows.map((row, r) => row.map((_, column) => engine.value({ sheet: 0, row: r, column })));
  engine.dispose();
  return result;
};
const value = (formula: string): CellValue => values([formula])[0]?.[0] ?? { kind: "blank" };
const number = (n: number): CellValue => ({ kind: "number", value: n });
const sentence = (formula: string) => {
  const result = value(formula);
  return result.kind === "error" ? `${result.code} ${result.sentence}` : result;
};

describe("the engine", () => {
  it("rounds nothing: 0.1+0.2 is what double precision makes of it", () => {
    expect(value("=0.1+0.2")).toEqual(number(0.1 + 0.2));
    expect(value("=0.1+0.2=0.3")).toEqual({ kind: "flag", value: false });
  });

  it("reads 1E-5, TRUE and FALSE", () => {
    expect(value("=1E-5*2")).toEqual(number(2e-5));
    expect(value("=IF(TRUE,1,2)+IF(FALSE,10,20)")).toEqual(number(21));
  });

  it("guesses no dates, currencies or percentages from typed text", () => {
    expect(values(["2026-11-25", "$5", "10%", "007"])[0]?.map(({ kind }) => kind)).toEqual(Array(4).fill("text"));
  });

  it("counts dates from text where a formula asks for it", () => {
    expect(values(["2026-11-25", '=TEXT(A1+365,"yyyy-mm-dd")'])[0]?.[1]).toEqual({ kind: "text", text: "2027-11-25" });
  });

  it("spills a result over free cells, knows the members, and builds the same again from the texts", () => {
    const rows = [
      ["1", "2", "=TRANSPOSE(A1:B1)"],
      ["", "", ""],
    ];
    const engine = new Engine([{ name: "Page", rows }]);
    expect(engine.hasArrays).toBe(true);
    expect([0, 1].map((row) => engine.value({ sheet: 0, row, column: 2 }))).toEqual([number(1), number(2)]);
    expect([0, 1].map((row) => engine.isSpilled({ sheet: 0, row, column: 2 }))).toEqual([false, true]);
    expect(engine.formula({ sheet: 0, row: 1, column: 2 })).toBeUndefined();
  });

  it.each([
    ["=FOO(1)", "#NAME? function FOO is not known: check its spelling, or pick one from the list of functions"],
    ["=BAR+1", "#NAME? BAR is not known: a cell is written as letter and number, a text in quotation marks"],
    ["=1+(", "#ERROR! the formula cannot be read: check brackets, commas and quotation marks"],
    ["=1/0", "#DIV/0! division by zero or by a blank cell: check the divisor"],
    ['="a"+1', "#VALUE! text stands where a number is due, or the arguments do not fit the function"],
    ["=SQRT(-1)", "#NUM! the result is not a finite number: check the inputs"],
    ["=MATCH(9,{1,2},0)", "#N/A nothing matches: check the value that is looked for"],
    ["=A1", "#CYCLE! the formula depends on its own cell: break the ring"],
  ])("says in a sentence what is wrong with %s", (formula, expected) => {
    expect(sentence(formula)).toBe(expected);
  });

  it("says in which cell an error began", () => {
    const engine = new Engine([
      { name: "Side force", rows: [["=CONDUCTOR.DROP(300,,50)"]] },
      { name: "Supply", rows: [["='Side force'!A1*2"]] },
    ]);
    expect(engine.value({ sheet: 1, row: 0, column: 0 })).toEqual({
      kind: "error",
      code: "#VALUE!",
      sentence: "run: blank",
      from: "'Side force'!A1",
    });
    expect(engine.value({ sheet: 0, row: 0, column: 0 })).toMatchObject({ sentence: "run: blank", from: "" });
    engine.write([{ sheet: 0, row: 0, column: 0, text: "=SQRT(-1)" }]);
    expect(engine.value({ sheet: 0, row: 0, column: 0 })).toMatchObject({ code: "#NUM!", from: "" });
    expect(engine.value({ sheet: 1, row: 0, column: 0 })).toMatchObject({ code: "#NUM!", from: "'Side force'!A1" });
    const through = new Engine([{ name: "Page", rows: [["=LN(-1)", "=A1*2", "=SUM(A1:B1)+1", "=A3", "=B3"]] }]);
    const began = [0, 1, 2].map((column) => through.value({ sheet: 0, row: 0, column }));
    expect(began.map((value) => value.kind === "error" && value.from)).toEqual(["", "Page!A1", "Page!A1"]);
  });

  it("changes single cells and tells which values followed", () => {
    const engine = new Engine([{ name: "Page", rows: [["1", "=A1*2", "=B1+1", "5"]] }]);
    const changed = engine.write([{ sheet: 0, row: 0, column: 0, text: "10" }]);
    expect(changed.map(({ column }) => column).sort()).toEqual([0, 1, 2]);
    expect(engine.value({ sheet: 0, row: 0, column: 2 })).toEqual(number(21));
  });

  it("calculates a formula that stands in no cell", () => {
    const engine = new Engine([{ name: "Page", rows: [["7"]] }]);
    expect(engine.calculate("=A1*2")).toEqual([[number(14)]]);
    expect(engine.calculate("={1,2}*3")).toEqual([[number(3), number(6)]]);
    expect(engine.calculate("A1")[0]?.[0]).toMatchObject({ kind: "error", sentence: "a formula begins with =" });
    expect(engine.calculate("=A1+")[0]?.[0]).toMatchObject({ kind: "error", code: "#ERROR!" });
  });

  it("refuses two sheets of one name", () => {
    expect(
      () =>
        new Engine([
          { name: "A", rows: [[""]] },
          { name: "a", rows: [[""]] },
        ]),
    ).toThrow("same name");
  });
});
