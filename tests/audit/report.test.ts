import { describe, expect, it } from "vitest";
import { Reporter } from "../../src/audit/report";
import { review } from "../../src/audit/review";
import { setCells } from "../../src/notebook/edit-cells";
import { firstOption, optionsOf } from "../../src/notebook/model";
import { at, sample } from "../notebook/sample";

describe("a report of a notebook", () => {
  it("that follows an edit says the same as one made anew", () => {
    const before = sample();
    const after = setCells(before, [{ ...at(before, "Supply", "F7"), text: "=CONDUCTOR.DROP(F3,F4,F5,50)*1.07" }]);
    const follower = new Reporter();
    const old = follower.report(before, undefined);
    const now = follower.report(after, undefined);
    expect(now).toEqual(new Reporter().report(after, undefined));
    const typed = ({ audit }: typeof now) =>
      audit.open.filter(
        ({ rule, cell, message }) => rule === "typed-number" && cell === "F7" && message.includes("1.07"),
      );
    expect([typed(old).length, typed(now).length]).toEqual([0, 1]);
  });

  it("counts the filled cells under ticks that stand, each once, and none under a stale one", () => {
    const notebook = sample();
    const options = optionsOf(notebook).length;
    const ticked = review(review(notebook, "Supply.drop", "A", "2026-11-26"), "Supply.drop@Cruiser", "A", "2026-11-26");
    const { covered, reviews } = new Reporter().report(ticked, undefined);
    expect(reviews.map(({ stale }) => stale)).toEqual([false, false]);
    expect(covered.ticked).toBe(options);
    expect(covered.of).toBeGreaterThan(options);
    const input = { ...at(ticked, "Supply", "F4"), text: "99" };
    expect(input.column).toBe(firstOption + 1);
    const changed = new Reporter().report(setCells(ticked, [input]), undefined);
    expect(changed.reviews.every(({ stale }) => stale)).toBe(true);
    expect(changed.covered.ticked).toBe(0);
  });
});
