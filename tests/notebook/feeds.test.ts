import { describe, expect, it } from "vitest";
import { type Parsed, partsOf } from "../../src/engine/parsed";
import { cellName } from "../../src/notebook/cell-name";
import { setCells } from "../../src/notebook/edit-cells";
import { feedsOf } from "../../src/notebook/feeds";
import { cellsIn } from "../../src/notebook/formula-words";
import { LiveNotebook } from "../../src/notebook/live";
import type { Notebook, Position } from "../../src/notebook/model";
import { at, sample } from "./sample";
import { formulaCells, worked, workedFolders } from "./worked";

const names = (notebook: Notebook, cells: readonly Position[]) => cells.map((cell) => cellName(notebook, cell)?.cell);

/** The cells of a formula as the engine reads it. */
function read(notebook: Notebook, parsed: Parsed): Position[] {
  if (parsed.kind === "reference") return cellsIn(notebook, parsed.at, parsed.at);
  if (parsed.kind === "range") return cellsIn(notebook, parsed.from, parsed.to);
  return partsOf(parsed).flatMap((part) => read(notebook, part));
}

describe("what feeds a cell and what it feeds", () => {
  it("follows references over pages, ranges expanded", () => {
    const notebook = sample();
    const feeds = feedsOf(notebook);
    expect(names(notebook, feeds.feeding(at(notebook, "Free", "B2")))).toEqual(["Supply!E3", "Supply!F3", "Supply!G3"]);
    expect(names(notebook, feeds.feeding(at(notebook, "Side force", "F3")))).toEqual(["Supply!F7"]);
    expect(names(notebook, feeds.fedBy(at(notebook, "Supply", "E7")))).toEqual([
      "Supply!E8",
      "Supply!E9",
      "Supply!F9",
      "Supply!G9",
      "'Side force'!E3",
    ]);
    expect(feeds.feeding(at(notebook, "Supply", "E3"))).toEqual([]);
  });

  it("ends whole columns and rows where the page ends, and knows no cells of a page that is gone", () => {
    const notebook = sample();
    const free = at(notebook, "Free", "A3");
    const edited = setCells(notebook, [{ ...free, text: "=SUM(Supply!F:F)+SUM(Supply!3:3)+Gone!A1" }]);
    expect(feedsOf(edited).feeding(free)).toHaveLength(9 + 7 - 1);
  });

  it("follows a formula that is changed, after inputs that leave all readers as they were", () => {
    const notebook = sample();
    const [input, formula] = [at(notebook, "Supply", "E3"), at(notebook, "Free", "A3")];
    const readers = (one: Notebook) => names(one, feedsOf(one).fedBy(input));
    const before = readers(notebook);
    const typed = setCells(notebook, [{ ...input, text: "12345" }]);
    expect(readers(typed)).toEqual(before);
    const reading = setCells(typed, [{ ...formula, text: "=Supply!E3" }]);
    expect(readers(reading)).toEqual([...before, "Free!A3"]);
    expect(readers(setCells(reading, [{ ...formula, text: "7" }]))).toEqual(before);
    expect(readers(typed)).toEqual(before);
  });

  it.each(workedFolders)(
    "reads the same cells out of the text as the engine does: %s",
    { timeout: 60_000 },
    (folder) => {
      const live = new LiveNotebook(worked(folder));
      const feeds = feedsOf(live.notebook);
      const cells = formulaCells(live.notebook);
      expect(cells.length).toBeGreaterThan(20);
      const key = ({ page, row, column }: Position) => `${page} ${row} ${column}`;
      for (const cell of cells) {
        const parsed = live.parsed(cell) as Parsed;
        const engine = [...new Set(read(live.notebook, parsed).map(key))].sort();
        expect(feeds.feeding(cell).map(key).sort(), live.text(cell)).toEqual(engine);
        for (const fed of feeds.feeding(cell)) expect(feeds.fedBy(fed).map(key)).toContain(key(cell));
      }
      live.close();
    },
  );
});
