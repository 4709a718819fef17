import fc from "fast-check";
import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { decodeFile } from "../../src/notebook/decode";
import { replacePage } from "../../src/notebook/edit-pages";
import { readNotebook, writeNotebook } from "../../src/notebook/files";
import { LiveNotebook } from "../../src/notebook/live";
import type { Notebook, Page } from "../../src/notebook/model";
import { Refusal } from "../../src/notebook/refusal";
import { importRows } from "../../src/notebook/table-cells";
import { detectShape, readTable } from "../../src/notebook/table-in";
import { packNotebook, unpackNotebook } from "../../src/notebook/zip";
import { sample, sampleFiles } from "./sample";

/** How many damaged inputs there are of each kind; more on demand. */
const inputs = Number(process.env.ATHWART_DAMAGED ?? 5000);

/** What happens to bytes on bad disks, in bad programs and in bad hands. */
const injury = fc.record({
  kind: fc.constantFrom("flip", "cut", "drop", "repeat", "put", "swap", "zeros"),
  at: fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }),
  length: fc.nat(40),
  byte: fc.nat(255),
  text: fc.constantFrom(
    ...[
      '"',
      ",",
      "\n",
      "\r",
      '"""',
      "{",
      "}",
      "[",
      "]",
      ":",
      "\\",
      "\u0000",
      "\u202e",
      "../",
      "=",
      "-1",
      "1e999",
      "null",
    ],
    ...[
      '"version":9,',
      '"pages":[],',
      "PK\u0003\u0004",
      "Quantity,Key,Unit,Basis",
      "__proto__",
      "=SUM(A1:XFD20000)",
      "[".repeat(300),
    ],
    ...[`=${"(".repeat(300)}`, "x".repeat(120_000), `"${"\n".repeat(50)}"`, "\ud83d", ";;;;", "\t"],
  ),
});
type Injury = typeof injury extends fc.Arbitrary<infer T> ? T : never;

function injured(bytes: Uint8Array, { kind, at, length, byte, text }: Injury): Uint8Array {
  const place = Math.floor(at * bytes.length);
  const [head, body, tail] = [
    bytes.subarray(0, place),
    bytes.subarray(place, place + length),
    bytes.subarray(place + length),
  ];
  const join = (...parts: Uint8Array[]) => new Uint8Array(Buffer.concat(parts));
  switch (kind) {
    case "flip":
      return bytes.map((one, i) => (i === place ? one ^ (byte || 1) : one));
    case "cut":
      return head;
    case "drop":
      return join(head, tail);
    case "repeat":
      return join(head, body, body, tail);
    case "swap":
      return join(tail, body, head);
    case "zeros":
      return join(head, new Uint8Array(length), tail);
    default:
      return join(head, strToU8(text), body, tail);
  }
}

const injuries = fc.array(injury, { minLength: 1, maxLength: 3 });

/** The outcome: a whole notebook that can be saved and opened again, or one sentence. */
function mustEndWell(open: () => Notebook): void {
  let notebook: Notebook;
  try {
    notebook = open();
  } catch (cause) {
    if (!(cause instanceof Refusal)) throw cause;
    expect(cause.message).toMatch(/^[^\p{Cc}\u202e]{12,800}[.]$/u);
    expect(cause.message).not.toMatch(/[.!?] [A-Z]/);
    return;
  }
  const files = writeNotebook(notebook);
  expect([...writeNotebook(readNotebook(files))]).toEqual([...files]);
}

const asBytes = new Map([...sampleFiles].map(([name, text]) => [name, strToU8(text)] as const));
const zip = packNotebook(sample());

