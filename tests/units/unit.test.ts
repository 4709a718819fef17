import { describe, expect, test } from "vitest";
import { isUnitText, unitNotation } from "../../src/units/names";
import { plainSymbols, prefixedSymbols } from "../../src/units/symbols";
import { readUnit } from "../../src/units/unit";

describe("unit texts", () => {
  test.each(Object.keys(unitNotation))("the row unit %s can be read", (text) => {
    const unit = readUnit(text);
    expect(unit?.factor).toBeGreaterThan(0);
    expect(unit?.dimensions).toHaveLength(9);
  });

  test.each([...Object.keys(plainSymbols), ...Object.keys(prefixedSymbols)])("the symbol %s can be read", (text) => {
    expect(readUnit(text)?.factor).toBeGreaterThan(0);
  });

  test("a row unit and a symbol that are spelt alike mean the same", () => {
    const both = [...Object.entries(plainSymbols), ...Object.entries(prefixedSymbols)].filter(([text]) =>
      isUnitText(text),
    );
    expect(both.length).toBeGreaterThan(10);
    for (const [text, notation] of both) {
      const spelt = { ...unitNotation }[text as keyof typeof unitNotation];
      expect([text, spelt.replace("A h", "Ah")]).toEqual([text, notation]);
    }
  });
});

describe("what a unit text means", () => {
  // Exponents in the order kg, m, s, A, K, cd, mol, bit, money (SI brochure, 9th edition, table 4).
  test.each([
    ["N", [1, 1, -2, 0, 0, 0, 0, 0, 0], 1],
    ["kg/dm3", [1, -3, 0, 0, 0, 0, 0, 0, 0], 1000],
    ["mm2", [0, 2, 0, 0, 0, 0, 0, 0, 0], 1e-6],
    ["V", [1, 2, -3, -1, 0, 0, 0, 0, 0], 1],
    ["mohm", [1, 2, -3, -2, 0, 0, 0, 0, 0], 1e-3],
    ["ohm mm2/m", [1, 3, -3, -2, 0, 0, 0, 0, 0], 1e-6],
    ["Ah", [0, 0, 1, 1, 0, 0, 0, 0, 0], 3600],
    ["kn", [0, 1, -1, 0, 0, 0, 0, 0, 0], 1852 / 3600],
    ["money/h", [0, 0, -1, 0, 0, 0, 0, 0, 1], 1 / 3600],
    ["1", [0, 0, 0, 0, 0, 0, 0, 0, 0], 1],
    ["margin", [0, 0, 0, 0, 0, 0, 0, 0, 0], 1],
  ])("%s", (text, dimensions, factor) => {
    const unit = readUnit(text);
    expect(unit?.dimensions.map((power) => power + 0)).toEqual(dimensions);
    expect(Math.abs((unit?.factor ?? 0) / factor - 1)).toBeLessThan(1e-15);
    expect(unit?.offset).toBe(0);
  });

  test("an angle is a number with its size in radians", () => {
    expect(readUnit("deg")).toMatchObject({ angle: 1, factor: Math.PI / 180, dimensions: Array(9).fill(0) });
    expect(readUnit("rpm")?.angle).toBe(1);
    expect(readUnit("mm")?.angle).toBe(0);
  });

  test("only a temperature on a scale of its own has an offset", () => {
    expect(readUnit("degC")).toMatchObject({ factor: 1, offset: 273.15 });
    expect(readUnit("K")?.offset).toBe(0);
    expect(readUnit("1/K")?.offset).toBe(0);
    expect(readUnit("F")?.offset).toBeCloseTo(459.67 / 1.8, 10);
  });

  test.each([
    "",
    " mm",
    "MM",
    "furlongx",
    "kmm",
    "kmin",
    "kkg",
    "mm^2",
    "Kibyte",
    "kt",
    "constructor",
    "__proto__",
    "2 m",
  ])("%j is no unit", (text) => {
    expect(readUnit(text)).toBeUndefined();
  });
});
