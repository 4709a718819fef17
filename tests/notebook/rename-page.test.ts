import { describe, expect, it } from "vitest";
import { setCells } from "../../src/notebook/edit-cells";
import { addOption } from "../../src/notebook/edit-options";
import { addPage, renamePage } from "../../src/notebook/edit-pages";
import { readNotebook, writeNotebook } from "../../src/notebook/files";
import { LiveNotebook } from "../../src/notebook/live";
import { type Notebook, pageByName } from "../../src/notebook/model";
import { beginFunction } from "../../src/notebook/own/add-function";
import { at, idOf, sample } from "./sample";
import { formulaCells, worked, workedFolders } from "./worked";

const rename = (from: string, to: string) => (notebook: Notebook) => renamePage(notebook, idOf(notebook, from), to);
const text = (notebook: Notebook, page: string, cell: string): string => {
  const { row, column } = at(notebook, page, cell);
  return pageByName(notebook, page)?.rows[row]?.[column] ?? "";
};

/** The sample with everything that can be noted of two of its pages. */
function noted(): Notebook {
  const notebook = sample();
  const signed = { who: "A. Reader", when: "2026-11-25" };
  return {
    ...notebook,
    about: {
      ...notebook.about,
      rows: { ...notebook.about.rows, "Side force.push": { digits: 1 } },
      reviews: {
        "Supply.drop@Cruiser": { ...signed, hash: "1" },
        "Supply.*": { ...signed, hash: "2" },
        "Side force.share": { ...signed, hash: "3" },
        "'Side force'!A2": { ...signed, hash: "4" },
        "Free!B3": { ...signed, hash: "5" },
      },
      accepted: [
        {
          ...signed,
          rule: "units",
          at: "Supply.drop",
          message: "Supply!E7 and Supply.run, not SUPPLY.RUN(1)",
          reason: "so",
        },
        { ...signed, rule: "differs", at: "Side force!A2", message: "reads 'Side force'!$E$2", reason: "so" },
      ],
      settings: {
        spread: { seed: 3, vary: { "Supply.run": "10,11,12", "Side force.push": "1,2,3", "*.drop": "±5%" } },
      },
    },
  };
}

