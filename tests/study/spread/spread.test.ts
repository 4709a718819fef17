import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { carryOut, finish } from "../../../src/study/carry-out";
import { convergenceOf } from "../../../src/study/spread/convergence";
import { normalAt, normalShare } from "../../../src/study/spread/normal";
import { Percentiles, percentile } from "../../../src/study/spread/percentile";
import { randomOf, shares } from "../../../src/study/spread/sample";
import { type Shape, valueAt } from "../../../src/study/spread/shape";
import { type SpreadQuestion, spread } from "../../../src/study/spread/spread";
import { cell, rowsOf } from "../../published/values";
import { plainSubject } from "../plain-subject";

const sum = (...values: readonly number[]): number => values.reduce((total, one) => total + one, 0);

function spreadOf(shapes: readonly Shape[], wishes: Partial<SpreadQuestion> = {}, fn = sum) {
  const inputs = Object.fromEntries(shapes.map((_, i) => [`x${i}`, 0]));
  const { subject, runner } = plainSubject(inputs, { y: fn });
  const varied = shapes.map((shape, input) => ({ input, shape }));
  const answer = finish(spread(subject, runner, { varied, trials: 10_000, common: 0, seed: 7, ...wishes }));
  const [result] = answer.results;
  if (!result) throw new Error("no result");
  const [p10 = 0, p50 = 0, p80 = 0, p90 = 0] = result.percentiles;
  return { ...result, p10, p50, p80, p90, answer };
}

const lines = rowsOf("cost-lines.csv");
const lineShapes = lines.map(
  (row): Shape => ({
    kind: "three points",
    low: cell(row, "low"),
    likely: cell(row, "likely"),
    high: cell(row, "high"),
  }),
);

describe("the spread of a sum", () => {
  it("of nine independent three-point lines has the figures of 200 000 trials, within their tolerance of 12", () => {
    const { mean, deviation, p50, p80, p90 } = spreadOf(lineShapes);
    expect(Math.abs(mean - 9993.3)).toBeLessThan(12);
    expect(Math.abs(deviation - 497.7)).toBeLessThan(12);
    expect(Math.abs(p50 - 9977)).toBeLessThan(12);
    expect(Math.abs(p80 - 10_416)).toBeLessThan(12);
    expect(Math.abs(p90 - 10_652)).toBeLessThan(12);
    // Mean and variance of a sum of independent lines are the sums of theirs.
    expect(Math.abs(mean - sum(...lines.map((row) => cell(row, "mean"))))).toBeLessThan(0.5);
  });

  it("of the same lines all in step has the sum of the lines' own P80, 11 211", () => {
    const { p80 } = spreadOf(lineShapes, { common: 1 });
    expect(Math.abs(p80 - 11_211)).toBeLessThan(12);
    expect(p80).toBeCloseTo(sum(...lineShapes.map((shape) => valueAt(shape, 0.8))), -1);
  });

  it.each([0, 0.1, 0.2, 0.5, 0.75, 1])(
    "of normal inputs with common cause %d is normal with variance (1 − ρ)Σs² + ρ(Σs)² (identity)",
    (common) => {
      const spreads = [3, 4, 5, 1, 2];
      const shapes = spreads.map((one, i): Shape => ({ kind: "normal", likely: 10 * i, spread: one }));
      const { mean, deviation, p10, p80, p90 } = spreadOf(shapes, { common });
      const wanted = Math.sqrt((1 - common) * sum(...spreads.map((s) => s * s)) + common * sum(...spreads) ** 2);
      // Standard error of a deviation from 10 000 independent trials: s/√20 000, 0.7 %; of a percentile about 1.7 %.
      expect(Math.abs(mean - 100)).toBeLessThan(0.03 * wanted);
      expect(Math.abs(deviation / wanted - 1)).toBeLessThan(0.02);
      expect(Math.abs((p10 - 100) / wanted + 1.2816)).toBeLessThan(0.05);
      expect(Math.abs((p80 - 100) / wanted - 0.8416)).toBeLessThan(0.05);
      expect(Math.abs((p90 - 100) / wanted - 1.2816)).toBeLessThan(0.05);
    },
  );

  it("of two equal even inputs is a triangle: P10 of the sum of two from 0 to 1 is √0.2, P80 2 − √0.4", () => {
    const even: Shape = { kind: "even", low: 0, high: 1 };
    const { p10, p50, p80 } = spreadOf([even, even]);
    expect(Math.abs(p10 - Math.sqrt(0.2))).toBeLessThan(0.01);
    expect(Math.abs(p50 - 1)).toBeLessThan(0.01);
    expect(Math.abs(p80 - (2 - Math.sqrt(0.4)))).toBeLessThan(0.01);
  });

  it("of an input against the common cause takes away what the others add", () => {
    const normal: Shape = { kind: "normal", likely: 0, spread: 1 };
    const { deviation } = spreadOf([normal, normal], {
      common: 1,
      varied: [
        { input: 0, shape: normal },
        { input: 1, shape: normal, turns: -1 },
      ],
    });
    expect(deviation).toBeLessThan(1e-6);
  });
});

