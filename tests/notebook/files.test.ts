import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { decodeFile } from "../../src/notebook/decode";
import { setCells } from "../../src/notebook/edit-cells";
import { readNotebook, writeNotebook } from "../../src/notebook/files";
import { packNotebook, unpackNotebook } from "../../src/notebook/zip";
import { at, sample, sampleFiles } from "./sample";

const withFile = (name: string, text: string | undefined): Map<string, string> => {
  const files = new Map(sampleFiles);
  if (text === undefined) files.delete(name);
  else files.set(name, text);
  return files;
};

const withAbout = (change: (about: Record<string, unknown>) => void): Map<string, string> => {
  const about = JSON.parse(sampleFiles.get("notebook.json") ?? "");
  change(about);
  return withFile("notebook.json", JSON.stringify(about));
};

describe("a notebook's files", () => {
  it("come back byte for byte when nothing changed, unknown fields of notebook.json included", () => {
    expect([...writeNotebook(sample())]).toEqual([...sampleFiles]);
  });

  it("come back byte for byte even when a file was written by hand in another style", () => {
    const files = withFile("free.csv", '\uFEFFa,"b"\r\n"007",c\r\n');
    expect(writeNotebook(readNotebook(files)).get("free.csv")).toBe(files.get("free.csv"));
  });

  it("change only where a cell changed", () => {
    const notebook = sample();
    const edited = setCells(notebook, [{ ...at(notebook, "Supply", "F3"), text: "350" }]);
    const files = writeNotebook(edited);
    expect(files.get("supply.csv")).toBe(sampleFiles.get("supply.csv")?.replace("310", "350"));
    expect(files.get("free.csv")).toBe(sampleFiles.get("free.csv"));
  });

  it.each([
    ["notebook.json is missing", withFile("notebook.json", undefined), "notebook.json is missing"],
    ["damaged JSON", withFile("notebook.json", "{"), "notebook.json is not valid JSON"],
    ["a list instead of an object", withFile("notebook.json", "[]"), "must hold one object"],
    [
      "a newer version",
      withAbout((about) => Object.assign(about, { version: 2 })),
      "version 2; this program knows up to 1",
    ],
    ["a wrong field", withAbout((about) => Object.assign(about, { title: 7 })), "notebook.json, title"],
    [
      "a file outside the folder",
      withAbout((about) => Object.assign(about, { pages: [{ name: "A", file: "../a.csv" }] })),
      '"../a.csv"',
    ],
    ["a page without its file", withFile("free.csv", undefined), "free.csv is missing"],
    [
      "two pages of one name",
      withAbout((about) =>
        Object.assign(about, {
          pages: [
            { name: "A", file: "free.csv" },
            { name: "a", file: "supply.csv" },
          ],
        }),
      ),
      'two pages with the name "a"',
    ],
    [
      "other options on one page",
      withFile("side-force.csv", "Quantity,Key,Unit,Basis,Sloop,Ketch,Pilot\n"),
      "side-force.csv, row 1, column 6",
    ],
  ])("are refused in one sentence: %s", (_, files, sentence) => {
    expect(() => readNotebook(files)).toThrow(sentence);
  });

  it("of version 0, without a version field, are brought to version 1", () => {
    const notebook = readNotebook(withAbout((about) => Object.assign(about, { version: undefined })));
    expect(notebook.about.version).toBe(1);
  });

  it("that are not UTF-8 are refused with file and row", () => {
    expect(() => decodeFile("boat.csv", new Uint8Array([97, 10, 98, 10, 0xe9, 44]))).toThrow(
      "boat.csv, row 3: a character cannot be read",
    );
  });
});

describe("a notebook's zip", () => {
  it("holds the same files", () => {
    expect([...writeNotebook(unpackNotebook(packNotebook(sample())))]).toEqual([...sampleFiles]);
  });

  it("may hold them in one folder", () => {
    const inFolder = Object.fromEntries([...sampleFiles].map(([name, text]) => [`job/${name}`, strToU8(text)]));
    expect(unpackNotebook(zipSync(inFolder)).pages).toHaveLength(3);
  });

  it("is refused when a name leads out of the folder", () => {
    const files = Object.fromEntries([...sampleFiles].map(([name, text]) => [name, strToU8(text)]));
    expect(() => unpackNotebook(zipSync({ ...files, "../evil.csv": strToU8("a") }))).toThrow('"../evil.csv"');
  });

  it("is refused before unpacking when it would be far too large", () => {
    const bomb = zipSync({ "notebook.json": new Uint8Array(30_000_000) });
    expect(bomb.length).toBeLessThan(100_000);
    expect(() => unpackNotebook(bomb)).toThrow("cannot be a notebook");
  });

  it("is refused when it is damaged or no zip", () => {
    expect(() => unpackNotebook(strToU8("not a zip"))).toThrow("not a zip that can be read");
    expect(() => unpackNotebook(packNotebook(sample()).slice(0, 200))).toThrow("not a zip that can be read");
  });
});
