import { beforeAll, describe, expect, it } from "vitest";
import { auditNotebook } from "../../src/audit/audit";
import { LiveNotebook } from "../../src/notebook/live";
import { seeded } from "../formula/random-expression";
import { formulaCells, worked, workedFolders } from "../notebook/worked";
import { type Judged, judge } from "./faults/judge";
import { seededFaults } from "./faults/seeded-faults";
import { judgedWords, tallyOf, unseenReasons } from "./faults/tally";

/** A fixed sample; `npm run bench faults` makes more than a thousand and prints recall and precision kind by kind. */
const each = 2;

const kinds = [
  "reference replaced by its number",
  "range shifted",
  "range shortened",
  "thousand dropped or added",
  "arguments swapped",
  "wrong row",
  "wrong sheet's row",
  "sign",
  "times for divided",
  "error hidden",
  "result typed over",
  "input left blank",
  "number typed in the other unit",
  "unit of a row slipped",
  "number typed as text",
  "review gone stale",
];

describe("the audit of the worked notebooks", () => {
  it.each(workedFolders)("%s as it is: no error, at most one finding for 200 formulas", (folder) => {
    const live = new LiveNotebook(worked(folder));
    const { open, accepted, formulas, note } = auditNotebook(live);
    expect(note).toBeUndefined();
    expect(formulas).toBe(formulaCells(live.notebook).length);
    expect(open.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(open.length + accepted.length).toBeLessThanOrEqual(formulas / 200);
    live.close();
  });
});

describe("the audit of the worked notebooks with single mistakes", () => {
  let judged: readonly Judged[] = [];

  beforeAll(() => {
    judged = workedFolders.flatMap((folder) => {
      const shipped = worked(folder);
      const live = new LiveNotebook(shipped);
      const faults = seededFaults(seeded(7), live, each);
      live.close();
      return judge(shipped, faults);
    });
  }, 120_000);

  it("are made of every kind, in one option and in all of them", () => {
    expect(judged.length).toBeGreaterThan(100);
    expect(new Set(judged.map(({ fault }) => fault.kind))).toEqual(new Set(kinds));
    expect(new Set(judged.map(({ fault }) => fault.spread))).toEqual(new Set(["one option", "all options"]));
  });

  it("finds at least 95 of 100 of those that can be told in principle", () => {
    const all = tallyOf(judged).at(-1);
    const missed = judged.filter((one) => "seenBy" in one.evidence && !one.found).map(judgedWords);
    expect(all?.evident).toBeGreaterThan(judged.length * 0.75);
    expect((all?.found ?? 0) / (all?.evident ?? 1), missed.join("\n")).toBeGreaterThanOrEqual(0.95);
  });

  it("says at most one thing in 200 of rows that have nothing to do with the mistake", () => {
    const all = tallyOf(judged).at(-1);
    expect(all?.findings).toBeGreaterThan(100);
    expect(all?.elsewhere).toBeLessThanOrEqual((all?.findings ?? 0) / 200);
  });

  it("tells every mistake in a formula when it knows the notebook as it was shipped", () => {
    const inFormulas = judged.filter(({ fault }) => fault.cells.some(({ text }) => text.startsWith("=")));
    const missed = inFormulas.filter((one) => !one.found && !one.foundAsShipped).map(judgedWords);
    expect(inFormulas.length).toBeGreaterThan(50);
    expect(missed).toEqual([]);
  });

  it("lists those that nothing can tell, with the reason", () => {
    const reasons = [...unseenReasons(judged).keys()];
    expect(reasons).toContain("sign: a quantity and its opposite have one unit");
    expect(reasons).toContain("result typed over: a row without a formula reads as a row of inputs");
  });
});
