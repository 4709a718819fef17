import { describe, expect, it } from "vitest";
import { mathExpression } from "../../src/formula/mathml";
import { readExpression } from "../../src/formula/read";
import { readerText } from "../../src/formula/reader-text";
import { randomExpression, seeded } from "./random-expression";

const set = (text: string): string => mathExpression(readExpression(text));

describe("a formula set as mathematics", () => {
  it.each([
    ["a / b", "<mfrac><mi>a</mi><mi>b</mi></mfrac>"],
    ["sqrt(a)", "<msqrt><mi>a</mi></msqrt>"],
    ["a^2", "<msup><mi>a</mi><mn>2</mn></msup>"],
    ["T20", "<msub><mi>T</mi><mn>20</mn></msub>"],
    ["alpha", "<mi>α</mi>"],
    ["halfBreadth", "<mi>half\u00A0breadth</mi>"],
    ["1.1892e-6", "<mrow><mn>1.1892</mn><mo>×</mo><msup><mn>10</mn><mn>−6</mn></msup></mrow>"],
    ["a < b", "<mrow><mi>a</mi><mo>&lt;</mo><mi>b</mi></mrow>"],
  ])("%s", (text, markup) => {
    expect(set(text)).toBe(markup);
  });

  it("puts brackets round a negative base and a sum in a product, none round a fraction", () => {
    expect(set("(-a)^2")).toContain("<msup><mrow><mo>(</mo>");
    expect(set("-a^2")).toBe("<mrow><mo>−</mo><msup><mi>a</mi><mn>2</mn></msup></mrow>");
    expect(set("(a + b) * c")).toContain("<mo>(</mo>");
    expect(set("a / b * c")).not.toContain("<mo>(</mo>");
  });

  it("closes every element, for 500 random formulas", () => {
    const random = seeded(77);
    for (let i = 0; i < 500; i++) {
      const markup = mathExpression(randomExpression(random, ["a", "rho", "T20", "axisDepth"], 4));
      const open: string[] = [];
      for (const [, end, name = ""] of markup.matchAll(/<(\/?)(\w+)>/g)) {
        if (end) expect(open.pop()).toBe(name);
        else open.push(name);
      }
      expect(open).toEqual([]);
      expect(markup.replaceAll(/<\/?\w+>/g, "")).not.toMatch(/[<>]/);
    }
  });
});

describe("a formula as a line for a reader", () => {
  it.each([
    ["-a^2", "−(a^2)"],
    ["(-a)^2", "(−a)^2"],
    ["sqrt(a) * rho", "√(a) × ρ"],
    ["r / 1000 * halfBreadth", "r / 1000 × half breadth"],
    ["x < 0.5 and T20 >= 1 ? 1 : x", "(1 if x < 0.5 and T₂₀ ≥ 1, otherwise x)"],
  ])("%s reads %s", (text, line) => {
    expect(readerText(readExpression(text))).toBe(line);
  });
});
