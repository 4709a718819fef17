import { describe, expect, it } from "vitest";
import { carryOut, finish } from "../../src/study/carry-out";
import { moves } from "../../src/study/moves";
import { smallest } from "../../src/study/smallest";
import { type SolveQuestion, solve } from "../../src/study/solve";
import { twoInputs } from "../../src/study/two-inputs";
import { plainSubject } from "./plain-subject";

type Fn = (...values: readonly number[]) => number;

function solved(fn: Fn, question: Partial<SolveQuestion>, x: Parameters<typeof plainSubject>[0][string] = 1) {
  const { subject, runner } = plainSubject({ x }, { y: fn });
  return finish(solve(subject, runner, { input: 0, result: 0, wanted: 0, ...question }));
}

const range = (low: number, high: number) => ({ range: { low, high } });

describe("solve back", () => {
  it("finds √2 as the root of x² to the last bit", () => {
    const { solutions, sentence } = solved((x) => x * x, { wanted: 2, ...range(0, 3) });
    expect(solutions).toHaveLength(1);
    expect(solutions[0]?.input).toBeCloseTo(Math.SQRT2, 15);
    expect(solutions[0]).toMatchObject({ jumps: false });
    expect(sentence).toBe("x 1.41421 m gives y 2 m.");
  });

  it("finds all roots of a cubic, x³ − 6x² + 11x − 6, and says that there are several", () => {
    const { solutions, sentence } = solved((x) => x ** 3 - 6 * x ** 2 + 11 * x - 6, range(0.05, 3.7));
    expect(solutions.map(({ input }) => Number(input).toFixed(12))).toEqual([
      "1.000000000000",
      "2.000000000000",
      "3.000000000000",
    ]);
    expect(sentence).toMatch(/^3 values do, the result goes up and down: /);
  });

  it("finds two roots that lie between two steps, and a root that only touches", () => {
    const close = solved((x) => (x - 1.0001) * (x - 1.0004), { ...range(0, 2.7), parts: 50 });
    expect(close.solutions.map(({ input }) => Number(input).toFixed(9))).toEqual(["1.000100000", "1.000400000"]);
    const touching = solved((x) => (x - 1.23) ** 2, { ...range(0, 2), parts: 10 });
    expect(touching.solutions).toHaveLength(1);
    expect(touching.solutions[0]?.input).toBeCloseTo(1.23, 7);
  });

  it("says what is out of reach, and where the result comes nearest", () => {
    const { solutions, nearest, sentence } = solved((x) => 4 - (x - 1.3) ** 2, { wanted: 5, ...range(0, 2) });
    expect(solutions).toEqual([]);
    expect(nearest?.input).toBeCloseTo(1.3, 6);
    expect(nearest?.result).toBeCloseTo(4, 12);
    expect(sentence).toBe("y 5 m is out of reach for x from 0 to 2 m; nearest: x 1.3 m gives y 4 m.");
  });

  it("stops at a jump, on the side that reaches the wanted value", () => {
    const { solutions, sentence } = solved((x) => Math.ceil(x), { wanted: 2.5, ...range(0.5, 3.5) });
    expect(solutions).toHaveLength(1);
    expect(solutions[0]).toMatchObject({ result: 3, jumps: true });
    expect(Number(solutions[0]?.input)).toBeGreaterThan(2);
    expect(Number(solutions[0]?.input)).toBeLessThan(2 + 1e-12);
    expect(sentence).toContain("the result jumps there");
  });

  it("keeps clear of stretches without a result", () => {
    const { solutions } = solved((x) => (x < 1 ? Number.NaN : x - 2), range(0, 4));
    expect(solutions.map(({ input }) => input)).toEqual([2]);
    expect(solved(() => Number.NaN, range(0, 1)).sentence).toBe("y has no result for x from 0 to 1 m.");
  });

  it("takes the first of a list that reaches the wanted value", () => {
    const list = { value: 50, choices: [35, 50, 70, 95] };
    expect(solved((x) => x, { wanted: 60 }, list).sentence).toBe(
      "The first of the list with y at least 60 m: x 70 m gives y 70 m.",
    );
    expect(solved((x) => 100 - x, { wanted: 40, enough: "at most" }, list).solutions[0]?.input).toBe(70);
    const none = solved((x) => x, { wanted: 120 }, list);
    expect(none).toMatchObject({ solutions: [], nearest: { input: 95 } });
    expect(none.sentence).toBe("No choice of x gives y at least 120 m; nearest: x 95 m gives y 95 m.");
  });

  it("looks from half to twice the value without a plausible range, and asks for one where the value is 0", () => {
    expect(solved((x) => x, { wanted: 5 }, 3).solutions[0]?.input).toBeCloseTo(5, 14);
    expect(solved((x) => x, { wanted: 7 }, 3).solutions).toEqual([]);
    expect(() => solved((x) => x, { wanted: 5 }, 0)).toThrow("x has no plausible range in the notebook");
    expect(() => solved((x) => x, range(3, 3))).toThrow("the range from 3 to 3 is empty");
  });
});

