import { auditNotebook } from "../../src/audit/audit";
import { readFolder } from "../../src/cli/folder";
import { addOption } from "../../src/notebook/edit-options";
import { LiveNotebook } from "../../src/notebook/live";
import type { Notebook } from "../../src/notebook/model";
import { optionsOf } from "../../src/notebook/model";
import { alternate, short } from "./measure";

/** The notebook with its last option copied until there are so many. */
function withOptions(notebook: Notebook, count: number): Notebook {
  const missing = Math.max(0, count - optionsOf(notebook).length);
  return Array.from({ length: missing }, (_, i) => `Copy ${i + 1}`).reduce(
    (all, name) => addOption(all, name),
    notebook,
  );
}

/** Full audits of a calculated notebook as it is and with many options; the shipped notebook is at hand. */
export function auditBench(folder: string, count: number, rounds: number): string {
  const shipped = readFolder(folder);
  const many = new LiveNotebook(withOptions(shipped, count));
  const own = new LiveNotebook(shipped);
  const contenders = [own, many].map((live) => ({
    name: `${optionsOf(live.notebook).length} options, ${auditNotebook(live).formulas} formulas`,
    runs: 1,
    once: () => auditNotebook(live, { shipped }),
  }));
  const lines = alternate(contenders, rounds).map(({ name, micros, rounds: all }) => {
    const most = Math.max(...all) / 1e6;
    return `${name}: median ${short(micros / 1e6)} s, longest ${short(most)} s`;
  });
  own.close();
  many.close();
  return lines.join("\n");
}
