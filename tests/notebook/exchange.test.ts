import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { contentOf, isFormula } from "../../src/engine/content";
import { LiveNotebook } from "../../src/notebook/live";
import type { Notebook, Page } from "../../src/notebook/model";
import { importRows } from "../../src/notebook/table-cells";
import { encodings, readTable, separators } from "../../src/notebook/table-in";
import { exportRows, printTable, type TableForm } from "../../src/notebook/table-out";

/** How many tables go through; more on demand. */
const tables = Number(process.env.ATHWART_TABLES ?? 20_000);

const digits = fc.stringMatching(/^[+-]?\d{1,6}([.,]\d{0,4})?(e-?\d)?$/);
const numbers = fc.oneof(
  fc.integer().map(String),
  fc.double({ noNaN: true, noDefaultInfinity: true }).map(String),
  fc.double({ min: -1e6, max: 1e6, noNaN: true }).map((value) => value.toFixed(3)),
);
const awkward = fc.constantFrom(
  ...[
    "",
    " ",
    '"',
    '""',
    '"a',
    'a"b',
    ",",
    ";",
    "\t",
    "|",
    "a,b;c\td|e",
    "\n",
    "\r\n",
    "\r",
    "a\r\nb",
    "'",
    "''x",
    "'=x",
  ],
  ...[
    "007",
    "1,234",
    "1.234",
    "1,234,567",
    "1.234,5",
    "12,",
    ",5",
    " 5 ",
    "+5",
    "-",
    "5%",
    "2026-11-26",
    "1e5",
    "TRUE",
  ],
  ...[
    "'TRUE",
    "'5",
    "+a",
    "-a",
    "@a",
    "\ta",
    "\ra",
    "\uFEFFx",
    "\u202eabc",
    "#REF!",
    "##",
    "// a",
    "sep=;",
    "ID",
    "ä€",
  ],
  ...[
    "1234567890123456",
    "0.1",
    ".5",
    "5.",
    "-0",
    "1.5E3",
    "1,5e3",
    "NaN",
    "Infinity",
    "0x10",
    "１２",
    "＝1+1",
    "=",
    "a\u0085b",
  ],
);
const formulas = fc.constantFrom(
  "=1+1",
  '="a,b"',
  "=A1&B1",
  '=IF(TRUE,"x;y",2)',
  "=1/0",
  "=+",
  "=1,5",
  '="\n"',
  "=\t1",
);
const cell = fc.oneof(numbers, digits, awkward, fc.string({ unit: "grapheme", maxLength: 12 }));
const table = (cells: fc.Arbitrary<string>) =>
  fc
    .integer({ min: 1, max: 5 })
    .chain((width) =>
      fc.array(fc.array(cells, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 }),
    );
/** One table in five has formulas in it. */
const anyTable = fc.oneof(
  { arbitrary: table(cell), weight: 4 },
  { arbitrary: table(fc.oneof(formulas, cell)), weight: 1 },
);
const form = fc.record({
  holds: fc.constantFrom("typed", "values"),
  separator: fc.constantFrom(...separators),
  decimal: fc.constantFrom(".", ","),
  mark: fc.boolean(),
}) satisfies fc.Arbitrary<TableForm>;

const notebookOf = (rows: Page["rows"]): Notebook => ({
  about: { version: 1, title: "Any", pages: [{ name: "Any", file: "any.csv" }] },
  pages: [{ id: "any", name: "Any", file: "any.csv", rows }],
});

/** The bytes of a text; letters that an encoding does not have leave it to UTF-8. */
function encoded(text: string, encoding: (typeof encodings)[number]) {
  if (encoding === "utf-16le") return { encoding, bytes: new Uint8Array(Buffer.from(`\uFEFF${text}`, "utf16le")) };
  const isLatin = [...text].every((letter) => letter <= "\u007e" || (letter >= "\u00a0" && letter <= "\u00ff"));
  if (encoding === "windows-1252" && isLatin) return { encoding, bytes: new Uint8Array(Buffer.from(text, "latin1")) };
  return { encoding: "utf-8" as const, bytes: new Uint8Array(Buffer.from(text, "utf8")) };
}

type Calculated = Pick<LiveNotebook, "value">;

/** A table without formulas says its values itself; the engine, which takes its time to start, is for the others. */
function calculated(rows: Page["rows"]): Calculated & { readonly close: () => void } {
  if (rows.flat().some(isFormula)) return new LiveNotebook(notebookOf(rows));
  const value: Calculated["value"] = ({ row, column }) => {
    const content = contentOf(rows[row]?.[column] ?? "");
    return content.kind === "formula" ? { kind: "blank" } : content;
  };
  return { value, close: () => undefined };
}

/** What a cell says; empty text looks like a blank cell and is one in a file. */
function meaning(text: string): unknown {
  const content = contentOf(text);
  return content.kind === "text" && content.text === "" ? { kind: "blank" } : content;
}

/** What a cell shows, as what a cell without formulas must say to show it. */
function shown(live: Calculated, row: number, column: number): unknown {
  const value = live.value({ page: "any", row, column });
  if (value.kind === "error") return { kind: "text", text: value.code };
  if (value.kind === "text" && value.text === "") return { kind: "blank" };
  return value.kind === "number" ? { kind: "number", value: value.value + 0 } : value;
}

/** A text file cannot hold half a letter, and one with a zero in it is no table. */
const isPlain = (text: string): boolean => !text.includes("\u0000") && !/\p{Surrogate}/u.test(text);

describe("a table for another program", () => {
  it(`comes back without a difference: ${tables} random tables in random dialects and encodings`, () => {
    fc.assert(
      fc.property(anyTable, form, fc.constantFrom(...encodings), (rows, dialect, wanted) => {
        fc.pre(rows.flat().every(isPlain));
        const live = calculated(dialect.holds === "values" ? rows : []);
        const page = notebookOf(rows).pages[0] as Page;
        const out = printTable(exportRows(live, page, dialect), dialect);
        const { encoding, bytes } = encoded(out, wanted);
        const read = readTable("any.csv", bytes, { encoding, separator: dialect.separator });
        const back = importRows(read, { decimal: dialect.decimal, formulas: true, doubtful: undefined });
        expect(back.map((row) => row.map(meaning))).toEqual(
          rows.map((row, r) => row.map((text, c) => (dialect.holds === "typed" ? meaning(text) : shown(live, r, c)))),
        );
        live.close();
      }),
      { numRuns: tables },
    );
  }, 600_000);

  it("has an apostrophe before text that runs elsewhere, and never before a number", () => {
    const rows = [["'=1+1", "'+1-2", "-5", "=-2*3", "'@x", "'\tx", "=1/0", "'＝1", "-x", "1.5"]];
    const live = new LiveNotebook(notebookOf(rows));
    const page = live.notebook.pages[0] as Page;
    expect(exportRows(live, page, { holds: "values", decimal: "," })).toEqual([
      ["'=1+1", "'+1-2", "-5", "-6", "'@x", "'\tx", "#DIV/0!", "'＝1", "'-x", "1,5"],
    ]);
    live.close();
  });
});
