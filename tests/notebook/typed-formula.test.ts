import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { asStored, formulaAsTyped, readFormula } from "../../src/notebook/typed-formula";
import { useDecimalSign } from "../../src/words/decimal-sign";

/** As stored, and as typed with a decimal comma (OpenFormula's files part arguments with ; and rows of arrays with |). */
const pairs = [
  ["=1.5*A1", "=1,5*A1"],
  ["=MAX(1.5,2)", "=MAX(1,5;2)"],
  ["=MAX(A1,B2)", "=MAX(A1;B2)"],
  ["=CONDUCTOR.DROP(E2,E3,50,0.5)", "=CONDUCTOR.DROP(E2;E3;50;0,5)"],
  ['=IF(A1>0.5,"1.5, or 2","a;b")', '=IF(A1>0,5;"1.5, or 2";"a;b")'],
  ["='Side force, 1.5'!A1+.5", "='Side force, 1.5'!A1+,5"],
  ["=SUM({1,2.5;3,4})", "=SUM({1;2,5|3;4})"],
  ["=A1.2", "=A1.2"],
] as const;

describe("with a decimal comma", () => {
  beforeEach(() => useDecimalSign(","));
  afterEach(() => useDecimalSign("."));

  it.each(pairs)("%s is typed as %s, and read back", (stored, typed) => {
    expect(formulaAsTyped(stored)).toBe(typed);
    expect(readFormula(typed)).toBe(stored);
  });

  it("keeps every sign at its place, so that help finds the argument at the caret", () => {
    for (const [, typed] of pairs) expect(asStored(typed)).toHaveLength(typed.length);
    expect(asStored("=MAX(1,5;2")).toBe("=MAX(1.5,2");
  });

  it("asks where a comma between two numbers in a call reads two ways", () => {
    expect(readFormula("=MAX(1,2)")).toEqual({ asDecimals: "=MAX(1.2)", asArguments: "=MAX(1,2)" });
    expect(readFormula("=1+ROUND(A1*2,5)")).toEqual({
      asDecimals: "=1+ROUND(A1*2.5)",
      asArguments: "=1+ROUND(A1*2,5)",
    });
  });

  it("does not ask where it reads one way", () => {
    expect(readFormula("=MAX(A1,2)")).toBe("=MAX(A1,2)");
    expect(readFormula("=(1,5+2)*3")).toBe("=(1.5+2)*3");
    expect(readFormula("=1.5*A1")).toBe("=1.5*A1");
  });
});

it("with a decimal point a formula is typed as it is stored", () => {
  for (const [stored] of pairs) {
    expect(formulaAsTyped(stored)).toBe(stored);
    expect(readFormula(stored)).toBe(stored);
  }
});
