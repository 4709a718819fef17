import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { readFolder } from "../../src/cli/folder";
import { Misuse } from "../../src/cli/output";
import { unfoldRow } from "../../src/cli/unfold";
import { LiveNotebook } from "../../src/notebook/live";
import { positionOf, readAddress } from "../../src/notebook/rows";
import { sampleFolder, terminal } from "./terminal";

const free = {
  "supply.csv": readFileSync(join(sampleFolder(), "supply.csv"), "utf8").replace(
    "Worst of all,",
    'Oil head,oil_head,mm,rule,"=OIL.HEAD(100,870)+1","=OIL.HEAD(E6,870)","=ROUND(OIL.HEAD(300,870),1)"\nWorst of all,',
  ),
};

it("shows the rows of an unfolded function, and writes a notebook with the same values when asked", () => {
  const folder = sampleFolder(free);
  const output = terminal();
  unfoldRow(output, [folder, "Supply.oil_head"], { named: undefined, write: undefined });
  expect(output.text()).toContain("OIL.HEAD in Supply.oil_head, unfolded into 6 rows");
  expect(output.text()).toMatch(
    /^oil_head_h +Oil is lighter.* mm +17\.8161 +0\.213793 +53\.4483 {2}=E9\*\(E11\/E10-1\)$/m,
  );
  expect(readFolder(folder).pages[0]?.rows.length).toBe(10);

  const copy = `${sampleFolder()}-unfolded`;
  unfoldRow(terminal(), [folder, "Supply.oil_head"], { named: "oil.head", write: copy });
  const [before, after] = [folder, copy].map((one) => new LiveNotebook(readFolder(one)));
  expect(after?.notebook.pages[0]?.rows.length).toBe(16);
  for (const address of [
    "Supply.oil_head@Sloop",
    "Supply.oil_head@Pilot",
    "Supply.worst@Cruiser",
    "Side force.share@Pilot",
  ]) {
    const value = (live: LiveNotebook | undefined) => live?.value(positionOf(live.notebook, readAddress(address)));
    expect(value(after)).toEqual(value(before));
    expect(value(after)?.kind).toBe("number");
  }
  expect(readFileSync(join(copy, "free.csv"), "utf8")).toBe(readFileSync(join(folder, "free.csv"), "utf8"));
});

it("says in one sentence why a row cannot be unfolded", () => {
  const folder = sampleFolder(free);
  const run = (args: string[], named?: string) => () => unfoldRow(terminal(), args, { named, write: undefined });
  expect(run([folder])).toThrow(Misuse);
  expect(run([folder, "Supply.run"])).toThrow("Supply.run calls no named function; choose a row that does.");
  expect(run([folder, "Supply.oil_head"], "MOTOR.LEAN")).toThrow("does not call MOTOR.LEAN (it calls OIL.HEAD)");
  expect(run([folder, "Supply.drop"])).toThrow("CONDUCTOR.DROP cannot be unfolded: its step r reads the table");
});
