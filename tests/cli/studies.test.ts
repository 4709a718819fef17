import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { whatMoves } from "../../src/cli/moves";
import { calculateOptions } from "../../src/cli/options";
import { type SolveWishes, solveBack } from "../../src/cli/solve";
import { type SpreadWishes, spreadOut } from "../../src/cli/spread";
import { sampleFolder, terminal } from "./terminal";

const folder = sampleFolder();

const solve = (args: readonly string[], wishes: Partial<SolveWishes> = {}): string => {
  const output = terminal();
  solveBack(output, args, { by: undefined, low: undefined, high: undefined, atMost: false, json: false, ...wishes });
  return output.text();
};
const moves = (args: readonly string[], wishes: { csv?: boolean; json?: boolean } = {}): string => {
  const output = terminal();
  whatMoves(output, args, { csv: false, json: false, ...wishes });
  return output.text();
};
const spread = (args: readonly string[], wishes: Partial<SpreadWishes> = {}): string => {
  const output = terminal();
  spreadOut(output, args, { vary: [], common: undefined, trials: undefined, seed: undefined, json: false, ...wishes });
  return output.text();
};

describe("options", () => {
  const from = join(folder, "boats.csv");
  writeFileSync(from, "option,Supply.run\nTern,17\nGull,8.5\n");
  const run = (rows: string | undefined, file: string | undefined = from, base: string | undefined = "Cruiser") => {
    const output = terminal();
    calculateOptions(output, folder, { from: file, rows, base });
    return output.text();
  };

  it("takes boats from a file and gives their results", () => {
    const [head, tern, gull] = run("Supply.drop").split("\n");
    expect([head, tern?.split(",")[0], gull?.split(",")[0]]).toEqual(["option,Supply.drop", "Tern", "Gull"]);
    // IEC 60228 class 5 at 50 °C: 0.206 ohm/km · 17 m · 310 A · (1 + 0.00393 · 30)
    expect(Number(tern?.split(",")[1])).toBeCloseTo((0.206 / 1000) * 17 * 310 * (1 + 0.00393 * 30), 12);
    expect(Number(gull?.split(",")[1])).toBeCloseTo(Number(tern?.split(",")[1]) / 2, 12);
  });

  it("says in one sentence what it lacks", () => {
    expect(() => run("Supply.drop", "nowhere.csv")).toThrow("nowhere.csv cannot be read; name a CSV file");
    expect(() => run("Compare.*")).toThrow('"Compare.*" names no row');
    expect(() => run("Supply.drop", from, "Ketch")).toThrow('There is no option "Ketch"');
    const output = terminal();
    expect(() => calculateOptions(output, folder, { from: undefined, rows: undefined, base: undefined })).toThrow(
      "options needs the file with the options, for example --from boats.csv.",
    );
  });
});

describe("solve", () => {
  it("gives the input for a wanted result", () => {
    const text = solve([folder, "Supply.drop@Cruiser=0.6"], { by: "Supply.run", low: "1", high: "30" });
    const run = 0.6 / ((0.206 / 1000) * 310 * (1 + 0.00393 * 30));
    expect(text).toBe(`Supply.run ${Number(run.toPrecision(6))} m gives Supply.drop 0.6 V.\n`);
  });

  it("takes the first size of a list that is enough, or not too much", () => {
    expect(solve([folder, "Supply.drop@Cruiser=1.5"], { by: "Supply.area", atMost: true })).toBe(
      "The first of the list with Supply.drop at most 1.5 V: Supply.area 95 mm2 gives Supply.drop 1.21361 V.\n",
    );
    expect(solve([folder, "Supply.drop@Cruiser=1"], { by: "Supply.area", atMost: true })).toBe(
      "No choice of Supply.area gives Supply.drop at most 1 V; nearest: Supply.area 95 mm2 gives Supply.drop 1.21361 V.\n",
    );
  });

  it("finds the smallest input that makes all checks hold", () => {
    const answer = JSON.parse(solve([folder, "checks@Pilot"], { by: "Supply.area", json: true }));
    expect(answer).toMatchObject({ unmoved: [], sentence: expect.stringContaining("Supply.area") });
  });

  it.each([
    [[folder], {}, "solve takes a folder, a result with the value that is wanted"],
    [[folder, "Supply.drop@Cruiser"], { by: "Supply.run" }, "write the value that is wanted"],
    [[folder, "Supply.drop@Cruiser=x"], { by: "Supply.run" }, "write a plain number"],
    [[folder, "Supply.drop@Cruiser=1"], { by: "Side force.push" }, "Side force.push is no input of this result"],
    [[folder, "Supply.*@Cruiser=1"], { by: "Supply.run" }, "name one result, not"],
  ])("refuses %j in one sentence", (args, wishes, sentence) => expect(() => solve(args, wishes)).toThrow(sentence));
});

