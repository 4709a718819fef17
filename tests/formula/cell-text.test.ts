import { describe, expect, it } from "vitest";
import { Engine } from "../../src/engine/engine";
import { cellText } from "../../src/formula/cell-text";
import type { Expression } from "../../src/formula/expression";
import { readExpression } from "../../src/formula/read";
import { runnable, testable } from "../../src/formula/run";
import { pick, randomExpression, seeded } from "./random-expression";

const names = ["a", "b", "c", "d"];
const places = new Map(names.map((name, i) => [name, i]));
const columns = new Map(names.map((name, i) => [name, "ABCD".charAt(i)]));

/** Whether everything that is worked out on the way is finite; a spreadsheet shows an error otherwise. */
function finite(expression: Expression, slots: number[]): boolean {
  const ok = (one: Expression) => finite(one, slots);
  switch (expression.kind) {
    case "number":
    case "name":
      return true;
    case "compare":
      return ok(expression.left) && ok(expression.right);
    case "logic": {
      if (!ok(expression.left)) return false;
      const decided = testable(expression.left, places)(slots) === (expression.op === "or");
      return decided || ok(expression.right);
    }
    case "choice":
      return (
        ok(expression.test) && ok(testable(expression.test, places)(slots) ? expression.then : expression.otherwise)
      );
    default: {
      const parts =
        expression.kind === "minus"
          ? [expression.of]
          : expression.kind === "call"
            ? expression.args
            : [expression.left, expression.right];
      return parts.every(ok) && Number.isFinite(runnable(expression, places)(slots));
    }
  }
}

/** Each formula on a row of its own, behind the four numbers that its names stand for. */
function inCells(cases: readonly { readonly expression: Expression; readonly slots: readonly number[] }[]) {
  const rows = cases.map(({ expression, slots }, row) => [
    ...slots.map(String),
    `=${cellText(expression, (name) => `${columns.get(name)}${row + 1}`)}`,
  ]);
  const engine = new Engine([{ name: "Page", rows }]);
  const values = cases.map((_, row) => engine.value({ sheet: 0, row, column: names.length }));
  engine.dispose();
  return values.map((value, i) => ({ value, text: rows[i]?.[names.length] ?? "" }));
}

const ordinary = [1, 2, -1, 0.5, 3, -2.5, 0.1, 7, 12.25, 100];
const hostile = [0, -1, 1e300, -1e300, 1e-300, 5e-324, 0.1, 3, 9e14, -0.5];

describe("a formula written for a cell", () => {
  for (const [title, numbers, seed] of [
    ["ordinary numbers", ordinary, 20261],
    ["numbers at the limits of double precision", hostile, 20262],
  ] as const) {
    it(`gives the bits of the program, or an error where that is not finite: 4000 formulas, ${title}`, () => {
      const random = seeded(seed);
      const cases = Array.from({ length: 4000 }, () => ({
        expression: randomExpression(random, names, 1 + Math.floor(random() * 4)),
        slots: names.map(() => pick(random, numbers)),
      }));
      let numbersFound = 0;
      inCells(cases).forEach(({ value, text }, i) => {
        const { expression, slots } = cases[i] as (typeof cases)[number];
        const expected = finite(expression, [...slots])
          ? { kind: "number", value: runnable(expression, places)([...slots]) + 0 }
          : { kind: "error" };
        if (expected.kind === "number") numbersFound++;
        expect({ text, slots, ...(value.kind === "error" ? { kind: "error" } : value) }).toEqual({
          text,
          slots,
          ...expected,
        });
      });
      expect(numbersFound).toBeGreaterThan(1000);
    });
  }

  it.each([
    ["-a^2", "-(A1^2)"],
    ["(-a)^2", "(-A1)^2"],
    ["a^b^c", "A1^(B1^C1)"],
    ["(a^b)^c", "(A1^B1)^C1"],
    ["a-(b-c)", "A1-(B1-C1)"],
    ["a+(b+c)", "A1+(B1+C1)"],
    ["a*(b/c)", "A1*(B1/C1)"],
    ["a/b*c", "A1/B1*C1"],
    ["a*b^2+c", "A1*B1^2+C1"],
    ["a/-b", "A1/(-B1)"],
    ["sin(radians(a))*pi", "SIN(RADIANS(A1))*3.141592653589793"],
    ["ceil(a)+floor(b)", "CEILING(A1,1)+FLOOR(B1,1)"],
    ["ln(a)+log10(b)", "LN(A1)+LOG10(B1)"],
    ["a > 0 and b < 1 ? a : b", "IF(AND(A1>0,B1<1),A1,B1)"],
    ["a != 0 and 1 / a > 2 ? 1 : 2", "IF(IF(A1<>0,1/A1>2,FALSE()),1,2)"],
    ["a * 1.5e-7 + 1e22", "A1*1.5e-7+1e+22"],
  ])("%s is %s in a cell, whose powers go from left to right and whose minus binds first", (text, cell) => {
    expect(cellText(readExpression(text), (name) => `${columns.get(name)}1`)).toBe(cell);
  });
});