describe("the smallest value that makes all checks hold", () => {
  const find = (results: Record<string, Fn>, x: Parameters<typeof plainSubject>[0][string], low = 0, high = 10) => {
    const { subject, runner } = plainSubject({ x }, results);
    const listed = typeof x === "object" && x.choices !== undefined;
    return finish(smallest(subject, runner, { input: 0, ...(listed ? {} : range(low, high)) }));
  };

  it("is where the last check begins to hold, to the last bit", () => {
    const { value, short, sentence } = find({ a_ok: (x) => x - 2, b_ok: (x) => x * x - 5, y: (x) => -x }, 1);
    expect(value).toBeCloseTo(Math.sqrt(5), 15);
    expect(Number(value) ** 2).toBeGreaterThanOrEqual(5);
    expect(short).toEqual(["b_ok"]);
    expect(sentence).toBe("All checks that x moves hold with x 2.23607 m; with anything less short: b_ok.");
  });

  it("is the first of a list, and the low end where everything holds from there", () => {
    const checks = { a_ok: (x: number) => x / 60 - 1 };
    const list = { value: 50, choices: [35, 50, 70, 95] };
    expect(find(checks, list).sentence).toBe("All checks that x moves hold with x 70 m; with 50 m short: a_ok.");
    expect(find({ a_ok: (x) => 5 - x }, 1).sentence).toBe("All checks that x moves hold from 0 m on.");
    expect(find({ a_ok: () => 0 }, 1).sentence).toBe("x makes no difference to any check.");
  });

  it("is missing where no value does, with what stays short", () => {
    const never = find({ a_ok: (x) => x - 5, b_ok: (x) => 4 - x, y: (x) => x }, 1);
    expect(never).toMatchObject({ value: undefined, unmoved: [] });
    expect(never.sentence).toMatch(
      /^No value of x makes all checks hold that it moves; with .+ still short: [ab]_ok\.$/,
    );
  });

  it("stands beside the checks that fall short whatever it is, and those without a result", () => {
    const { value, unmoved, open, sentence } = find({ a_ok: (x) => x - 5, b_ok: () => -1, c_ok: () => Number.NaN }, 1);
    expect(value).toBe(5);
    expect(unmoved).toEqual(["b_ok"]);
    expect(open).toEqual(["c_ok"]);
    expect(sentence).toMatch(/; whatever it is, short: b_ok; open: one check\.$/);
  });
});

describe("what moves a result", () => {
  const { subject, runner } = plainSubject(
    {
      small: { value: 10, low: 9, high: 11 },
      large: { value: 2, low: 1, high: 5 },
      free: 4,
      idle: 3,
      cliff: { value: 1, low: 0, high: 2 },
      list: { value: 1, choices: [1, 2, 8] },
    },
    { y: (small, large, free, _idle, cliff, list) => (cliff > 1.5 ? Number.NaN : small + 3 * large + free + list / 4) },
  );
  const { moves: found, now, still } = finish(moves(subject, runner, 0));

  it("ranks inputs by the change over their plausible range, those that lose the result first", () => {
    expect(now).toBe(20.25);
    expect(found.map(({ name, over }) => [name, over])).toEqual([
      ["cliff", undefined],
      ["large", 12],
      ["small", 2],
      ["list", 1.75],
      ["free", undefined],
    ]);
    expect(still).toEqual(["idle"]);
  });

  it("gives the change for a percent, and says what it cannot give", () => {
    const of = (name: string) => found.find((one) => one.name === name);
    expect(of("small")?.percent).toBeCloseTo(0.1, 12);
    expect(of("large")?.percent).toBeCloseTo(0.06, 12);
    expect(of("free")).toMatchObject({ over: undefined, note: "no plausible range in the notebook" });
    expect(of("free")?.percent).toBeCloseTo(0.04, 12);
    expect(of("cliff")?.note).toBe("no result at 2 m");
    expect(of("list")).toMatchObject({ low: 1, high: 8, percent: undefined });
  });
});

describe("two inputs", () => {
  it("give a table of results with the region where all checks hold", () => {
    const { subject, runner } = plainSubject(
      { a: { value: 1, low: 0, high: 2 }, b: { value: 1, choices: [1, 3] } },
      { y: (a, b) => a * b, y_ok: (a, b) => 4 - a * b },
    );
    const answer = finish(
      twoInputs(subject, runner, { across: { input: 0, parts: 4 }, down: { input: 1 }, result: 0 }),
    );
    expect(answer.across.values).toEqual([0, 0.5, 1, 1.5, 2]);
    expect(answer.results).toEqual([
      [0, 0.5, 1, 1.5, 2],
      [0, 1.5, 3, 4.5, 6],
    ]);
    expect(answer.holds).toEqual([
      [true, true, true, true, true],
      [true, true, true, false, false],
    ]);
  });
});

it("a study that was stopped before it began does nothing", async () => {
  const { subject, runner, runs } = plainSubject({ x: 1 }, { y: (x) => x });
  const study = solve(subject, runner, { input: 0, result: 0, wanted: 1 });
  await expect(carryOut(study, { signal: AbortSignal.abort(new Error("no")) })).rejects.toThrow("no");
  expect(runs()).toBe(0);
});
