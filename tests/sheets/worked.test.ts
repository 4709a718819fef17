import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { isFormula, plainNumberOf } from "../../src/engine/content";
import { catalogue } from "../../src/functions";
import { writeNotebook } from "../../src/notebook/files";
import { firstOption, isOptionPage, lead, pageByName } from "../../src/notebook/model";
import { printPage } from "../../src/notebook/page-csv";
import { exampleFormula, proofRows } from "../../src/notebook/proof-page";
import { rowKind } from "../../src/notebook/rows";
import { tablesRows } from "../../src/notebook/tables-page";
import { isUnitText } from "../../src/units/names";
import { folderPath, openWorked, readWorked, workedFolders } from "./worked";

describe.each(workedFolders)("the worked notebook %s", (folder) => {
  const live = openWorked(folder);
  const { notebook } = live;
  const rows = notebook.pages.filter(isOptionPage).flatMap((page) =>
    page.rows.map((cells, row) => ({
      page,
      row,
      cells,
      kind: rowKind(page, row),
      name: `${page.name} ${row + 1} ${cells[lead.key]}`,
    })),
  );
  const filled = rows.filter(({ kind }) => kind === "input" || kind === "result" || kind === "check");

  it("is saved byte for byte as it lies in its folder", () => {
    for (const [file, text] of writeNotebook(notebook)) {
      expect(text, file).toBe(readFileSync(join(folderPath(folder), file), "utf8"));
    }
  });

  it("has its pages in the style in which the program writes them", () => {
    for (const page of notebook.pages) expect(printPage(page.rows), page.file).toBe(page.source?.text);
  });

  it("calculates without a single error", () => {
    const errors = notebook.pages.flatMap((page) =>
      page.rows.flatMap((cells, row) =>
        cells.flatMap((_, column) => {
          const value = live.value({ page: page.id, row, column });
          return value.kind === "error"
            ? [`${page.name} ${row + 1}:${column + 1} ${value.code} ${value.sentence}`]
            : [];
        }),
      ),
    );
    expect(errors).toEqual([]);
  });

  it("has a key, a known unit and a basis on every row that holds a number", () => {
    const bare = filled.flatMap(({ cells, name, page, row }) => {
      const unit = cells[lead.unit] ?? "";
      const numeric = cells.some(
        (_, column) => column >= firstOption && live.value({ page: page.id, row, column }).kind === "number",
      );
      const faults = [
        cells[lead.key] === "" && "no key",
        cells[lead.basis] === "" && "no basis",
        numeric && unit === "" && "no unit",
        unit !== "" && !isUnitText(unit) && `unit ${unit} is not known`,
      ];
      return faults.filter(Boolean).map((fault) => `${name}: ${fault}`);
    });
    expect(bare).toEqual([]);
  });

  it("has every result calculated in every option, none typed over by a number", () => {
    const typed = filled
      .filter(({ kind }) => kind !== "input")
      .flatMap(({ cells, name }) =>
        cells.slice(firstOption).some((text) => plainNumberOf(text) !== undefined) ? [name] : [],
      );
    expect(typed).toEqual([]);
  });

  it("has the same kind of cell in every option of a row: all formulas or none, unless an option is left empty", () => {
    const mixed = filled.filter(({ cells }) => {
      const texts = cells.slice(firstOption).filter((text) => text !== "");
      return texts.some(isFormula) && !texts.every(isFormula);
    });
    expect(mixed.map(({ name }) => name)).toEqual([]);
  });

  it("notes plausible limits or choices for every number that is typed in, and holds to them", () => {
    const faults = filled
      .filter(({ kind }) => kind === "input")
      .flatMap(({ cells, name, page }) => {
        const entry = notebook.about.rows?.[`${page.name}.${cells[lead.key]}`];
        const numbers = cells.slice(firstOption).flatMap((text) => plainNumberOf(text) ?? []);
        if (numbers.length === 0) return [];
        if (!entry?.choices && (entry?.low === undefined || entry.high === undefined)) return [`${name}: no limits`];
        const outside = numbers.filter((n) => n < (entry.low ?? n) || n > (entry.high ?? n));
        return outside.map((n) => `${name}: ${n} is outside its own plausible limits`);
      });
    expect(faults).toEqual([]);
  });

  it("has a note on every page", () => {
    const without = notebook.pages.filter((page) => !notebook.about.notes?.[page.name]);
    expect(without.map(({ name }) => name)).toEqual([]);
  });

  it("has checks on Compare that hold or fall short as numbers in every option", () => {
    const compare = rows.filter(({ page, kind }) => page.name === "Compare" && kind === "check");
    expect(compare.length).toBeGreaterThan(5);
    for (const { page, row, cells, name } of compare) {
      for (let column = firstOption; column < cells.length; column++) {
        expect(live.value({ page: page.id, row, column }).kind, name).toBe("number");
      }
    }
  });

  it("has Proof and Tables as the functions give them (npm run -s athwart -- proof writes them anew)", () => {
    const fresh = { Proof: proofRows(catalogue), Tables: tablesRows(catalogue) };
    for (const [name, expected] of Object.entries(fresh)) {
      const page = pageByName(notebook, name);
      if (page) expect(printPage(page.rows)).toBe(printPage(expected));
    }
  });
});

describe("Proof", () => {
  const live = openWorked("three-hulls");
  const proof = pageByName(live.notebook, "Proof");
  const lines = proof?.rows.slice(2) ?? [];

  it("has a live line with source and evidence for every example of every function", () => {
    const formulas = new Set(lines.map((cells) => cells[2]));
    for (const definition of catalogue) {
      for (const example of definition.examples) expect(formulas).toContain(exampleFormula(definition, example.given));
    }
    for (const cells of lines) {
      expect(["published", "identity", "common practice", "memory"]).toContain(cells[6]);
      expect(cells[7]?.length).toBeGreaterThan(5);
    }
  });

  it("agrees on every line, and says so on top", () => {
    const verdict = (row: number) => live.value({ page: proof?.id ?? "", row, column: 5 });
    lines.forEach((cells, i) => {
      expect(verdict(i + 2), cells.join(" | ")).toEqual({ kind: "text", text: "agrees" });
    });
    expect(verdict(1)).toEqual({ kind: "text", text: `${lines.length} of ${lines.length} agree` });
  });

  it("differs when a function does not give what its source prints", () => {
    const notebook = readWorked("three-hulls");
    const page = pageByName(notebook, "Proof");
    const rows = page?.rows.map((cells, row) => (row === 2 ? cells.with(3, "12345") : cells)) ?? [];
    const spoiled = openWorked("three-hulls");
    spoiled.apply("spoil", (one) => ({
      ...one,
      pages: one.pages.map((p) => (p.name === "Proof" ? { ...p, rows } : p)),
    }));
    const id = pageByName(spoiled.notebook, "Proof")?.id ?? "";
    expect(spoiled.value({ page: id, row: 2, column: 5 })).toEqual({ kind: "text", text: "differs" });
    expect(spoiled.value({ page: id, row: 1, column: 5 })).toEqual({
      kind: "text",
      text: `${lines.length - 1} of ${lines.length} agree`,
    });
  });
});
