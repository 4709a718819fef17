import { describe, expect, it } from "vitest";
import { LiveNotebook } from "../../../src/notebook/live";
import { firstOption, optionsOf, pageByName } from "../../../src/notebook/model";
import { parsePage } from "../../../src/notebook/page-csv";
import { addOptions } from "../../../src/study/options/into";
import { printOptions } from "../../../src/study/options/print";
import { readOptions } from "../../../src/study/options/read";
import { runOptions } from "../../../src/study/options/run";
import { columnOf, rowsNamed } from "../../../src/study/rows";
import { at, sample } from "../../notebook/sample";

const notebook = sample();
const table = (text: string, base = "Cruiser") => {
  return readOptions(notebook, "boats.csv", parsePage("boats.csv", text), columnOf(notebook, base));
};

function results(text: string, rows: string, base = "Cruiser"): string[][] {
  const notebook = sample();
  const run = runOptions(
    new LiveNotebook(notebook),
    columnOf(notebook, base),
    table(text, base),
    rowsNamed(notebook, rows),
  );
  const lines = [...printOptions(run)].join("").trimEnd().split("\n");
  run.runner.close();
  return lines.map((line) => line.split(","));
}

describe("options from a table", () => {
  it("give the results that the same option has as a column of the notebook, every digit", () => {
    const text =
      "option,Supply.I_run,Supply.run [m],Supply.area,Side force.push\nTern,333.25,12.125,50,900\nGull,,,,\n";
    const [head, tern, gull] = results(text, "Supply.*,Side force.*");
    const grown = addOptions(notebook, table(text), "Cruiser");
    expect(optionsOf(grown)).toEqual(["Sloop", "Cruiser", "Pilot", "Tern", "Gull"]);
    const live = new LiveNotebook(grown);
    for (const [i, line] of [tern, gull].entries()) {
      head?.slice(1).forEach((name, k) => {
        const [row] = rowsNamed(grown, name);
        if (!row || name === "Supply.worst") return;
        const value = live.value({ page: row.page.id, row: row.row, column: firstOption + 3 + i });
        expect(line?.[k + 1], `${name} of ${line?.[0]}`).toBe(value.kind === "number" ? String(value.value) : "");
      });
    }
    // What the file leaves out is the base option's.
    const cruiser = new LiveNotebook(notebook);
    expect(gull?.[head?.indexOf("Supply.drop") ?? -1]).toBe(
      String((cruiser.value(at(notebook, "Supply", "F7")) as { value: number }).value),
    );
  });

  it("show an error as the code that the notebook would show", () => {
    expect(results("option,Supply.run\nTern,-1\nGull,5\n", "Supply.drop_ok")).toEqual([
      ["option", "Supply.drop_ok"],
      ["Tern", "#NUM!"],
      ["Gull", expect.stringMatching(/^\d\.\d+$/)],
    ]);
  });

  it("stand in the base option's column where a row looks at all options", () => {
    const [, tern] = results("option,Supply.I_run\nTern,100000\n", "Supply.worst");
    expect(tern?.[1]).toBe("#NUM!");
    expect(Number(results("option,Supply.I_run\nTern,1\n", "Supply.worst")[1]?.[1])).toBeGreaterThan(1);
  });

  it.each([
    ["boat,Supply.run\nTern,1\n", 'boats.csv, row 1: the first column is "boat"; it must be option.'],
    ["option,Suply.run\nTern,1\n", 'boats.csv, row 1, column 2: there is no row "Suply.run"; did you mean Supply.run?'],
    ["option,Nothing\nTern,1\n", 'there is no row "Nothing"; write Page.key, as in the notebook.'],
    ["option,Supply.drop\nTern,1\n", "Supply.drop is calculated for Cruiser; give the inputs that it depends on."],
    [
      "option,Supply.run [mm]\nTern,1\n",
      "boats.csv, row 1, column 2, Supply.run: the file says mm, the notebook m; multiply the column by 0.001 and write [m].",
    ],
    ["option,Supply.run [kg]\nTern,1\n", "Supply.run: the file says kg, the notebook m; they do not fit."],
    ["option,Supply.run,supply.RUN\nTern,1,2\n", "boats.csv, row 1: Supply.run stands in two columns; leave one."],
    [
      "option,Supply.run\nTern,12 m\n",
      'boats.csv, row 2, column 2, Supply.run: "12 m" is not a plain number; write the number alone, in m.',
    ],
    ['option,Supply.run\nTern,"1,5"\n', '"1,5" is not a plain number; write a decimal point.'],
    ["option,Supply.area\nTern,51\n", 'Supply.area: "51" is not a choice (allowed 35, 50, 70, 95).'],
    ["option,Supply.run\n,1\n", "boats.csv, row 2: the option has no name."],
    ["option,Supply.run\nTern,1\ntern,2\n", 'boats.csv, row 3: "tern" stands in row 2 already.'],
    ["option,Supply.run\n", "boats.csv: there is no option in it; write one a line below the first."],
  ])("are refused in words: %j", (text, sentence) => expect(() => table(text)).toThrow(sentence));

  it("take a unit with spaces about it", () => {
    const { rows } = table("option,Supply.area[mm2],Supply.run  [ m ]\nTern,50,3\n");
    expect(rows.map(({ name }) => name)).toEqual(["Supply.area", "Supply.run"]);
  });

  it("leave the notebook as it was when a name is taken", () => {
    expect(() => addOptions(notebook, table("option,Supply.run\nTern,1\nPilot,2\n"), "Cruiser")).toThrow(
      'There is already an option "Pilot"',
    );
    expect(pageByName(notebook, "Supply")?.rows[0]).toHaveLength(7);
  });

  it("are named by patterns that must hit a row", () => {
    expect(rowsNamed(notebook, "*.drop*, Side force.push").map(({ name }) => name)).toEqual([
      "Supply.drop",
      "Supply.drop_ok",
      "Side force.push",
    ]);
    expect(() => rowsNamed(notebook, "Supply.nothing")).toThrow(
      '"Supply.nothing" names no row; write Page.key, with *',
    );
  });
});
