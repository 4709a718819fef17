import { readFolder } from "../../src/cli/folder";
import { LiveNotebook } from "../../src/notebook/live";
import { judge } from "../audit/faults/judge";
import { seededFaults } from "../audit/faults/seeded-faults";
import { judgedWords, tallyOf, unseenReasons } from "../audit/faults/tally";
import { seeded } from "../formula/random-expression";
import { table } from "./measure";

const share = (part: number, of: number): string => (of === 0 ? "–" : `${((part / of) * 100).toFixed(1)} %`);

/** So many mistakes of every kind in each notebook: recall and precision kind by kind, and what nothing can see. */
export function faultsBench(folders: readonly string[], each: number): string {
  const judged = folders.flatMap((folder) => {
    const shipped = readFolder(folder);
    const live = new LiveNotebook(shipped);
    const faults = seededFaults(seeded(1), live, each);
    live.close();
    return judge(shipped, faults);
  });
  const rows = tallyOf(judged).map((one) => [
    one.kind,
    one.spread,
    String(one.made),
    String(one.evident),
    share(one.found, one.evident),
    share(one.foundWithShipped, one.made),
    String(one.findings),
    share(one.inItsRow, one.findings),
    share(one.findings - one.elsewhere, one.findings),
  ]);
  const header = [
    "kind",
    "made in",
    "made",
    "evident",
    "recall",
    "with shipped",
    "findings",
    "in its row",
    "precision",
  ];
  const missed = judged.filter((one) => "seenBy" in one.evidence && !one.found).map(judgedWords);
  const reasons = [...unseenReasons(judged)].map(([reason, count]) => `${String(count).padStart(4)}  ${reason}`);
  return [
    table([header, ...rows]),
    "\nNot to be told in principle, and listed as such:",
    ...reasons,
    `\nMissed, ${missed.length}:`,
    ...missed,
  ].join("\n");
}
