import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { printAudit } from "../../src/cli/audit";
import { sampleFiles } from "../notebook/sample";
import { sampleFolder, terminal } from "./terminal";

const supply = sampleFiles.get("supply.csv") ?? "";
/** The sample with a sound unit in its last row, and one text of the page Supply written otherwise. */
const withCell = (from = "", to = "") => ({
  "supply.csv": supply.replace(from, to),
  "side-force.csv": (sampleFiles.get("side-force.csv") ?? "").replace("share,1", "share,N/V"),
});

async function audited(folder: string, wishes: Partial<Parameters<typeof printAudit>[2]> = {}) {
  const output = terminal();
  const failed = await printAudit(output, folder, { json: false, record: false, ...wishes });
  return { failed, text: output.text() };
}

describe("the audit on the terminal", () => {
  it.each(["sheets/three-hulls", "sheets/one-hull-three-layouts", "sheets/course"])(
    "finds no error in %s as it is shipped",
    { timeout: 60_000 },
    async (folder) => {
      const { failed, text } = await audited(folder);
      expect(text).toMatch(/^0 errors, \d+ warnings?, \d+ notes?, \d+ accepted, in \d+ formulas$/m);
      expect(failed).toBe(false);
    },
  );

  it("ends with 1 when there is an error, and with 0 when there is none", { timeout: 120_000 }, () => {
    const run = (folder: string) => spawnSync(process.execPath, ["src/cli/launch.mjs", "audit", folder]);
    expect(run(sampleFolder(withCell())).status).toBe(0);
    expect(run(sampleFolder(withCell("Voltage lost,drop,V", "Voltage lost,drop,mV"))).status).toBe(1);
  });

  it("gives a list of findings as JSON, each with rule, severity, page, key, option, cell and message", async () => {
    const { failed, text } = await audited(sampleFolder(withCell("Voltage lost,drop,V", "Voltage lost,drop,mV")), {
      json: true,
    });
    expect(failed).toBe(true);
    const findings = JSON.parse(text);
    const error = findings.find(({ severity }: { severity: string }) => severity === "error");
    expect(Object.keys(error)).toEqual(["rule", "severity", "page", "key", "option", "cell", "message"]);
    expect(error).toMatchObject({ rule: "units", page: "Supply", key: "drop", option: "Sloop", cell: "E7" });
  });

  it("lists what was adapted against the notebook as it was shipped", async () => {
    const { text } = await audited(sampleFolder(withCell("F5,50", "F5,60")), { against: sampleFolder(withCell()) });
    expect(text).toContain("Supply.drop  adapted: formula was =CONDUCTOR.DROP(E3,E4,E5,50)");
    expect(text).toContain("in Cruiser");
  });
});