describe("moves", () => {
  it("lists the inputs of a result, as text, CSV and JSON", () => {
    expect(moves([folder, "Supply.drop@Cruiser"])).toContain("Supply.run (Conductor run out and back)");
    expect(moves([folder, "Supply.drop@Cruiser"], { csv: true }).split("\n")[0]).toBe(
      "input,quantity,unit,value,low,high,at low,at high,change,percent,note",
    );
    const answer = JSON.parse(moves([folder, "Supply.drop@Cruiser"], { json: true }));
    const names = answer.moves.map((one: { name: string }) => one.name);
    expect(names[0]).toBe("Supply.area");
    expect(names.toSorted()).toEqual(["Supply.I_run", "Supply.area", "Supply.run"]);
    const run = answer.moves.find((one: { name: string }) => one.name === "Supply.run");
    expect(run.percent).toBeCloseTo(answer.now / 100, 12);
  });

  it("asks for one result", () => {
    expect(() => moves([folder])).toThrow("moves takes a folder and a result");
    expect(() => moves([folder, "Supply.*@Cruiser"])).toThrow("name one result");
  });
});

describe("spread", () => {
  const vary = ["Supply.run=10,17,20", "Supply.I_run=310±20"];

  it("prints the percentiles, the chance that a check holds, and what was drawn", () => {
    const text = spread([folder, "Supply.drop*@Cruiser"], { vary, seed: "4", trials: "2000", common: "0.3" });
    expect(text).toContain("Cruiser: 2000 trials, seed 4, common cause 0.3; varied Supply.run and Supply.I_run.");
    expect(text).toMatch(/^Supply\.drop {2,}V {2,}/m);
    expect(text).toMatch(/^All checks asked for hold in \d+\.\d % of the trials\.$/m);
  });

  it("gives the same numbers for the same seed", () => {
    const run = (seed: string) => spread([folder, "Supply.drop@Cruiser"], { vary, seed, json: true });
    expect(run("7")).toBe(run("7"));
    expect(run("7")).not.toBe(run("8"));
  });

  it("takes its inputs, seed and common cause from the notebook where it keeps them", () => {
    const kept = sampleFolder({
      "notebook.json": JSON.stringify({
        version: 1,
        title: "Sample",
        pages: [
          { name: "Supply", file: "supply.csv" },
          { name: "Side force", file: "side-force.csv" },
          { name: "Free", file: "free.csv" },
        ],
        settings: { spread: { seed: 12, trials: 500, common: 0.5, vary: { "Supply.run": "±10%" } } },
      }),
    });
    expect(spread([kept, "Supply.drop@Cruiser"])).toContain(
      "Cruiser: 500 trials, seed 12, common cause 0.5; varied Supply.run.",
    );
  });

  it.each([
    [{}, "spread needs inputs that vary"],
    [{ vary: ["Supply.run"] }, "--vary Supply.run: after Page.key= write low,likely,high"],
    [{ vary: ["Supply.run=wide"] }, 'Supply.run: "wide" is no spread'],
    [{ vary: ["Supply.run=3,2,5"] }, "Supply.run: got 3, 2, 5; low, likely and high must rise."],
    [{ vary: ["Side force.push=±5%"] }, "--vary Side force.push: no result hangs on it."],
    [{ vary, common: "2" }, "--common 2 (allowed 0 to 1"],
    [{ vary, trials: "3" }, "--trials 3 (allowed whole numbers from 10 to 1000000)"],
    [{ vary, seed: "1.5" }, "--seed 1.5"],
  ])("refuses %j in one sentence", (wishes, sentence) => {
    expect(() => spread([folder, "Supply.drop@Cruiser"], wishes)).toThrow(sentence);
  });
});
