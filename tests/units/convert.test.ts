import { describe, expect, test } from "vitest";
import { convertUnit } from "../../src/units/convert";
import { sameKind } from "../../src/units/kinds";
import { unit } from "../../src/units/library";
import { unitNotation } from "../../src/units/names";
import { plainSymbols, prefixedSymbols } from "../../src/units/symbols";
import { readUnit } from "../../src/units/unit";

const near = (value: number | string, wanted: number): void => {
  expect(typeof value).toBe("number");
  expect(Math.abs(Number(value) - wanted)).toBeLessThanOrEqual(Math.abs(wanted) * 4e-16);
};

describe("definitions", () => {
  test.each([
    [1, "in", "mm", 25.4, "International yard and pound agreement 1959"],
    [1, "lbm", "kg", 0.45359237, "International yard and pound agreement 1959"],
    [1, "lbf", "N", 4.4482216152605, "pound × standard gravity 9.80665 m/s2"],
    [1, "psi", "Pa", 4.4482216152605 / 0.0254 ** 2, "lbf per square inch"],
    [1, "kn", "m/s", 1852 / 3600, "nautical mile an hour"],
    [1, "HP", "W", 550 * 0.3048 * 4.4482216152605, "550 ft lbf/s"],
    [1, "PS", "W", 75 * 9.80665, "75 kgf m/s"],
    [1, "gal", "l", 3.785411784, "231 cubic inches"],
    [1, "uk_gal", "l", 4.54609, "UK Weights and Measures Act 1985, schedule 1"],
    [1, "acre", "m2", 4046.8564224, "4840 square yards"],
    [1, "BTU", "J", 1055.05585262, "ISO 31-4 international table"],
    [1, "eV", "J", 1.602176634e-19, "SI brochure, 9th edition"],
    [1, "Torr", "Pa", 101325 / 760, "atmosphere/760"],
    [1, "mmHg", "Pa", 133.322387415, "13 595.1 kg/m3 × 9.80665 m/s2 × 1 mm"],
    [1, "yr", "s", 31557600, "365.25 days"],
    [1, "tbs", "tsp", 3, "three teaspoons"],
    [1, "byte", "bit", 8, "ISO/IEC 80000-13"],
    [1, "kibyte", "byte", 1024, "ISO/IEC 80000-13"],
    [1, "km2", "m2", 1e6, "the prefix is raised with the unit"],
    [1, "cm3", "ml", 1, "litre of 1964"],
    [12, "V", "mV", 12000, "SI brochure, 9th edition, table 7"],
    [35, "g/kg", "1", 0.035, "SI brochure, 9th edition, table 7"],
    [1.5, "Ah", "mAh", 1500, "SI brochure, 9th edition, table 7"],
  ] as const)("%d %s is so many %s: %d (%s)", (value, from, to, wanted, _definition) =>
    near(convertUnit(value, from, to), wanted),
  );
});

describe("temperatures keep their zero", () => {
  // ITS-90 and NIST SP 811, B.8: t/°C = (t/°F − 32)/1.8, T/K = t/°C + 273.15, T/°R = 1.8 T/K; 80 °Ré = 100 °C.
  test.each([
    [0, "C", "K", 273.15],
    [100, "C", "F", 212],
    [-40, "F", "C", -40],
    [32, "F", "degC", 0],
    [0, "K", "F", -459.67],
    [273.15, "K", "Rank", 491.67],
    [80, "Reau", "C", 100],
    [20, "degC", "C", 20],
  ] as const)("%d %s in %s", (value, from, to, wanted) => {
    expect(Math.abs(Number(convertUnit(value, from, to)) - wanted)).toBeLessThan(1e-12 * 300);
  });
});

test("there and back gives the value again, for every pair of units of one kind", () => {
  const lengths = ["mm", "km", "in", "ft", "yd", "mi", "Nmi", "mil", "Pica", "ell"];
  const temperatures = ["C", "F", "K", "Rank", "Reau"];
  for (const kind of [lengths, temperatures]) {
    for (const from of kind) {
      for (const to of kind) {
        const there = Number(convertUnit(123.456, from, to));
        expect(Math.abs(Number(convertUnit(there, to, from)) - 123.456)).toBeLessThan(1e-11);
      }
    }
  }
});

describe("what cannot be converted gets a sentence", () => {
  test.each([
    ["furlongx", "mm", "CONVERT: unit furlongx is not known"],
    ["mm", "furlongx", "CONVERT: unit furlongx is not known"],
    ["KG", "g", "CONVERT: unit KG is not known"],
    ["m", "kg", "CONVERT: m is a length, kg a mass"],
    ["kgf", "kg", "CONVERT: kgf is a force, kg a mass"],
    ["oz", "g", "CONVERT: oz is a volume, g a mass"],
    ["rpm", "1/s", "CONVERT: rpm is a turning speed, 1/s a rate"],
    ["ohm/m", "kg/m3", "CONVERT: ohm/m and kg/m3 measure different things"],
  ])("%s to %s", (from, to, sentence) => {
    expect(convertUnit(1, from, to)).toContain(sentence);
  });
});

test("gives the bits of the units library itself for every pair of units of one kind", () => {
  const known = [
    ...new Set([
      ...Object.keys(unitNotation),
      ...Object.keys(plainSymbols),
      ...Object.keys(prefixedSymbols).flatMap((symbol) => [symbol, `k${symbol}`]),
    ]),
  ].flatMap((text) => {
    const found = readUnit(text);
    return found ? [{ text, ...found }] : [];
  });
  let pairs = 0;
  for (const from of known) {
    for (const to of known) {
      if (!sameKind(from, to) || from.notation === to.notation) continue;
      for (const value of [1, -7.3, 2.5e17]) {
        const wanted = unit(value, from.notation).toNumber(to.notation);
        if (!Object.is(convertUnit(value, from.text, to.text), wanted)) {
          expect(convertUnit(value, from.text, to.text), `${value} ${from.text} in ${to.text}`).toBe(wanted);
        }
      }
      pairs++;
    }
  }
  expect(pairs).toBeGreaterThan(1000);
});
