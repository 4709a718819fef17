import { HyperFormula } from "hyperformula";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { importCell, isDoubtful } from "../../src/notebook/table-cells";
import { numberText } from "../../src/view/shown/number-text";
import { unitText } from "../../src/view/shown/unit-text";
import { argumentAtCaret, nameAtCaret, takesReference } from "../../src/view/typing/at-caret";
import { builtInFunctions } from "../../src/view/typing/built-in-functions";
import { readTyped } from "../../src/view/typing/typed-text";
import { useDecimalSign } from "../../src/words/decimal-sign";

const text = (typed: string) => {
  const read = readTyped(typed);
  return read.kind === "text" ? read.text : read;
};

describe("what is typed into a cell for numbers", () => {
  it.each([
    ["92%", "0.92"],
    ["7 %", "0.07"],
    ["58.3%", "0.583"],
    ["100%", "1"],
    ["0,5%", "0.005"],
    ["-5%", "-0.05"],
    ["1,5", "1.5"],
    [",5", "0.5"],
    ["0,234", "0.234"],
    ["1234,567", "1234.567"],
    ["1,234,567", "1234567"],
    ["1,234.5", "1234.5"],
    ["1.234,5", "1234.5"],
    ["12 500", "12500"],
    ["\u22125", "-5"],
    [" 7 ", "7"],
  ])("%s is %s", (typed, expected) => {
    expect(text(typed)).toBe(expected);
  });

  it.each(["=SUM(1,5)", "'1,5", "007", "2026-11-25", "1,2,3", "12,5 mm", "abc", "5%%", "1 2 3"])(
    "%s stays as it is",
    (typed) => {
      expect(text(typed)).toBe(typed);
    },
  );

  it("1,234 is asked about, with both readings, as a share too", () => {
    expect(text("1,234")).toEqual({ kind: "ask", asPoint: "1.234", asGroups: "1234" });
    expect(text("-1,234%")).toEqual({ kind: "ask", asPoint: "-0.01234", asGroups: "-12.34" });
  });
});

describe("what is typed with a decimal comma", () => {
  beforeEach(() => useDecimalSign(","));
  afterEach(() => useDecimalSign("."));

  it.each([
    ["1,5", "1.5"],
    ["1,234", "1.234"],
    ["1.234,5", "1234.5"],
    ["1.5", "1.5"],
    ["92,5%", "0.925"],
    ["1,5e3", "1.5e3"],
    ["=MAX(1,5;2)", "=MAX(1.5,2)"],
  ])("%s is %s", (typed, expected) => {
    expect(text(typed)).toBe(expected);
  });

  it.each(["12.03.2025", "1.2.3", "12,5 mm", "007"])("%s stays as it is", (typed) => {
    expect(text(typed)).toBe(typed);
  });

  it("1.234 is asked about, and so is a formula whose comma reads two ways", () => {
    expect(text("1.234")).toEqual({ kind: "ask", asPoint: "1.234", asGroups: "1234" });
    expect(text("=MAX(1,2)")).toEqual({ kind: "ask", asPoint: "=MAX(1.2)", asGroups: "=MAX(1,2)", isFormula: true });
  });
});

describe("a cell of another program's table", () => {
  const choice = { decimal: ",", formulas: false, doubtful: undefined } as const;

  it("follows the chosen decimal sign", () => {
    expect(importCell("1,5", choice)).toBe("1.5");
    expect(importCell("1.234,5", choice)).toBe("1234.5");
    expect(importCell("1,5", { ...choice, decimal: "." })).toBe("1,5");
  });

  it("that reads two ways waits for an answer", () => {
    expect(isDoubtful("1.234", ",")).toBe(true);
    expect(importCell("1.234", choice)).toBe("1.234");
    expect(importCell("1.234", { ...choice, doubtful: "groups" })).toBe("1234");
    expect(importCell("1,234", { ...choice, decimal: ".", doubtful: "point" })).toBe("1.234");
  });

  it("keeps 007 and numbers too long to be held, and makes a formula only where that is wanted", () => {
    expect(importCell("007", choice)).toBe("007");
    expect(importCell("1234567890123456", choice)).toBe("1234567890123456");
    expect(importCell("=1+1", choice)).toBe("'=1+1");
    expect(importCell("=1+1", { ...choice, formulas: true })).toBe("=1+1");
  });
});

describe("the place of the caret in a formula", () => {
  it("is in the innermost call and its argument, quoted commas left out", () => {
    const formula = '=IF(A1>0,CONDUCTOR.DROP(300,10,50),"a,b")';
    expect(argumentAtCaret(formula, formula.indexOf("10"))).toMatchObject({
      call: { name: "CONDUCTOR.DROP" },
      argument: 1,
    });
    expect(argumentAtCaret(formula, formula.indexOf("b"))).toMatchObject({ call: { name: "IF" }, argument: 2 });
    expect(argumentAtCaret("=1+2", 2)).toBe(undefined);
  });

  it("ends a name only where one is being written", () => {
    expect(nameAtCaret("=conductor.dr", 13)).toBe("conductor.dr");
    expect(nameAtCaret('="sum', 5)).toBe(undefined);
    expect(nameAtCaret("=SUM(A1)", 3)).toBe(undefined);
    expect(nameAtCaret("sum", 3)).toBe(undefined);
  });

  it("takes a reference after an operator, a bracket or a comma", () => {
    expect(takesReference("=", 1)).toBe(true);
    expect(takesReference("=A1*", 4)).toBe(true);
    expect(takesReference("=SUM(A1, ", 9)).toBe(true);
    expect(takesReference("=A1", 3)).toBe(false);
    expect(takesReference('="a+', 4)).toBe(false);
    expect(takesReference("7+", 2)).toBe(false);
  });
});

describe("the functions that are offered", () => {
  it("are all known to the engine", () => {
    const known = new Set(HyperFormula.getRegisteredFunctionNames("enGB"));
    expect(builtInFunctions.map(({ name }) => name).filter((name) => !known.has(name))).toEqual([]);
  });
});

describe("a number on the screen", () => {
  it.each([
    [1.37249, undefined, "1.372"],
    [1.37249, 2, "1.37"],
    [17, 1, "17.0"],
    [-0.001, 2, "0.00"],
    [-1.5, undefined, "\u22121.5"],
    [12500, 0, "12\u202f500"],
    [1e-7, undefined, "1 × 10⁻⁷"],
    [0, undefined, "0"],
    [123456.7, undefined, "123\u202f457"],
  ] as const)("%d with %s digits reads %s", (value, digits, expected) => {
    expect(numberText(value, digits)).toBe(expected);
  });

  it.each([
    ["mm2", "mm²"],
    ["m3/h", "m³/h"],
    ["degC", "°C"],
    ["mohm", "mΩ"],
    ["ohm mm2/m", "Ω\u00a0mm²/m"],
    ["margin", "margin"],
  ])("unit %s reads %s", (unit, expected) => {
    expect(unitText(unit)).toBe(expected);
  });
});
