import { describe, expect, it } from "vitest";
import { Misuse } from "../../src/cli/output";
import { printWorking } from "../../src/cli/working";
import { sampleFiles } from "../notebook/sample";
import { sampleFolder, terminal } from "./terminal";

function shown(...args: string[]): string {
  const output = terminal();
  printWorking(output, args, false);
  return output.text();
}

describe("working on the terminal", () => {
  it("prints quantity, value, formula three ways, steps with numbers, validity and sources", () => {
    const text = shown(sampleFolder(), "Supply.drop@Cruiser");
    for (const part of [
      "Voltage lost, Cruiser: 1.21361 V",
      "=CONDUCTOR.DROP(F3,F4,F5,50)",
      "CONDUCTOR.DROP(Current while running, Conductor run out and back, Conductor area, 50)",
      "CONDUCTOR.DROP(310, 17, 95, 50) = 1.21361 V",
      "R = 0.206 / 1000 × 17 × (1 + 0.00393 × (50 − 20)) / 1 = 0.00391489 ohm",
      "temperature",
      "by default",
      "valid: ",
      "source: IEC 60228",
      "fed by",
      "feeds",
    ]) {
      expect(text).toContain(part);
    }
    expect(text).not.toContain("undefined");
  });

  it("says whether the inputs are inside what the function holds for, and inside what is plausible", () => {
    expect(shown(sampleFolder(), "Supply.drop@Cruiser")).toContain("inside: All inputs are inside what is allowed.");
    const supply = sampleFiles.get("supply.csv") ?? "";
    const limits = { rows: { "Supply.run": { low: 2, high: 15 } } };
    const about = { ...JSON.parse(sampleFiles.get("notebook.json") ?? ""), ...limits };
    const folder = sampleFolder({
      "supply.csv": supply.replace("F5,50", "F5,500"),
      "notebook.json": JSON.stringify(about),
    });
    const text = shown(folder, "Supply.drop@Cruiser");
    expect(text).toContain("inside: Outside what is allowed: temperature.");
    expect(text).toContain("outside what is plausible: Supply.run@Cruiser");
  });

  it("works on a shipped notebook, with validity, sources and what feeds the cell", () => {
    const text = shown("sheets/three-hulls", "Supply.drop@Cruiser");
    for (const part of ["valid: Flexible plain copper", "source: IEC 60228", "Supply.run@Cruiser", "Supply.drop_ok@"]) {
      expect(text).toContain(part);
    }
  });

  it("says of a branch that is not taken that it is not, and refuses nothing in it", () => {
    const supply = sampleFiles.get("supply.csv") ?? "";
    const branched = (asked: string) =>
      shown(
        sampleFolder({
          "supply.csv": supply.replace(
            "=CONDUCTOR.DROP(F3,F4,F5,50)",
            `=IF(F3${asked},CONDUCTOR.DROP(F3,F4,F5,500),1)`,
          ),
        }),
        "Supply.drop@Cruiser",
      );
    const idle = branched("<0");
    expect(idle).toContain("Voltage lost, Cruiser: 1 V");
    expect(idle).toContain("(in a branch that is not taken)");
    expect(idle).toContain("not worked out: this branch is not taken");
    expect(idle).not.toContain("refused: ");
    // What it was given is a plain input, known in any branch.
    expect(idle).toMatch(/^ *temperature +500 degC +of the conductor; given, allowed -40 to 150 °C$/m);
    // The same call in the branch that is taken is refused.
    expect(branched(">0")).toContain("refused: ");
    expect(branched(">0")).not.toContain("not taken");
    expect(branched(">0")).toMatch(/^ *temperature +500 degC +temperature: 500/m);
  });

  it("prints the same as data", () => {
    const output = terminal();
    printWorking(output, [sampleFolder(), "Supply.drop@Cruiser"], true);
    const data = JSON.parse(output.text());
    expect(data.value.value).toBe(data.calls[0].explanation.result);
    expect(data.address).toBe("Supply.drop@Cruiser");
  });

  it("prints an input with its basis and its readers", () => {
    const text = shown(sampleFolder(), "Supply.area@Sloop");
    expect(text).toContain("input, basis: chosen");
    expect(text).toContain("choices: 35, 50, 70, 95");
    expect(text).toContain("Supply.drop@Sloop");
  });

  it("says what is missing in one sentence", () => {
    const folder = sampleFolder();
    expect(() => shown(folder)).toThrow(Misuse);
    expect(() => shown(folder, "Supply.nothing@Cruiser")).toThrow('There is no key "nothing" on Supply');
    expect(() => shown(folder, "Supply.drop")).toThrow("add the option");
  });
});
