import { describe, expect, it } from "vitest";
import { type CalcWishes, calculate } from "../../src/cli/calc";
import { sampleFolder, terminal } from "./terminal";

const plain: CalcWishes = { set: [], json: false, page: undefined };
const run = (wishes: Partial<CalcWishes>, folder = sampleFolder()): string => {
  const output = terminal();
  calculate(output, folder, { ...plain, ...wishes });
  return output.text();
};
const json = (wishes: Partial<CalcWishes>, folder?: string) => JSON.parse(run({ ...wishes, json: true }, folder));

describe("calc", () => {
  it("gives every row of an option page with values, formulas and errors by option", () => {
    const { title, options, pages } = json({ page: "supply" });
    expect(title).toBe("Sample");
    expect(options).toEqual(["Sloop", "Cruiser", "Pilot"]);
    expect(pages).toHaveLength(1);
    expect(pages[0].name).toBe("Supply");
    const drop = pages[0].rows.find((row: { key: string }) => row.key === "drop");
    // IEC 60228 class 5 at 50 °C: 0.206 ohm/km · 17 m · 310 A · (1 + 0.00393 · 30)
    expect(drop.values.Cruiser).toBeCloseTo((0.206 / 1000) * 17 * 310 * (1 + 0.00393 * 30), 12);
    expect(drop).toMatchObject({ quantity: "Voltage lost", unit: "V", basis: "IEC 60228 class 5", errors: {} });
    expect(drop.formulas.Cruiser).toBe("=CONDUCTOR.DROP(F3,F4,F5,50)");
  });

  it("sets inputs for the run and leaves the files alone", () => {
    const folder = sampleFolder();
    const value = (set: string[]) =>
      json({ set, page: "Supply" }, folder).pages[0].rows.find((row: { key: string }) => row.key === "drop").values;
    const before = value([]);
    const after = value(["Supply.I_run@Cruiser=620", "Supply.area@Sloop=35"]);
    expect(after.Cruiser).toBeCloseTo(2 * before.Cruiser, 12);
    expect(after.Pilot).toBe(before.Pilot);
    expect(value([])).toEqual(before);
  });

  it("shows checks in words and errors with their address", () => {
    const text = run({ set: ["Supply.run@Pilot=-1"], page: "Supply" });
    expect(text).toContain("falls short by 1 %");
    expect(text).toContain("holds,");
    expect(text).toContain("open: run: -1 m");
    expect(text.match(/^Supply\.\S+: #NUM!.*$/gm)).toEqual([
      expect.stringMatching(/^Supply\.drop@Pilot: #NUM! run: -1 m \(allowed/),
    ]);
  });

  it("prints free sheets as they are laid out", () => {
    expect(run({ page: "Free" })).toContain("007");
  });

  it.each([
    [["Supply.I_run@Cruiser"], "write Page.key@Option=value"],
    [["Supply.I_run=5"], "names a row; add the option"],
    [["Supply.nothing@Cruiser=5"], 'There is no key "nothing" on Supply'],
    [["Nowhere.I_run@Cruiser=5"], 'There is no page "Nowhere"'],
    [["Supply.I_run@Ketch=5"], 'There is no option "Ketch" (there are Sloop, Cruiser, Pilot).'],
    [["Supply.drop@Cruiser=5"], "this cell is calculated"],
    [["Supply.I_run@Cruiser==1+1"], "not a formula"],
    [["Supply.area@Cruiser=51"], 'Supply.area: "51" is not a choice (allowed 35, 50, 70, 95).'],
  ])("refuses --set %j in one sentence", (set, sentence) => {
    expect(() => run({ set })).toThrow(sentence);
  });

  it("refuses an unknown page, a missing folder and damaged files", () => {
    expect(() => run({ page: "Nowhere" })).toThrow('There is no page "Nowhere" (there are Supply, Side force, Free).');
    expect(() => run({}, "/nowhere")).toThrow("/nowhere is not a folder");
    expect(() => run({}, sampleFolder({ "supply.csv": "a,b\n1\n" }))).toThrow("supply.csv, row 2, column 2");
  });
});