describe("the spread of one input", () => {
  it("of low 10, likely 12, high 20 has P10 11.414, P50 13.675, P80 16.000, P90 17.172 (closed form of the triangle)", () => {
    const shape: Shape = { kind: "three points", low: 10, likely: 12, high: 20 };
    for (const [share, value] of [
      [0.1, 11.414],
      [0.5, 13.675],
      [0.8, 16],
      [0.9, 17.172],
    ] as const) {
      expect(Math.abs(valueAt(shape, share) - value)).toBeLessThan(5e-4);
    }
    // One input is met in every one of its thousand parts a batch, so its own percentiles are nearly exact.
    const { mean, deviation, p10, p50, p80, p90 } = spreadOf([shape]);
    expect(Math.abs(mean - 14)).toBeLessThan(0.005);
    expect(Math.abs(deviation - Math.sqrt(4.6667))).toBeLessThan(0.005);
    expect([p10, p50, p80, p90].map((value) => value.toFixed(2))).toEqual(["11.41", "13.68", "16.00", "17.17"]);
  });

  it.each(["low", "high"] as const)("keeps its likely value at the %s end where they are the same", (end) => {
    const shape: Shape = { kind: "three points", low: 2, likely: end === "low" ? 2 : 5, high: 5 };
    expect(valueAt(shape, 0)).toBe(2);
    expect(valueAt(shape, 1)).toBe(5);
    expect(valueAt({ kind: "three points", low: 3, likely: 3, high: 3 }, 0.3)).toBe(3);
  });
});

describe("trials", () => {
  it("are the same for the same seed, and others for another", () => {
    const run = (seed: number) => [...spreadOf(lineShapes, { seed, trials: 200, common: 0.3 }).values];
    expect(run(1)).toEqual(run(1));
    expect(run(1)).not.toEqual(run(2));
  });

  it("meet each of the equally likely parts of every input once", () => {
    for (const part of shares(500, [0, 0, 0], 0.5, randomOf(3))) {
      const parts = [...part].map((share) => Math.floor(share * 500)).sort((a, b) => a - b);
      expect(parts).toEqual(Array.from({ length: 500 }, (_, i) => i));
    }
  });

  it("without a result are counted and left out of the figures", () => {
    const even: Shape = { kind: "even", low: -1, high: 3 };
    const { lost, least, answer } = spreadOf([even], {}, (x) => (x < 0 ? Number.NaN : x));
    expect(lost).toBe(2500);
    expect(least).toBeGreaterThanOrEqual(0);
    expect(answer.trials).toBe(10_000);
  });

  it("give the chance that a check holds, alone and all together; one without a result does not hold", () => {
    const { subject, runner } = plainSubject(
      { a: 0, b: 0 },
      { a_ok: (a) => a - 0.2, b_ok: (_, b) => (b > 0.9 ? Number.NaN : b - 0.5) },
    );
    const shape: Shape = { kind: "even", low: 0, high: 1 };
    const varied = [0, 1].map((input) => ({ input, shape }));
    const answer = finish(spread(subject, runner, { varied, trials: 10_000, common: 0, seed: 1 }));
    expect(answer.results.map(({ chance }) => chance)).toEqual([0.8, 0.4]);
    expect(Math.abs((answer.allHold ?? 0) - 0.32)).toBeLessThan(0.01);
  });

  it("show how the figures settle, batch by batch", () => {
    const { values, error80, p80 } = spreadOf(lineShapes);
    const convergence = convergenceOf({ values });
    expect(convergence.map(({ trials }) => trials)).toEqual([...Array(10).keys()].map((i) => 1000 * (i + 1)));
    expect(convergence[0]?.error80).toBeNaN();
    expect(convergence.at(-1)?.p80).toBe(p80);
    expect(convergence.at(-1)?.error80).toBe(error80);
    expect(error80).toBeLessThan(12);
  });

  it("can be stopped, and say how far they are", async () => {
    const { subject, runner, runs } = plainSubject({ a: 0 }, { y: (a) => a });
    const stop = new AbortController();
    const seen: number[] = [];
    const study = spread(subject, runner, {
      varied: [{ input: 0, shape: { kind: "even", low: 0, high: 1 } }],
      trials: 100_000,
      common: 0,
      seed: 1,
    });
    const answer = carryOut(study, {
      signal: stop.signal,
      pauseAfter: 0,
      progress: ({ done, of }) => {
        seen.push(done / of);
        if (seen.length === 3) stop.abort(new Error("stopped"));
      },
    });
    await expect(answer).rejects.toThrow("stopped");
    expect(seen).toEqual([...seen].sort((a, b) => a - b));
    expect(runs()).toBeLessThan(1000);
  });

  it("are refused with a sentence for limits that stand the wrong way round", () => {
    const wrong: Shape = { kind: "three points", low: 3, likely: 2, high: 5 };
    expect(() => spreadOf([wrong])).toThrow("x0: got 3, 2, 5; low, likely and high must rise.");
    expect(() => spreadOf([{ kind: "normal", likely: 1, spread: -1 }])).toThrow("x0: the spread is -1");
  });
});

