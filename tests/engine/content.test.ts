import { describe, expect, it } from "vitest";
import { contentOf, engineContent, readableFormula } from "../../src/engine/content";

describe("the text of a cell", () => {
  it.each([
    ["1.5", 1.5],
    ["-0.25", -0.25],
    [".5", 0.5],
    ["1e-5", 1e-5],
    ["1E-5", 1e-5],
    ["0", 0],
    ["-0", 0],
    ["123456789012345", 123456789012345],
    ["0.000123456789012345", 0.000123456789012345],
    ["0.30000000000000004", 0.1 + 0.2],
    ["1.2136145980000002", 1.2136145980000002],
  ])("%s is a number", (text, value) => {
    expect(contentOf(text)).toEqual({ kind: "number", value });
  });

  it.each([
    "007",
    "1234567890123456",
    "0.300000000000000041",
    "2026-11-25",
    "10%",
    "$5",
    "1,5",
    "1 000",
    "12:30",
    "1e999",
    "+",
    ".",
    "e5",
    "4/0",
  ])("%s stays text", (text) => {
    expect(contentOf(text)).toEqual({ kind: "text", text });
    expect(engineContent(text)).toBe(`'${text}`);
  });

  it("a leading apostrophe makes text of anything", () => {
    expect(contentOf("'=A1")).toEqual({ kind: "text", text: "=A1" });
    expect(contentOf("'12")).toEqual({ kind: "text", text: "12" });
  });

  it("TRUE and FALSE are flags, blank is blank, = alone is text", () => {
    expect(contentOf("TRUE")).toEqual({ kind: "flag", value: true });
    expect(contentOf("")).toEqual({ kind: "blank" });
    expect(contentOf("=")).toEqual({ kind: "text", text: "=" });
  });

  it("a capital E in a number is read, but not in names, strings and page names", () => {
    expect(readableFormula("=1E-5+2.5E3+.5E+2")).toBe("=1e-5+2.5e3+.5e+2");
    expect(readableFormula("=\"1E5\"&E5+A1E5+'1E5'!A1+LOG10(1E5)")).toBe("=\"1E5\"&E5+A1E5+'1E5'!A1+LOG10(1e5)");
  });
});
