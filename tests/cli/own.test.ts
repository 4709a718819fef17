import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { printAudit } from "../../src/cli/audit";
import { calculate } from "../../src/cli/calc";
import { readFolder } from "../../src/cli/folder";
import { list } from "../../src/cli/list";
import { ownOnTerminal } from "../../src/cli/own";
import { printWorking } from "../../src/cli/working";
import { sampleFiles } from "../notebook/sample";
import { sampleFolder, terminal } from "./terminal";

const none = { copy: undefined, as: undefined, begin: undefined, write: undefined };

function run(folder: string, wishes: Partial<typeof none> | Record<string, string>): string {
  const output = terminal();
  ownOnTerminal(output, folder, { ...none, ...wishes });
  return output.text();
}

it("copies a function under another name, which then calculates, explains itself and is listed as the notebook's own", async () => {
  const folder = sampleFolder({
    "supply.csv": (sampleFiles.get("supply.csv") ?? "").replaceAll("=CONDUCTOR.DROP(", "=YARD.DROP("),
  });
  expect(run(folder, {})).toBe("This notebook defines no functions of its own.\n");
  expect(run(folder, { copy: "conductor.drop", as: "yard.drop" })).toMatch(/^function,YARD\.DROP,,,,Voltage lost/);
  expect(readFolder(folder).pages).toHaveLength(3);
  const copy = `${folder}-own`;
  expect(run(folder, { copy: "CONDUCTOR.DROP", as: "YARD.DROP", write: copy })).toContain("page Own functions, row 2");
  expect(run(copy, {})).toMatch(/^YARD\.DROP {2}Voltage lost.*\(Own functions, row 2\)\n {4}example: .*: agrees/);

  const working = terminal();
  printWorking(working, [copy, "Supply.drop@Cruiser"], false);
  expect(working.text()).toContain("Voltage lost, Cruiser: 1.21361 V");
  expect(working.text()).toContain("(the notebook's own function, page Own functions)");
  const listed = terminal();
  list(listed, [], false, copy);
  expect(listed.text()).toMatch(/^The notebook's own\n=+\nYARD\.DROP\(/);
  const calculated = terminal();
  calculate(calculated, copy, { set: ["Supply.I_run@Cruiser=620"], json: false, page: "Supply" });
  expect(calculated.text()).toContain("2.42723");
  const audit = terminal();
  await printAudit(audit, copy, { json: false, record: false });
  expect(audit.text()).not.toContain("own-function");
});

it("begins a small function, and says a mistake with page and row", async () => {
  const folder = `${sampleFolder()}-begun`;
  run(sampleFolder(), { begin: "YARD.BAR", write: folder });
  expect(run(folder, {})).toContain("YARD.BAR");
  expect(() => run(folder, { begin: "YARD.BAR" })).toThrow("YARD.BAR is one of the notebook's own functions already");
  expect(() => run(folder, { copy: "CONDUCTOR.DROP" })).toThrow("--copy NAME needs --as NEW.NAME");
  expect(() => run(folder, { copy: "NO.SUCH", as: "YARD.X" })).toThrow("There is no function NO.SUCH");

  // A mistake in the file of its page: said in the list, in a cell that calls it, and by the audit.
  const file = join(folder, "own-functions.csv");
  writeFileSync(file, readFileSync(file, "utf8").replace("length * (1 + loss)", "length * (1 + los)"));
  const mistake = "Own functions, row 6: step L: los is not defined before its use";
  expect(run(folder, {})).toContain(mistake);
  const audit = terminal();
  await printAudit(audit, folder, { json: false, record: false });
  expect(audit.text()).toContain("step L: los is not defined before its use");
});
