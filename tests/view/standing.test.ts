import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { setCells } from "../../src/notebook/edit-cells";
import { renameOption } from "../../src/notebook/edit-options";
import { type Change, LiveNotebook } from "../../src/notebook/live";
import { firstOption, isOptionPage, optionsOf } from "../../src/notebook/model";
import { Refusal } from "../../src/notebook/refusal";
import { newsOf, type Standing, standingAfter, standingOf } from "../../src/view/standing";
import { worked } from "../notebook/worked";

/** Everything that the screen shows of a standing. */
const words = (standing: Standing) =>
  [...standing].map(([page, options]) => ({
    page,
    options: options.map(({ option, checks, short, open }) => ({
      option,
      checks: checks.map(({ row, column, quantity, outcome }) => ({ row, column, quantity, outcome })),
      short: short.length,
      open: open.length,
    })),
  }));

describe("how the options stand after a change", () => {
  it("is the same as judged from the beginning, for 60 random edits, undos among them", { timeout: 60_000 }, () => {
    const live = new LiveNotebook(worked("sheets/three-hulls"));
    const pages = live.notebook.pages.filter(isOptionPage);
    let standing = standingOf(live);
    let turned = 0;
    const follow = (change: Change) => {
      const after = standingAfter(live, standing, change);
      const whole = standingOf(live);
      expect(words(after)).toEqual(words(whole));
      expect(newsOf(standing, after)).toEqual(newsOf(standing, whole));
      turned += newsOf(standing, after).length;
      standing = after;
    };
    live.subscribe(follow);
    const edit = fc.record({
      page: fc.nat(pages.length - 1),
      row: fc.nat(200),
      column: fc.nat(optionsOf(live.notebook).length - 1),
      text: fc.constantFrom("", "0", "1", "7", "1000", "=1/0", "word", "=E3"),
      back: fc.nat(3),
    });
    fc.assert(
      fc.property(edit, ({ page, row, column, text, back }) => {
        const { id, rows } = pages[page] ?? { id: "", rows: [] };
        if (back === 0) live.undo();
        const at = { page: id, row: 1 + (row % (rows.length - 1)), column: firstOption + column };
        try {
          live.apply("type", (notebook) => setCells(notebook, [{ ...at, text }]));
        } catch (problem) {
          // A row with a list takes nothing else; then nothing has changed.
          if (!(problem instanceof Refusal)) throw problem;
        }
      }),
      { numRuns: 60, seed: 11 },
    );
    expect(turned, "checks that turned").toBeGreaterThan(10);
    live.close();
  });

  it("has an option by the name that it was given, with the same checks, and by the old one after undo", () => {
    const live = new LiveNotebook(worked("sheets/three-hulls"));
    const first = standingOf(live);
    let standing: Standing = first;
    live.subscribe((change) => {
      standing = standingAfter(live, standing, change);
    });
    live.apply("option renamed", (notebook) => renameOption(notebook, "Pilot", "Ferry"));
    const named = words(first).map(({ page, options }) => ({
      page,
      options: options.map((one) => ({ ...one, option: one.option === "Pilot" ? "Ferry" : one.option })),
    }));
    expect(words(standing)).toEqual(named);
    live.undo();
    expect(words(standing)).toEqual(words(first));
    live.close();
  });
});
