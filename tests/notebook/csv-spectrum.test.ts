import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { parsePage, printPage } from "../../src/notebook/page-csv";
import { readTable } from "../../src/notebook/table-in";

const folder = dirname(createRequire(import.meta.url).resolve("csv-spectrum/package.json"));
const names = readdirSync(join(folder, "csvs")).map((file) => file.replace(".csv", ""));

const tableOf = (name: string) => readFileSync(join(folder, "csvs", `${name}.csv`));

/** The reference as rows: its fields are the header, its values the cells. */
function referenceOf(name: string): readonly (readonly string[])[] {
  const read: unknown = JSON.parse(readFileSync(join(folder, "json", `${name}.json`), "utf8"));
  const records = (Array.isArray(read) ? read : [read]) as Record<string, string>[];
  return [Object.keys(records[0] ?? {}), ...records.map((record) => Object.values(record))];
}

/** The reference of this one is wrong: it gives the telephone number 1234567890, the table 2095257564. */
const faulty = "location_coordinates";

describe("the twelve tables of csv-spectrum 2.0.0", () => {
  it("are twelve", () => {
    expect(names).toHaveLength(12);
  });

  it.each(names)("read as their reference says: %s", (name) => {
    const wanted = referenceOf(name);
    if (name === faulty) expect(wanted[1]?.[0]).toBe("1234567890");
    const expected =
      name === faulty ? wanted.map((row, i) => (i === 1 ? ["2095257564", ...row.slice(1)] : row)) : wanted;
    expect(readTable(`${name}.csv`, tableOf(name), { encoding: "utf-8", separator: "," })).toEqual(expected);
    expect(parsePage(`${name}.csv`, tableOf(name).toString("utf8"))).toEqual(expected);
  });

  it.each(names)("come back from a page's file cell by cell: %s", (name) => {
    const rows = parsePage(`${name}.csv`, tableOf(name).toString("utf8"));
    expect(parsePage(`${name}.csv`, printPage(rows))).toEqual(rows);
  });
});
