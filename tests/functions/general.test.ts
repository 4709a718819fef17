import fc from "fast-check";
import { unit } from "mathjs";
import { describe, expect, it } from "vitest";
import { convert } from "../../src/functions/general/convert";
import { tableAt } from "../../src/functions/general/table-at";
import { refuses } from "./refusals";
import { callByName } from "./second-calculation";

/** Factors to the first unit of each list, from their definitions, written as plain numbers. */
const sizes = [
  { mm: 1, m: 1000, in: 25.4, ft: 304.8, yd: 914.4, mil: 0.0254, Nmi: 1852000 },
  { mm2: 1, m2: 1e6, in2: 645.16, ft2: 92903.04, ha: 1e10 },
  { ml: 1, l: 1000, m3: 1e6, gal: 3785.411784, uk_gal: 4546.09, in3: 16.387064, oz: 29.5735295625 },
  { g: 1, kg: 1000, t: 1e6, lbm: 453.59237, ozm: 28.349523125, stone: 6350.29318 },
  { N: 1, kN: 1000, kgf: 9.80665, lbf: 4.4482216152605, dyn: 1e-5 },
  { Pa: 1, kPa: 1000, bar: 1e5, atm: 101325, psi: 4.4482216152605 / 0.00064516, "N/mm2": 1e6 },
  { W: 1, kW: 1000, HP: 550 * 0.3048 * 4.4482216152605, PS: 735.49875 },
  { J: 1, kJ: 1000, Wh: 3600, kWh: 3.6e6, cal: 4.1868, flb: 0.3048 * 4.4482216152605 },
  { "m/s": 1, "km/h": 1 / 3.6, kn: 1852 / 3600, mph: 0.44704 },
  { s: 1, min: 60, h: 3600, day: 86400 },
  { mA: 1, A: 1000, kA: 1e6 },
  { mV: 1, V: 1000 },
  { mohm: 1, ohm: 1000 },
];

const values = fc.integer({ min: -1_000_000, max: 1_000_000 }).map((i) => i / 128);

describe("CONVERT", () => {
  it("agrees with the definitions, over random values and every pair of units of a kind", () => {
    for (const kind of sizes) {
      const names = fc.constantFrom(...Object.keys(kind));
      fc.assert(
        fc.property(values, names, names, (value, from, to) => {
          const factor = (name: string) => ({ ...kind })[name as keyof typeof kind] as number;
          const wanted = (value * factor(from)) / factor(to);
          expect(Math.abs(callByName(convert, { value, from, to }) - wanted)).toBeLessThanOrEqual(
            Math.abs(wanted) * 1e-14,
          );
        }),
        { numRuns: 300, seed: 20 },
      );
    }
  });

  it("agrees with the units library on temperatures", () => {
    const names = fc.constantFrom(["C", "degC"], ["F", "degF"], ["K", "K"], ["Rank", "degR"] as const);
    fc.assert(
      fc.property(values, names, names, (value, [from, first], [to, second]) => {
        const wanted = unit(value, String(first)).toNumber(String(second));
        expect(callByName(convert, { value, from, to })).toBeCloseTo(wanted, 9);
      }),
      { numRuns: 300, seed: 20 },
    );
  });

  it("refuses an unknown or mismatched unit as missing, with both named", () => {
    const good = { value: 1, from: "m", to: "mm" };
    refuses(convert, { ...good, from: "furlongx" }, "missing", /^CONVERT: unit furlongx is not known; use a symbol/);
    refuses(convert, { ...good, to: "kg" }, "missing", /^CONVERT: m is a length, kg a mass; give two units/);
  });

  it("refuses blanks, text for a number and a number for a unit", () => {
    const good = { value: 1, from: "m", to: "mm" };
    refuses(convert, { ...good, value: null }, "kind", "value: blank");
    refuses(convert, { ...good, value: "x" }, "kind", 'value: got text "x", needs a number');
    refuses(convert, { ...good, from: null }, "kind", "from: blank");
    refuses(convert, { ...good, to: "" }, "kind", "to: blank");
    refuses(convert, { ...good, to: 5 }, "kind", "to: got 5, needs text");
  });
});

describe("TABLE.AT", () => {
  const steps = fc.array(fc.tuple(fc.integer({ min: 1, max: 1000 }), fc.integer({ min: -1000, max: 1000 })), {
    minLength: 2,
    maxLength: 12,
  });

  it("agrees with the weighted mean of the two rows around, over random tables", () => {
    fc.assert(
      fc.property(steps, fc.integer({ min: 0, max: 4096 }), (rows, part) => {
        let sum = -500;
        const xs = rows.map(([step]) => {
          sum += step;
          return sum;
        });
        const ys = rows.map(([, y]) => y);
        const [low, high] = [xs[0] as number, xs.at(-1) as number];
        const x = low + (part / 4096) * (high - low);
        const after = Math.max(
          1,
          xs.findIndex((place) => place >= x),
        );
        const [x0, x1] = [xs[after - 1] as number, xs[after] as number];
        const wanted = ((ys[after - 1] as number) * (x1 - x) + (ys[after] as number) * (x - x0)) / (x1 - x0);
        expect(Math.abs(callByName(tableAt, { x, xs, ys }) - wanted)).toBeLessThanOrEqual(1e-9);
      }),
      { numRuns: 500, seed: 20 },
    );
  });

  it("gives the rows themselves, the last one within rounding", () => {
    const [xs, ys] = [
      [0.1, 0.2, 0.7],
      [3.3, -1.1, 0.4],
    ];
    for (const [i, x] of xs.entries()) expect(callByName(tableAt, { x, xs, ys })).toBeCloseTo(ys[i] as number, 15);
  });

  it("has no answer outside the table", () => {
    const good = { x: 1, xs: [1, 2], ys: [3, 4] };
    refuses(tableAt, { ...good, x: 0.99 }, "missing", "x: 0.99 is outside the table (allowed 1 to 2)");
    refuses(tableAt, { ...good, x: 2.01 }, "missing", "x: 2.01 is outside the table (allowed 1 to 2)");
  });

  it("refuses columns of different length, one row, columns that do not rise, blanks and texts", () => {
    const good = { x: 1, xs: [1, 2, 3], ys: [3, 4, 5] };
    refuses(tableAt, { ...good, ys: [3, 4] }, "kind", "xs has 3 cells and ys 2, they must match");
    refuses(tableAt, { ...good, xs: [1], ys: [3] }, "kind", "xs: one cell, needs at least two");
    refuses(tableAt, { ...good, xs: [1, 1, 3] }, "range", "xs: cell 2 is 1, it must be above 1");
    refuses(tableAt, { ...good, xs: [1, null, 3] }, "kind", "xs: cell 2 of 3 is blank");
    refuses(tableAt, { ...good, ys: [1, "b", 3] }, "kind", 'ys: got text "b", needs a number');
    refuses(tableAt, { ...good, x: null }, "kind", "x: blank");
  });
});
