import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parsePage, printPage } from "../../src/notebook/page-csv";

const cell = fc.oneof(
  fc.string({ unit: "grapheme" }),
  fc.constantFrom(
    "",
    '"',
    '""',
    ",",
    "\n",
    "\r\n",
    "\r",
    " a ",
    "=SUM(A1:B2)",
    "007",
    "1.50",
    "a,b",
    'say "no"',
    "\uFEFFx",
  ),
);
const table = fc
  .integer({ min: 1, max: 6 })
  .chain((width) => fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 8 }));

describe("a page's file", () => {
  it("keeps every cell through saving and loading, and saving again gives the same bytes", () => {
    fc.assert(
      fc.property(table, (rows) => {
        const text = printPage(rows);
        const read = parsePage("page.csv", text);
        expect(read).toEqual(rows);
        expect(printPage(read)).toBe(text);
      }),
      { numRuns: 2000 },
    );
  });

  it("is written with commas, line feeds, quotes only where needed and a line end at the end", () => {
    expect(
      printPage([
        ["a", "b c", "1,5"],
        ["=IF(A1,1,2)", "", 'x"y'],
      ]),
    ).toBe('a,b c,"1,5"\n"=IF(A1,1,2)",,"x""y"\n');
  });

  it("reads CRLF files, files with a byte order mark and blank lines", () => {
    expect(parsePage("p.csv", '\uFEFFa,b\r\n"1\r\n2",x\r\n\r\n')).toEqual([
      ["a", "b"],
      ["1\r\n2", "x"],
      ["", ""],
    ]);
  });

  it("takes a line end inside the first quoted cell for a part of that cell", () => {
    expect(parsePage("p.csv", '"a\r\nb",c\nd,e\n')).toEqual([
      ["a\r\nb", "c"],
      ["d", "e"],
    ]);
  });

  it("refuses ragged rows with file, row and column", () => {
    expect(() => parsePage("supply.csv", "a,b,c\n1,2\n")).toThrow(
      "supply.csv, row 2, column 3: the row has 2 cells, the first row has 3; make them equal.",
    );
    expect(() => parsePage("supply.csv", "a,b\n1,2,3\n")).toThrow("supply.csv, row 2, column 3");
  });

  it("refuses a quotation mark that is not closed, with file and row", () => {
    expect(() => parsePage("supply.csv", 'a,b\n1,"open\n')).toThrow("supply.csv, row 2: a quotation mark");
  });
});
