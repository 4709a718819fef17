import { describe, expect, it } from "vitest";
import { setCells } from "../../src/notebook/edit-cells";
import { addPage, removePage } from "../../src/notebook/edit-pages";
import { LiveNotebook } from "../../src/notebook/live";
import { type Notebook, pageByName } from "../../src/notebook/model";
import { beginFunction } from "../../src/notebook/own/add-function";
import { lossWithPage } from "../../src/notebook/readers-of-page";
import { at, idOf, sample } from "./sample";

/** The sample with a tick, an accepted finding and a note on Supply, and a tick on another page. */
function noted(): Notebook {
  const notebook = sample();
  const signed = { who: "A. Reader", when: "2026-11-25" };
  return {
    ...notebook,
    about: {
      ...notebook.about,
      reviews: {
        "Supply.drop@Cruiser": { ...signed, hash: "1" },
        "Supply.*": { ...signed, hash: "2" },
        "Side force.share": { ...signed, hash: "3" },
      },
      accepted: [{ ...signed, rule: "units", at: "Supply.drop", message: "so", reason: "rule of thumb" }],
    },
  };
}

describe("a page that is to go", () => {
  it("says how many formulas on which pages read it, and what is noted of it", () => {
    const notebook = noted();
    expect(lossWithPage(notebook, idOf(notebook, "Supply"))).toEqual({
      reads: { formulas: 4, pages: ["Side force", "Free"] },
      calls: { formulas: 0, pages: [] },
      hasNote: true,
      ticks: 2,
      accepted: 1,
    });
    expect(lossWithPage(notebook, idOf(notebook, "Free")).reads).toEqual({ formulas: 0, pages: [] });
  });

  it("leaves #REF! where it was read, takes what was noted of it along, and comes back with undo", () => {
    const live = new LiveNotebook(noted());
    const before = live.notebook;
    live.apply("page Supply removed", (notebook) => removePage(notebook, idOf(notebook, "Supply")));
    expect(pageByName(live.notebook, "Side force")?.rows[2]?.[4]).toBe("=#REF!");
    const { notes, rows, reviews, accepted } = live.notebook.about;
    expect({ notes, rows, accepted }).toEqual({ notes: {}, rows: {}, accepted: [] });
    expect(Object.keys(reviews ?? {})).toEqual(["Side force.share"]);
    // A page of the same name begins without them.
    expect(lossWithPage(addPage(live.notebook, "Supply"), idOf(live.notebook, "Supply")).ticks).toBe(0);
    live.undo();
    expect(live.notebook).toBe(before);
    expect(live.value(at(before, "Side force", "E3"))).toMatchObject({ kind: "number" });
    live.close();
  });

  it("names the formulas that call its functions, texts in quotation marks left out", () => {
    const begun = beginFunction(sample(), "YARD.CUT");
    const own = begun.notebook.pages.at(-1);
    const called = setCells(begun.notebook, [
      { ...at(begun.notebook, "Free", "A3"), text: "=2*yard.cut(10,0.1)" },
      { ...at(begun.notebook, "Free", "B3"), text: '="YARD.CUT("&B1' },
      { ...at(begun.notebook, "Side force", "E2"), text: "=BOAT.YARD.CUT(1)" },
    ]);
    expect(lossWithPage(called, own?.id ?? "")).toMatchObject({
      reads: { formulas: 0 },
      calls: { formulas: 1, pages: ["Free"] },
    });
  });
});
