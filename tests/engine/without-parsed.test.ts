import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { sampleFolder, terminal } from "../cli/terminal";

/** Every part of the program that asks how a formula is read, loaded with an engine that does not show it. */
async function load(shows: boolean) {
  vi.resetModules();
  if (!shows) {
    vi.doMock("../../src/engine/formula-access", () => ({
      canParse: () => false,
      parsedCell: () => undefined,
      parsedText: () => undefined,
    }));
  }
  const [live, audit, record, working, unfilled, unfold, sample, worked, cliAudit, cliWorking, study, edit] =
    await Promise.all([
      import("../../src/notebook/live"),
      import("../../src/audit/audit"),
      import("../../src/audit/record"),
      import("../../src/notebook/working"),
      import("../../src/notebook/unfilled"),
      import("../../src/notebook/unfold"),
      import("../notebook/sample"),
      import("../notebook/worked"),
      import("../../src/cli/audit"),
      import("../../src/cli/working"),
      import("../../src/cli/solve"),
      import("../../src/notebook/edit-cells"),
    ]);
  vi.doUnmock("../../src/engine/formula-access");
  return {
    ...live,
    ...audit,
    ...record,
    ...working,
    ...unfilled,
    ...unfold,
    ...sample,
    ...worked,
    ...cliAudit,
    ...cliWorking,
    ...study,
    ...edit,
  };
}

type Program = Awaited<ReturnType<typeof load>>;

/** Everything that a notebook shows. */
function valuesOf({ LiveNotebook, worked }: Program, folder: string): readonly unknown[] {
  const live = new LiveNotebook(worked(folder));
  const values = live.notebook.pages.flatMap((page) =>
    page.rows.flatMap((cells, row) => cells.map((_, column) => live.value({ page: page.id, row, column }))),
  );
  live.close();
  return values;
}

describe("the program with an engine that does not show how it reads formulas", () => {
  let off: Program;
  let on: Program;
  beforeAll(async () => {
    on = await load(true);
    off = await load(false);
  }, 60_000);
  afterAll(() => vi.resetModules());

  it.each(["sheets/three-hulls", "sheets/one-hull-three-layouts"])(
    "calculates %s to the last bit alike",
    { timeout: 60_000 },
    (folder) => {
      const values = valuesOf(off, folder);
      expect(values.length).toBeGreaterThan(5000);
      expect(values).toEqual(valuesOf(on, folder));
    },
  );

  it("audits what the texts and values tell, and says which checks were left out", () => {
    const { LiveNotebook, auditNotebook, recordOf, sample, setCells, at } = off;
    const clean = sample();
    const faulty = setCells(clean, [
      { ...at(clean, "Supply", "F7"), text: "1.2" },
      { ...at(clean, "Supply", "G8"), text: "=G7/G6" },
      { ...at(clean, "Free", "B3"), text: "=1/0" },
    ]);
    const live = new LiveNotebook(faulty);
    const audit = auditNotebook(live);
    const rules = new Set(audit.open.map(({ rule }) => rule));
    expect([...rules]).toEqual(expect.arrayContaining(["typed-over", "differs", "error-value"]));
    expect(rules).not.toContain("units");
    expect(audit.note).toMatch(/does not show how it reads a formula.*left out.*: .*units.*blank reference.*volatile/);
    expect(recordOf(faulty, audit).note).toBe(audit.note);
    live.close();
  });

  it("says so on the terminal, in the audit and in a working", async () => {
    const output = terminal();
    await off.printAudit(output, sampleFolder(), { json: false, record: false });
    expect(output.text()).toContain("were left out");
    const other = terminal();
    off.printWorking(other, [sampleFolder(), "Supply.drop@Cruiser"], false);
    expect(other.text()).toContain("does not show how it reads a formula; results are not touched by that.");
    expect(other.text()).toContain("=CONDUCTOR.DROP(F3,F4,F5,50)");
    expect(other.text()).toContain("Supply.run@Cruiser");
  });

  it("refuses a study with the cell and the reason", () => {
    const wishes = { by: "Supply.run", low: undefined, high: undefined, atMost: false, json: false };
    expect(() => off.solveBack(terminal(), [sampleFolder(), "Supply.drop@Cruiser=1"], wishes)).toThrow(
      /Supply!F7: the engine does not show how it reads the formula; a study cannot follow it/,
    );
  });

  it("leaves a check open whose input is missing", () => {
    const { LiveNotebook, missingBehind, sample, setCells, at } = off;
    const filled = sample();
    const live = new LiveNotebook(setCells(filled, [{ ...at(filled, "Supply", "F4"), text: "" }]));
    expect(missingBehind(live, at(live.notebook, "Supply", "F8"))).toContain("Conductor run out and back");
    expect(missingBehind(live, at(live.notebook, "Supply", "E8"))).toBeUndefined();
    live.close();
  });
});
