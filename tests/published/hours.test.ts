import { describe, expect, test } from "vitest";
import { hoursAt } from "../../src/functions/hours/at";
import { hoursJoin } from "../../src/functions/hours/join";
import { hoursMean } from "../../src/functions/hours/mean";
import { priceMargin } from "../../src/functions/hours/price-margin";
import { priceMarkup } from "../../src/functions/hours/price-markup";
import { hoursSpread } from "../../src/functions/hours/spread";
import { callByName } from "../functions/second-calculation";
import { activities, chances, equalLines, nineLines, nineMean, nineVariances } from "./estimate";
import { cell, rowsOf } from "./values";

const near = (value: number, wanted: number, within: number): void => {
  expect(Math.abs(value - wanted), `got ${value}, wanted ${wanted}`).toBeLessThanOrEqual(within);
};

/** Mean and spread of a path, its lines independent of each other. */
function path(
  lines: readonly (readonly [low: number, likely: number, high: number])[],
): [mean: number, spread: number] {
  const given = lines.map(([low, likely, high]) => ({ low, likely, high }));
  const mean = given.reduce((sum, line) => sum + callByName(hoursMean, line), 0);
  return [mean, callByName(hoursJoin, { spreads: given.map((line) => callByName(hoursSpread, line)), common: 0 })];
}

describe("three-point estimates", () => {
  test.each(activities)("network %d, activity %s: %d, %d, %d (Taylor; public exercise)", (_n, _name, ...numbers) => {
    const [low, likely, high, mean, variance] = numbers;
    near(callByName(hoursMean, { low, likely, high }), mean, 5e-5);
    near(callByName(hoursSpread, { low, likely, high }) ** 2, variance, 5e-5);
  });

  const along = (network: number, names: string) =>
    activities
      .filter(([one, name]) => one === network && names.includes(name))
      .map(([, , low, likely, high]) => [low, likely, high] as const);

  test("Taylor, Introduction to Management Science: path 1-3-5-7 is 24 weeks, variance 5.0", () => {
    const [mean, spread] = path(along(1, "1357"));
    near(mean, 24, 1e-3);
    near(spread ** 2, 5, 1e-3);
  });

  test("public worked exercise: path A-C-E-H-I-K-M-N is 50.8333 days, variance 11.1944", () => {
    const [mean, spread] = path(along(2, "ACEHIKMN"));
    near(mean, 50.8333, 5e-5);
    near(spread ** 2, 11.1944, 5e-5);
  });

  test("public worked example: 2, 3, 5; 5, 8, 14; 3, 4, 6; 1, 2, 3 is 17.83 with a spread of 1.69", () => {
    const [mean, spread] = path([
      [2, 3, 5],
      [5, 8, 14],
      [3, 4, 6],
      [1, 2, 3],
    ]);
    near(mean, 17.83, 5e-3);
    near(spread, 1.69, 5e-3);
  });

  test("project-management study text: a variance of 14.98 is a spread of 3.87", () => {
    near(callByName(hoursJoin, { spreads: [Math.sqrt(14.98)], common: 0 }), 3.87, 5e-3);
  });
});

describe("HOURS.AT at the chance that the text prints", () => {
  test.each(chances)("%s: mean %d, variance %d, %d", (_source, mean, variance, limit, chance, within) => {
    const spread = Math.sqrt(variance);
    // The limit lies between the hours at the chance less and plus half a unit of its last digit.
    expect(callByName(hoursAt, { mean, spread, share: chance - within })).toBeLessThanOrEqual(limit);
    expect(callByName(hoursAt, { mean, spread, share: chance + within })).toBeGreaterThanOrEqual(limit);
  });

  test("public yacht-building exercise: 95 of 100 at mean 21, variance 4, is 24.29 months", () => {
    near(callByName(hoursAt, { mean: 21, spread: 2, share: 0.95 }), 24.29, 5e-3);
  });

  // Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.5, from memory of its first digits.
  test.each([
    [0.9, 1.28155],
    [0.95, 1.64485],
    [0.975, 1.95996],
    [0.99, 2.32635],
    [0.995, 2.57583],
    [0.999, 3.09023],
  ])("normal table: %d lies %d spreads above the mean", (share, z) => {
    near(callByName(hoursAt, { mean: 0, spread: 1, share }), z, 5e-6);
    near(callByName(hoursAt, { mean: 0, spread: 1, share: 1 - share }) + z, 0, 5e-6);
  });
});

describe("lines that move together", () => {
  test.each(equalLines)("HOURS.JOIN of %d equal lines at %d, against independent ones", (lines, common, ratio) => {
    const spread = callByName(hoursJoin, { spreads: Array(lines).fill(1), common });
    near(spread / Math.sqrt(lines), ratio, 5e-5);
  });

  test.each(rowsOf("lines-in-common.csv"))(
    "HOURS.JOIN of $lines equal lines at $common: what leaving it out hides (identity, 1 decimal)",
    (row) => {
      const lines = cell(row, "lines");
      const joined = callByName(hoursJoin, { spreads: Array(lines).fill(1), common: cell(row, "common") });
      near((1 - Math.sqrt(lines) / joined) * 100, cell(row, "spread"), 0.05);
      near((1 - lines / joined ** 2) * 100, cell(row, "variance"), 0.05);
    },
  );

  test.each(nineLines)(
    "nine invented lines at %d: spread, and what holds in 50, 80, 90 of 100",
    (common, ...wanted) => {
      const [spread, half, eighty, ninety, over] = wanted;
      const joined = callByName(hoursJoin, { spreads: nineVariances.map(Math.sqrt), common });
      near(joined, spread, 0.05);
      const at = (share: number) => callByName(hoursAt, { mean: nineMean, spread: joined, share });
      near(at(0.5), half, 0.5);
      near(at(0.8), eighty, 0.5);
      near(at(0.9), ninety, 0.5);
      near(at(0.8) - 9030, over, 0.5);
    },
  );
});

describe("price", () => {
  test.each([
    [0.1, 0.0909],
    [0.25, 0.2],
    [0.5, 0.3333],
    [1, 0.5],
  ])("a mark-up of %d is a margin of %d, identity", (markup, margin) => {
    near(callByName(priceMargin, { markup }), margin, 5e-5);
    near(callByName(priceMarkup, { margin }), markup, 5e-4);
  });
});