describe("a page that gets another name", () => {
  it("keeps its file, and takes along what reads it and what is noted of it", () => {
    const notebook = rename("Supply", "Battery bank")(noted());
    expect(notebook.pages[0]).toMatchObject({ name: "Battery bank", file: "supply.csv" });
    expect(text(notebook, "Side force", "E3")).toBe("='Battery bank'!E7");
    expect(text(notebook, "Free", "B2")).toBe("=SUM('Battery bank'!E3:G3)");
    const { pages, rows, notes, reviews, accepted, settings } = notebook.about;
    expect(pages[0]).toEqual({ name: "Battery bank", file: "supply.csv", colour: "kept" });
    expect(Object.keys(rows ?? {})).toEqual(["Battery bank.area", "Side force.push"]);
    expect(notes).toEqual({ "Battery bank": "A note." });
    expect(Object.keys(reviews ?? {})).toEqual([
      "Battery bank.drop@Cruiser",
      "Battery bank.*",
      "Side force.share",
      "'Side force'!A2",
      "Free!B3",
    ]);
    expect(accepted?.[0]).toMatchObject({
      at: "Battery bank.drop",
      message: "'Battery bank'!E7 and Battery bank.run, not SUPPLY.RUN(1)",
    });
    const { vary } = (settings?.spread ?? {}) as { readonly vary?: object };
    expect(Object.keys(vary ?? {})).toEqual(["Battery bank.run", "Side force.push", "*.drop"]);
  });

  it("loses its quotation marks with its spaces, in every kind of reference", () => {
    const start = noted();
    const free = (cell: string, formula: string) => ({ ...at(start, "Free", cell), text: formula });
    const before = setCells(start, [
      free("A1", "='Side force'!D4&\"'Side force'!D4\""),
      free("A2", "=SUM('side force'!$E$2:G$2)+ROWS('Side force'!E:F)"),
    ]);
    const after = rename("Side force", "Wind")(before);
    expect(text(after, "Free", "A1")).toBe("=Wind!D4&\"'Side force'!D4\"");
    expect(text(after, "Free", "A2")).toBe("=SUM(Wind!$E$2:G$2)+ROWS(Wind!E:F)");
    expect(text(after, "Free", "B1")).toBe("=Wind!E2");
    expect(Object.keys(after.about.reviews ?? {})).toContain("Wind!A2");
    expect(after.about.accepted?.[1]).toMatchObject({ at: "Wind!A2", message: "reads Wind!$E$2" });
  });

  it.each(["Ισχύς", "Питание", "電源", "Über", "2nd", "R1C1", "A1", "TRUE", "a-b, (old)", "=1"])(
    "calculates on under %s",
    (name) => {
      const live = new LiveNotebook(sample());
      const cell = at(live.notebook, "Side force", "E3");
      const before = live.value(cell);
      live.apply("rename", rename("Supply", name));
      expect(before).toMatchObject({ kind: "number" });
      expect(live.value(cell)).toEqual(before);
      expect(readNotebook(writeNotebook(live.notebook)).pages[0]?.name).toBe(name);
      live.close();
    },
  );

  it.each([
    ["side FORCE", 'There is already a page "Side force"; give another name.'],
    ["", 'Page name "": it must not be empty'],
    ["a.b", 'Page name "a.b": it must not be empty'],
    ["a!b", "or hold any of"],
    ["it's", "or hold any of"],
    ["a@b", "or hold any of"],
    ["x".repeat(300), "allowed"],
  ])("is refused the name %j", (name, sentence) => {
    const notebook = sample();
    expect(() => rename("Supply", name)(notebook)).toThrow(sentence);
  });

  it("may have its own name in other letters, and its own name is no change", () => {
    const notebook = noted();
    const after = rename("Supply", "SUPPLY")(notebook);
    expect(text(after, "Side force", "E3")).toBe("=SUPPLY!E7");
    expect(Object.keys(after.about.reviews ?? {})[0]).toBe("SUPPLY.drop@Cruiser");
    expect(rename("Supply", "Supply")(notebook)).toBe(notebook);
  });

  it("does not take over what a page that is gone left under the name", () => {
    const start = noted();
    const left = {
      ...start,
      about: {
        ...start.about,
        notes: { Bank: "Of old.", ...start.about.notes },
        rows: { ...start.about.rows, "Bank.area": { digits: 5 } },
      },
    };
    const { notes, rows } = rename("Supply", "Bank")(left).about;
    expect(notes).toEqual({ Bank: "A note." });
    expect(rows?.["Bank.area"]).toEqual(start.about.rows?.["Supply.area"]);
  });

  it("defines its functions under the other name as well", () => {
    const begun = beginFunction(sample(), "YARD.CUT").notebook;
    const live = new LiveNotebook(setCells(begun, [{ ...at(begun, "Free", "C1"), text: "=YARD.CUT(10,0.1)" }]));
    const before = live.value(at(live.notebook, "Free", "C1"));
    const own = live.notebook.pages.at(-1)?.name ?? "";
    live.apply("rename", rename(own, "Of the yard"));
    expect(before).toMatchObject({ kind: "number" });
    expect(live.value(at(live.notebook, "Free", "C1"))).toEqual(before);
    expect(live.find("YARD.CUT")?.ownOf).toBe("Of the yard");
    live.close();
  });

  it("stays a sheet of offsets", () => {
    const notebook = addPage(addPage(sample(), "Offsets Cruiser", "free"), "Offsets Ketch", "free");
    expect(() => rename("Offsets Cruiser", "Old offsets")(notebook)).toThrow(
      "Offsets Cruiser: cut lines are drawn from the page of this name; it may be called Offsets, or Offsets with the name of an option.",
    );
    expect(rename("Offsets Cruiser", "offsets pilot")(notebook).pages.at(-2)?.name).toBe("offsets pilot");
    // No option is called so: nothing is drawn from it.
    expect(rename("Offsets Ketch", "Ketch")(notebook).pages.at(-1)?.name).toBe("Ketch");
    expect(() => rename("Offsets Ketch", "Ketch")(addOption(notebook, "Ketch"))).toThrow("cut lines are drawn");
  });

  it.each(workedFolders)(
    "leaves every value of %s as it was, and undo gives back every byte",
    { timeout: 60_000 },
    (folder) => {
      const live = new LiveNotebook(worked(folder));
      const cells = formulaCells(live.notebook);
      const values = cells.map((cell) => live.value(cell));
      const files = writeNotebook(live.notebook);
      for (const [from, to] of [
        ["Supply", "Battery and cable"],
        ["Side force", "Wind"],
      ] as const) {
        live.apply(`page ${from} renamed`, rename(from, to));
      }
      expect(cells.map((cell) => live.value(cell))).toEqual(values);
      expect([...writeNotebook(live.notebook).values()].join("\n")).not.toMatch(/'Side force'!|\bSupply!/);
      live.undo();
      live.undo();
      expect(writeNotebook(live.notebook)).toEqual(files);
      live.redo();
      expect(readNotebook(writeNotebook(live.notebook)).pages.map(({ name }) => name)).toContain("Battery and cable");
      live.close();
    },
  );
});