describe("the normal distribution", () => {
  it("has the quantiles of an independent library (stdlib), to 13 digits", () => {
    for (const share of [1e-4, 0.01, 0.07499, 0.075, 0.3, 0.5, 0.8, 0.925, 0.9999]) {
      expect(Math.abs(normalAt(share) - normalQuantile(share, 0, 1))).toBeLessThan(1e-13);
    }
  });

  it("has the shares whose quantiles an independent library (stdlib) gives, to 13 digits of a share", () => {
    const density = (x: number) => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
    for (let x = -6; x <= 6; x += 0.0173) {
      expect(Math.abs(normalQuantile(normalShare(x), 0, 1) - x) * density(x), String(x)).toBeLessThan(1e-13);
    }
  });

  it("has shares that belong to its quantiles, and 0.975002 below 1.96 (table value)", () => {
    expect(normalShare(1.96)).toBeCloseTo(0.975002, 6);
    expect(normalShare(0)).toBe(0.5);
    for (const x of [-6, -3.3, -1, 0.2, 2, 4]) expect(Math.abs(normalAt(normalShare(x)) - x)).toBeLessThan(1e-5);
    for (const share of [1e-6, 0.02, 0.5, 0.9, 1 - 1e-6]) {
      expect(Math.abs(normalShare(normalAt(share)) / share - 1)).toBeLessThan(1e-9);
    }
  });
});

it("percentiles lie on straight lines between the sorted values (definition 7 of Hyndman and Fan 1996)", () => {
  expect(percentile([1, 2, 4, 8], 0)).toBe(1);
  expect(percentile([1, 2, 4, 8], 1)).toBe(8);
  expect(percentile([1, 2, 4, 8], 0.5)).toBe(3);
  expect(percentile([1, 2, 4, 8], 0.9)).toBeCloseTo(6.8, 12);
  expect(percentile([], 0.5)).toBeNaN();
});

it("percentiles of numbers in any order are those of the sorted ones, bit for bit", () => {
  const shares = [0, 0.1, 0.5, 0.8, 0.9, 1];
  const room = new Percentiles(600);
  const ends = fc.constantFrom(0, 1, -1, 1e308, -1e308, 5e-324);
  const numbers = fc.oneof(
    fc.array(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1, max: 1 }), { minLength: 1, maxLength: 600 }),
    fc.array(fc.oneof(fc.integer({ min: 0, max: 5 }), ends), { minLength: 100, maxLength: 600 }),
    fc.array(fc.double({ noNaN: true }), { minLength: 100, maxLength: 600 }),
  );
  fc.assert(
    fc.property(numbers, (some) => {
      // Noughts of both signs are alike to a result.
      const values = Float64Array.from(some, (one) => one + 0);
      const sorted = values.slice().sort();
      expect(room.of(values, shares)).toEqual(shares.map((share) => percentile(sorted, share)));
    }),
    { numRuns: 300, seed: 5 },
  );
  expect(room.of(new Float64Array(), shares)).toEqual(shares.map(() => Number.NaN));
});
