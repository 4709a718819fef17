import { describe, expect, it } from "vitest";
import { setCells } from "../../src/notebook/edit-cells";
import { movePage } from "../../src/notebook/edit-pages";
import { readNotebook, writeNotebook } from "../../src/notebook/files";
import { LiveNotebook } from "../../src/notebook/live";
import type { Notebook } from "../../src/notebook/model";
import { at, sample } from "./sample";
import { formulaCells, worked } from "./worked";

const names = ({ pages }: Notebook): readonly string[] => pages.map(({ name }) => name);
const move =
  (name: string, by: number) =>
  (notebook: Notebook): Notebook => {
    const from = names(notebook).indexOf(name);
    return movePage(notebook, notebook.pages[from]?.id ?? "", from + by);
  };

describe("a page that is moved in the order of the job", () => {
  it("keeps what notebook.json says of it, and its file's bytes", () => {
    const before = sample();
    const after = move("Supply", 1)(before);
    expect(names(after)).toEqual(["Side force", "Supply", "Free"]);
    expect(after.about.pages[1]).toEqual({ name: "Supply", file: "supply.csv", colour: "kept" });
    const [old, now] = [writeNotebook(before), writeNotebook(after)];
    expect([...now].filter(([file]) => file !== "notebook.json")).toEqual(
      expect.arrayContaining([...old].filter(([file]) => file !== "notebook.json")),
    );
    expect(names(readNotebook(now))).toEqual(["Side force", "Supply", "Free"]);
  });

  it("goes no further than the ends, and says so", () => {
    expect(() => move("Supply", -1)(sample())).toThrow("Supply is the first page already.");
    expect(() => move("Free", 1)(sample())).toThrow("Free is the last page already.");
    expect(names(move("Free", -2)(sample()))).toEqual(["Free", "Supply", "Side force"]);
    const notebook = sample();
    expect(move("Free", 0)(notebook)).toBe(notebook);
  });

  it("changes no value, and what is typed afterwards goes into its own page", { timeout: 60_000 }, () => {
    const live = new LiveNotebook(worked("sheets/three-hulls"));
    const cells = formulaCells(live.notebook);
    const values = cells.map((cell) => live.value(cell));
    const files = writeNotebook(live.notebook);
    live.apply("page moved", move("Supply", -1));
    live.apply("page moved", move("Boat", 2));
    expect(cells.map((cell) => live.value(cell))).toEqual(values);
    live.undo();
    live.undo();
    expect(cells.map((cell) => live.value(cell))).toEqual(values);
    expect(writeNotebook(live.notebook)).toEqual(files);
    live.close();

    const small = new LiveNotebook(sample());
    small.apply("page moved", move("Supply", 2));
    const typed = { ...at(small.notebook, "Side force", "E2"), text: "1000" };
    const share = small.value(at(small.notebook, "Side force", "E4"));
    small.apply("typed", (notebook) => setCells(notebook, [typed]));
    expect(share).toMatchObject({ kind: "number" });
    const doubled = { kind: "number", value: (share as { value: number }).value * 2 };
    expect(small.value(at(small.notebook, "Side force", "E4"))).toEqual(doubled);
    expect(small.value(at(small.notebook, "Free", "B1"))).toEqual({ kind: "number", value: 1000 });
    small.undo();
    small.undo();
    expect(small.value(at(small.notebook, "Side force", "E4"))).toEqual(share);
    small.close();
  });
});