describe("a damaged file", () => {
  it(`of a notebook ends in one sentence or a whole notebook, ${inputs} times`, () => {
    fc.assert(
      fc.property(fc.constantFrom(...asBytes.keys()), injuries, (name, all) => {
        mustEndWell(() => {
          const files = new Map(
            [...asBytes].map(([of, bytes]) => [of, of === name ? all.reduce(injured, bytes) : bytes]),
          );
          return readNotebook(new Map([...files].map(([of, bytes]) => [of, decodeFile(of, bytes)])));
        });
      }),
      { numRuns: inputs },
    );
  }, 600_000);

  it(`of the kind zip ends in one sentence or a whole notebook, ${inputs} times`, () => {
    fc.assert(
      fc.property(injuries, (all) => mustEndWell(() => unpackNotebook(all.reduce(injured, zip)))),
      { numRuns: inputs },
    );
  }, 600_000);

  it(`with a table ends in one sentence, or is taken whole; the open notebook is the old or the new one, ${inputs} times`, () => {
    const live = new LiveNotebook(sample());
    const start = live.notebook;
    const page = start.pages.find(({ name }) => name === "Free") as Page;
    fc.assert(
      fc.property(fc.constantFrom("supply.csv", "free.csv"), injuries, fc.boolean(), (name, all, formulas) => {
        const bytes = all.reduce(injured, asBytes.get(name) ?? new Uint8Array());
        mustEndWell(() => {
          const shape = detectShape(bytes);
          const rows = importRows(readTable(name, bytes, shape), { ...shape, formulas, doubtful: "text" });
          return replacePage(live.notebook, page.id, rows);
        });
        expect(live.notebook).toBe(start);
      }),
      { numRuns: inputs },
    );
    live.close();
  }, 600_000);

  it.each([
    [
      "deep JSON",
      `{"version":1,"title":"a","pages":[{"name":"A","file":"a.csv"}],"x":${"[".repeat(50_000)}${"]".repeat(50_000)}}`,
      "deep",
    ],
    ["JSON that never ends", "[".repeat(200_000), "not valid JSON"],
    [
      "a title of a megabyte",
      `{"version":1,"title":"${"x".repeat(1_000_000)}","pages":[{"name":"A","file":"a.csv"}]}`,
      "the title",
    ],
    [
      "a name that is a prototype",
      '{"version":1,"title":"a","pages":[{"name":"A","file":"__proto__"}]}',
      '"__proto__"',
    ],
    [
      "the file of a page in another folder",
      '{"version":1,"title":"a","pages":[{"name":"A","file":"../../a.csv"}]}',
      "plain name",
    ],
    [
      "a thousand pages",
      JSON.stringify({
        version: 1,
        title: "a",
        pages: Array.from({ length: 1000 }, (_, i) => ({ name: `P${i}`, file: "a.csv" })),
      }),
      "1000 pages (allowed 200)",
    ],
  ])("is refused in one sentence: %s", (_, json, words) => {
    const open = () =>
      readNotebook(
        new Map([
          ["notebook.json", json],
          ["a.csv", "a\n"],
        ]),
      );
    expect(open).toThrow(Refusal);
    expect(open).toThrow(words);
  });

  it.each([
    ["../notebook.json", "a folder above"],
    ["a/../../b.csv", "a way out of the folder"],
    ["/etc/passwd", "the top of the disk"],
    ["C:\\evil.csv", "a disk of Windows"],
    ["..\\evil.csv", "a folder above, with the other slash"],
    ["a\u0000.csv", "a name that ends early"],
    ["deep/er/a.csv", "folders in folders"],
  ])("of the kind zip is refused when it holds the name %j: %s", (name) => {
    const files = Object.fromEntries([...asBytes]);
    expect(() => unpackNotebook(zipSync({ ...files, [name]: strToU8("a") }))).toThrow(
      /^The zip holds ".+plain names\.$/u,
    );
  });

  it("of the kind zip is refused when it says that it is smaller than it is", () => {
    const bomb = zipSync({ "notebook.json": new Uint8Array(5_000_000) });
    const view = new DataView(bomb.buffer, bomb.byteOffset);
    // The size before packing, in the entry and in the list of entries at the end.
    for (let i = 0; i < bomb.length - 4; i++) {
      if (view.getUint32(i, true) === 5_000_000) view.setUint32(i, 10, true);
    }
    expect(() => unpackNotebook(bomb)).toThrow(Refusal);
  });

  it("of the kind zip is refused when it holds far too many files", () => {
    const many = Object.fromEntries(Array.from({ length: 501 }, (_, i) => [`${i}.csv`, strToU8("a")]));
    expect(() => unpackNotebook(zipSync(many))).toThrow("more than 500 files");
  });
});

describe("a page's file that is too large", () => {
  it.each([
    ["rows", "a\n".repeat(20_001), "p.csv would have 20001 rows and 1 columns (allowed 20000 and 16384"],
    ["columns", `${",".repeat(16_384)}\n`, "p.csv would have 1 rows and 16385 columns"],
    ["cells", `${",".repeat(999)}\n`.repeat(1001), "and 1000000 cells)"],
    [
      "letters",
      `a,${"x".repeat(1_000_000)}\n`,
      "p.csv, row 1, column 2: the letters of the text are 1000000 (allowed 100000)",
    ],
    [
      "brackets",
      `a,"=${"(".repeat(100)}1${")".repeat(100)}"\n`,
      "p.csv, row 1, column 2: the brackets inside one another are 100",
    ],
  ])("is refused with its count of %s", (_, text, words) => {
    const json = '{"version":1,"title":"a","pages":[{"name":"A","file":"p.csv"}]}';
    expect(() =>
      readNotebook(
        new Map([
          ["notebook.json", json],
          ["p.csv", text],
        ]),
      ),
    ).toThrow(words);
    expect(() => readTable("p.csv", strToU8(text), { encoding: "utf-8", separator: "," })).toThrow(words);
  });
});
