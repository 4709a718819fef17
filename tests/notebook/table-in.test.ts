import { describe, expect, it } from "vitest";
import { detectShape, readTable } from "../../src/notebook/table-in";

const utf8 = (text: string) => new TextEncoder().encode(text);
const utf16 = (text: string) =>
  new Uint8Array(Uint16Array.from(`\uFEFF${text}`, (letter) => letter.charCodeAt(0)).buffer);

describe("a table from elsewhere", () => {
  it.each([
    ["comma and point", utf8("a,b,c\n1.5,2,x\n"), { encoding: "utf-8", separator: ",", decimal: "." }],
    ["semicolon and comma", utf8("a;b;c\n1,5;2,25;x\n"), { encoding: "utf-8", separator: ";", decimal: "," }],
    ["tabs", utf8("a\tb\n1\t2\n"), { encoding: "utf-8", separator: "\t", decimal: "." }],
    ["commas inside quotes", utf8('a;b\n"1,2,3";"4,5,6"\n'), { encoding: "utf-8", separator: ";", decimal: "." }],
    ["UTF-16 with a mark", utf16("a;b\n1,5;ä\n"), { encoding: "utf-16le", separator: ";", decimal: "," }],
    [
      "Windows-1252",
      new Uint8Array([...utf8("a;b\nK"), 0xf6, ...utf8("ln;1\n")]),
      { encoding: "windows-1252", separator: ";", decimal: "." },
    ],
  ] as const)("is recognised: %s", (_, bytes, shape) => {
    expect(detectShape(bytes)).toEqual(shape);
  });

  it("keeps a thousands-like number open: 1,234 decides nothing", () => {
    expect(detectShape(utf8("a;b\n1,234;2\n")).decimal).toBe(".");
  });

  it("is read cell by cell as it stands, short rows filled up", () => {
    expect(readTable("t.csv", utf8('a;b;c\r\n007;"=1+1"\r\n'), { encoding: "utf-8", separator: ";" })).toEqual([
      ["a", "b", "c"],
      ["007", "=1+1", ""],
    ]);
  });

  it("is read in its own encoding", () => {
    const bytes = new Uint8Array([...utf8("K"), 0xf6, ...utf8("ln\n")]);
    expect(readTable("t.csv", bytes, { encoding: "windows-1252", separator: "," })).toEqual([["Köln"]]);
    expect(() => readTable("t.csv", bytes, { encoding: "utf-8", separator: "," })).toThrow(
      "t.csv is not written in utf-8; choose another encoding.",
    );
  });

  it("is refused in one sentence when a quote is open, it is no text, or empty", () => {
    const shape = { encoding: "utf-8", separator: "," } as const;
    expect(() => readTable("t.csv", utf8('a,b\n1,"2\n'), shape)).toThrow("t.csv, row 2: a quotation mark");
    expect(() => readTable("t.csv", new Uint8Array([1, 0, 2, 0, 3]), shape)).toThrow("no text");
    expect(() => readTable("t.csv", utf8(""), shape)).toThrow("t.csv is empty.");
  });
});
