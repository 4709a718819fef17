import fc from "fast-check";
import { HyperFormula } from "hyperformula";
import { describe, expect, it } from "vitest";
import { columnName, referencesOf, shiftFormula } from "../../src/notebook/references";
import { cutFormula, dropPageIn, renamePageIn } from "../../src/notebook/structure";

const letter = fc.integer({ min: 0, max: 7 }).map(columnName);
const line = fc.integer({ min: 1, max: 12 });
const mark = fc.constantFrom("", "$");
const cell = fc.tuple(mark, letter, mark, line).map((parts) => parts.join(""));
const block = fc.tuple(mark, letter, mark, line, mark, letter, mark, line).map(([a, b, c, d, e, f, g, h]) => {
  const [left, right] = [b, f].sort();
  const [top, bottom] = [d, h].sort((x, y) => x - y);
  return `SUM(${a}${left}${c}${top}:${e}${right}${g}${bottom})`;
});
const prefix = fc.constantFrom("", "", "Supply!", "'Side force'!");
const operand = fc.oneof(
  fc.tuple(prefix, cell).map((parts) => parts.join("")),
  fc.tuple(prefix, block).map(([page, sum]) => sum.replace("SUM(", `SUM(${page}`)),
  fc.constantFrom('"A1 is no reference"', "LOG10(100)", "1.5", 'LEN("it\'s B2")'),
);
const formula = fc.array(operand, { minLength: 1, maxLength: 4 }).map((parts) => `=${parts.join("+")}`);

const settings = { licenseKey: "gpl-v3", useArrayArithmetic: true } as const;
const sheets = ["Supply", "Side force"];
const cells = Array.from({ length: 14 }, (_, r) => Array.from({ length: 9 }, (_, c) => r * 10 + c));

/** The engine keeps the page before a lost reference, which means the same. */
const plain = (text: string | undefined) => text?.replace(/(?:'[^']+'|\w+)!#REF!/g, "#REF!");

/** The engine's own rewriting, as the outside check: formula on `home`, cut on `page`. */
function byEngine(text: string, home: number, page: number, axis: "row" | "column", at: number, count: number) {
  const hf = HyperFormula.buildFromSheets({ Supply: cells, "Side force": cells }, settings);
  // Far away from what is cut, so that the formula's own cell stays.
  const spot = { sheet: home, row: 60, col: 60 };
  hf.setCellContents({ sheet: home, row: 70, col: 70 }, 1);
  hf.setCellContents({ sheet: 1 - home, row: 70, col: 70 }, 1);
  hf.setCellContents(spot, text);
  const before = hf.getCellFormula(spot);
  if (axis === "row") count > 0 ? hf.addRows(page, [at, count]) : hf.removeRows(page, [at, -count]);
  else count > 0 ? hf.addColumns(page, [at, count]) : hf.removeColumns(page, [at, -count]);
  const moved = home === page ? { ...spot, [axis === "row" ? "row" : "col"]: 60 + count } : spot;
  const after = hf.getCellFormula(moved);
  hf.destroy();
  return { before, after };
}

describe("references in formulas", () => {
  it("follow rows and columns that come and go exactly as the engine's own addRows and removeRows would have it", () => {
    fc.assert(
      fc.property(
        formula,
        fc.nat(1),
        fc.nat(1),
        fc.constantFrom("row" as const, "column" as const),
        fc.integer({ min: 0, max: 8 }),
        fc.constantFrom(-3, -2, -1, 1, 2),
        (text, home, page, axis, at, count) => {
          const { before, after } = byEngine(text, home, page, axis, at, count);
          const ours = cutFormula(before ?? "", sheets[home] ?? "", sheets[page] ?? "", { axis, at, count });
          expect(ours).toBe(plain(after));
        },
      ),
      { numRuns: 400 },
    );
  }, 120_000);

  it("shift when copied exactly as the engine's own fill would have it", () => {
    fc.assert(
      fc.property(formula, fc.integer({ min: -4, max: 6 }), fc.integer({ min: -3, max: 5 }), (text, rows, columns) => {
        const hf = HyperFormula.buildFromSheets({ Supply: cells, "Side force": cells }, settings);
        const from = { sheet: 0, row: 20, col: 20 };
        const to = { sheet: 0, row: 20 + rows, col: 20 + columns };
        hf.setCellContents(from, text);
        const filled = hf.getFillRangeData({ start: from, end: from }, { start: to, end: to })[0]?.[0];
        // Both are read by the engine and printed again, so that only meaning is compared.
        hf.setCellContents(to, filled ?? null);
        hf.setCellContents(to, plain(hf.getCellFormula(to)) ?? null);
        const expected = hf.getCellFormula(to);
        hf.setCellContents(to, shiftFormula(text, rows, columns));
        const ours = hf.getCellFormula(to);
        hf.destroy();
        expect(ours).toBe(expected);
      }),
      { numRuns: 400 },
    );
  }, 120_000);

  it("leave all other characters as they were typed", () => {
    expect(shiftFormula('= sum( a1 , "A1" )+LOG10( B2 )', 1, 0)).toBe('= sum( A2 , "A1" )+LOG10( B3 )');
    expect(shiftFormula("=AWG.LEAST(B2)+B2B+TUNNEL.EDGE(C3)", 1, 1)).toBe("=AWG.LEAST(C3)+B2B+TUNNEL.EDGE(D4)");
  });

  it("are found with page, marks and blocks", () => {
    expect(
      referencesOf("='It''s a page'!$A$1:B2+Boat!C3+D:D+2:3").map((one) => [one.page, one.from.column, one.from.row]),
    ).toEqual([
      ["It's a page", 0, 0],
      ["Boat", 2, 2],
      [undefined, 3, undefined],
      [undefined, undefined, 1],
    ]);
  });

  it("follow a page's new name, quoted where it needs quotes", () => {
    expect(renamePageIn("=Supply!A1+'Side force'!B2+A1", "supply", "Power supply")).toBe(
      "='Power supply'!A1+'Side force'!B2+A1",
    );
    expect(renamePageIn("='Side force'!B2", "Side force", "Push")).toBe("=Push!B2");
  });

  it("are lost when their page goes", () => {
    expect(dropPageIn("=Supply!A1+SUM('Side force'!B2:C3)", "Side force")).toBe("=Supply!A1+SUM(#REF!)");
  });
});
