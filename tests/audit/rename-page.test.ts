import { describe, expect, it } from "vitest";
import { accept } from "../../src/audit/accept";
import { auditNotebook } from "../../src/audit/audit";
import { renameReviewed } from "../../src/audit/rename-page";
import { review, reviewsOf } from "../../src/audit/review";
import { isFormula } from "../../src/engine/content";
import { setCells } from "../../src/notebook/edit-cells";
import { renamePage } from "../../src/notebook/edit-pages";
import { LiveNotebook } from "../../src/notebook/live";
import { firstOption, isOptionPage, type Notebook } from "../../src/notebook/model";
import { at, idOf, sample } from "../notebook/sample";
import { worked, workedFolders } from "../notebook/worked";

const day = "2026-11-25";

function audited(notebook: Notebook) {
  const live = new LiveNotebook(notebook);
  const found = auditNotebook(live);
  live.close();
  return found;
}

describe("a page that gets another name", () => {
  it("keeps its ticks standing and those of what reads it; a stale one stays stale", () => {
    const ticked = ["Supply.drop@Cruiser", "Supply.*", "Side force.share", "Free!B2"].reduce(
      (notebook, place) => review(notebook, place, "R. Iver", day),
      sample(),
    );
    const stale = setCells(ticked, [{ ...at(ticked, "Side force", "E2"), text: "501" }]);
    expect(reviewsOf(stale).map((one) => one.stale)).toEqual([false, false, true, false]);
    const after = renameReviewed(stale, idOf(stale, "Supply"), "Battery bank");
    expect(reviewsOf(after).map(({ place, stale: isStale, who }) => [place, isStale, who])).toEqual([
      ["Battery bank.drop@Cruiser", false, "R. Iver"],
      ["Battery bank.*", false, "R. Iver"],
      ["Side force.share", true, "R. Iver"],
      ["Free!B2", false, "R. Iver"],
    ]);
    const changed = setCells(after, [{ ...at(after, "Battery bank", "F3"), text: "311" }]);
    expect(reviewsOf(changed)[0]?.stale).toBe(true);
  });

  it("is as it was where nothing is ticked or the name is its own", () => {
    const notebook = sample();
    const id = idOf(notebook, "Supply");
    expect(renameReviewed(notebook, id, "Bank").about).toEqual(renamePage(notebook, id, "Bank").about);
    const ticked = review(notebook, "Supply.*", "R. Iver", day);
    expect(renameReviewed(ticked, id, "Supply")).toBe(ticked);
  });

  it.each([...workedFolders, "sample"])("opens no accepted finding again: %s", { timeout: 120_000 }, (folder) => {
    const start = folder === "sample" ? seeded() : damaged(worked(folder));
    const { open } = audited(start);
    expect(open.length).toBeGreaterThan(5);
    const accepted = accept(start, open, "read", "R. Iver", day);
    for (const { name } of start.pages.slice(0, 6)) {
      const after = renameReviewed(accepted, idOf(accepted, name), `The ${name.toLowerCase()}, again`);
      expect(audited(after).open, name).toEqual([]);
    }
  });
});

/** A notebook in which every option page has a result typed over and an input left blank. */
const damaged = (notebook: Notebook): Notebook =>
  notebook.pages.filter(isOptionPage).reduce((result, page) => {
    const cell = (test: (text: string) => boolean, text: string) => {
      const row = page.rows.findIndex((cells, i) => i > 0 && test(cells[firstOption] ?? ""));
      return row < 0 ? [] : [{ page: page.id, row, column: firstOption, text }];
    };
    return setCells(result, [...cell(isFormula, "1234"), ...cell((text) => /^\d/.test(text), "")]);
  }, notebook);

/** The sample with mistakes whose findings name cells and rows of other pages. */
function seeded(): Notebook {
  const start = sample();
  const type = (page: string, cell: string, text: string) => ({ ...at(start, page, cell), text });
  return setCells(start, [
    type("Supply", "F7", "1.2"),
    type("Supply", "E4", "17,0"),
    type("Supply", "C6", "mV"),
    type("Side force", "G3", "=Supply!G6+Supply!G20"),
    type("Side force", "F4", "=IFERROR(F2/Supply!F5,0)"),
    type("Free", "A1", "=Supply!E7+'Side force'!E9"),
    type("Free", "A3", "=1/0+Supply!E4"),
  ]);
}
