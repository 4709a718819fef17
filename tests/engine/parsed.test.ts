import { readFileSync } from "node:fs";
import { HyperFormula } from "hyperformula";
import { afterAll, describe, expect, it } from "vitest";
import { Engine } from "../../src/engine/engine";
import { canParse, parsedCell, parsedText } from "../../src/engine/formula-access";
import type { Parsed } from "../../src/engine/parsed";

/** A tree as one line, so that each case below fits on one. */
function line(parsed: Parsed | undefined): string {
  const cell = ({ sheet, row, column }: { sheet: number; row: number; column: number }) => `${sheet}.${row}.${column}`;
  switch (parsed?.kind) {
    case undefined:
      return "nothing";
    case "number":
      return String(parsed.value);
    case "text":
      return `'${parsed.text}'`;
    case "flag":
      return String(parsed.value);
    case "blank":
      return "_";
    case "reference":
      return `@${cell(parsed.at)}`;
    case "range":
      return `@${cell(parsed.from)}:${cell(parsed.to)}`;
    case "call":
      return `${parsed.name}(${parsed.args.map(line)})`;
    case "operator":
      return `[${line(parsed.left)} ${parsed.op} ${line(parsed.right)}]`;
    case "sign":
      return `${parsed.op}<${line(parsed.of)}>`;
    case "brackets":
      return `(${line(parsed.of)})`;
    case "array":
      return `{${parsed.rows.map((row) => row.map(line).join(",")).join(";")}}`;
    case "name":
      return `name ${parsed.name}`;
    case "unreadable":
      return "unreadable";
  }
}

const cases: readonly (readonly [formula: string, tree: string])[] = [
  ["=A1+$B$2", "[@0.0.0 + @0.1.1]"],
  ["=A$1-$B2", "[@0.0.0 - @0.1.1]"],
  ["='Side force'!C3*2", "[@1.2.2 * 2]"],
  ["=2^3^2", "[[2 ^ 3] ^ 2]"],
  ["=-A1^2", "[-<@0.0.0> ^ 2]"],
  ["=+A1", "+<@0.0.0>"],
  ["=10%", "%<10>"],
  ["=(A1+1)/2", "[([@0.0.0 + 1]) / 2]"],
  ["=A1<>2", "[@0.0.0 <> 2]"],
  ["=A1<=B1", "[@0.0.0 <= @0.0.1]"],
  ['="a"&B1', "['a' & @0.0.1]"],
  ["=SUM(A1:B2)", "SUM(@0.0.0:0.1.1)"],
  ["=SUM('Side force'!A1:B3)", "SUM(@1.0.0:1.2.1)"],
  ["=SUM(A:B)", "SUM(@0.0.0:0.19999.1)"],
  ["=SUM(2:3)", "SUM(@0.1.0:0.2.16383)"],
  ["=IF(A1>1,TRUE,FALSE())", "IF([@0.0.0 > 1],true,false)"],
  ["=CONDUCTOR.DROP(A1,,50)", "CONDUCTOR.DROP(@0.0.0,_,50)"],
  ["=conductor.drop(1,2,50)", "CONDUCTOR.DROP(1,2,50)"],
  ["=CEILING.MATH(A1)", "CEILING.MATH(@0.0.0)"],
  ["={1,2;3,4}", "{1,2;3,4}"],
  ["=1E-5*2", "[0.00001 * 2]"],
  ["=foo+1", "[name foo + 1]"],
  ["=FOO(1)", "FOO(1)"],
  ["=OFFSET(A1,1,1)", "@0.1.1"],
  ["=Nope!A1", "unreadable"],
  ["=#REF!+1", "[unreadable + 1]"],
  ["=1+(", "unreadable"],
  ['=XLOOKUP(A1,A1:A3,B1:B3,"none")', "XLOOKUP(@0.0.0,@0.0.0:0.2.0,@0.0.1:0.2.1,'none')"],
];

describe("the adapter on the engine's own reading of formulas", () => {
  const engine = new Engine([
    { name: "Page", rows: cases.map(([formula]) => ["1", "2", formula]) },
    { name: "Side force", rows: [["1", "2", "3"]] },
  ]);
  afterAll(() => engine.dispose());

  it("is held to one exact version of the engine", () => {
    const wanted = JSON.parse(readFileSync("package.json", "utf8")).dependencies.hyperformula;
    expect(wanted).toBe("3.5.0");
    expect(HyperFormula.version).toBe(wanted);
  });

  it.each(cases.map(([formula, tree], row) => ({ formula, tree, row })))("reads $formula", ({ formula, tree, row }) => {
    expect(line(engine.parsed({ sheet: 0, row, column: 2 }))).toBe(tree);
    expect(line(engine.parse(formula, 0))).toBe(tree);
  });

  it("says nothing of cells without a formula", () => {
    expect(engine.parsed({ sheet: 0, row: 0, column: 0 })).toBeUndefined();
    expect(engine.parsed({ sheet: 0, row: 99, column: 9 })).toBeUndefined();
  });

  it("means the named sheet by a reference without one", () => {
    expect(line(engine.parse("=A1", 1))).toBe("@1.0.0");
  });

  it("keeps positions true after rows were written elsewhere", () => {
    const own = new Engine([{ name: "Page", rows: [["1"], ["=A1*2"]] }]);
    own.write([{ sheet: 0, row: 0, column: 0, text: "5" }]);
    expect(line(own.parsed({ sheet: 0, row: 1, column: 0 }))).toBe("[@0.0.0 * 2]");
    own.dispose();
  });

  it("answers nothing, and throws nothing, with an engine that does not show its formulas", () => {
    const closed = { countSheets: () => 1, getCellFormula: () => "=A1", doesCellHaveFormula: () => true };
    const other = closed as unknown as HyperFormula;
    expect(canParse(other)).toBe(false);
    expect(parsedCell(other, { sheet: 0, row: 0, column: 0 })).toBeUndefined();
    expect(parsedText(other, "=A1", 0)).toBeUndefined();
  });
});
