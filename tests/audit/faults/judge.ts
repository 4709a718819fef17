import { auditNotebook } from "../../../src/audit/audit";
import type { Finding } from "../../../src/audit/finding";
import { review } from "../../../src/audit/review";
import { sameValue } from "../../../src/engine/value";
import { cellName } from "../../../src/notebook/cell-name";
import { feedsOf } from "../../../src/notebook/feeds";
import { LiveNotebook } from "../../../src/notebook/live";
import { firstOption, lead, type Notebook, optionsOf, type Position, pageByName } from "../../../src/notebook/model";
import { rowOfKey } from "../../../src/notebook/rows";
import { usersOf } from "./evidence";
import { type Evidence, type Fault, withFault } from "./fault";

/** What the audit says of one mistake. */
export interface Judged {
  readonly fault: Fault;
  /** Where the mistake is: `Supply.drop@Cruiser`. */
  readonly where: string;
  /** With what the calculation itself gives away. */
  readonly evidence: Evidence;
  /** Findings that the clean notebook does not have, without those that come of knowing the shipped one. */
  readonly findings: readonly Finding[];
  /** So many of them stand in a row that holds the mistake. */
  readonly inItsRow: number;
  /** Those of them that are neither in a row of the mistake nor in one before or behind it. */
  readonly elsewhere: readonly Finding[];
  readonly found: boolean;
  /** Told as a difference from the notebook as it was shipped. */
  readonly foundAsShipped: boolean;
}

const markOf = ({ rule, page, key, option, cell, message }: Finding): string =>
  [rule, page, key, option, cell, message].join("|");

const rowName = (page: string, row: number): string => `${page} ${row}`;

/** The rows that hold a mistake, what their formulas read before and read now, and all rows behind them. */
function rowsAround(clean: Notebook, faulty: Notebook, { cells }: Fault): ReadonlySet<string> {
  const options = optionsOf(clean).length;
  const own: Position[] = cells.flatMap((cell) =>
    cell.column === lead.unit
      ? Array.from({ length: options }, (_, i) => ({ page: cell.page, row: cell.row, column: firstOption + i }))
      : [cell],
  );
  const rows = new Set<string>();
  for (const notebook of [clean, faulty]) {
    for (const cell of own) for (const { page, row } of feedsOf(notebook).feeding(cell)) rows.add(rowName(page, row));
  }
  const seen = new Set<string>();
  const todo = [...own];
  for (let at = todo.pop(); at; at = todo.pop()) {
    const key = `${at.page} ${at.row} ${at.column}`;
    if (seen.has(key)) continue;
    seen.add(key);
    rows.add(rowName(at.page, at.row));
    todo.push(...feedsOf(faulty).fedBy(at));
  }
  return rows;
}

function rowOf(notebook: Notebook, { page: name, key, cell }: Finding): string {
  const page = pageByName(notebook, name);
  const row = page && key ? rowOfKey(page, key) : Number(/\d+$/.exec(cell)?.[0]) - 1;
  return rowName(page?.id ?? name, row);
}

function isAround(notebook: Notebook, rows: ReadonlySet<string>, fault: Fault, finding: Finding): boolean {
  if (finding.rule === "stale-review") return finding.message.startsWith(`${fault.ticked} `);
  return rows.has(rowOf(notebook, finding));
}

/** How many cells show an error. */
const errorsIn = (live: LiveNotebook): number =>
  live.notebook.pages.reduce(
    (sum, page) =>
      sum +
      page.rows.reduce(
        (inRow, cells, row) =>
          inRow +
          cells.filter(
            (text, column) => text.startsWith("=") && live.value({ page: page.id, row, column }).kind === "error",
          ).length,
        0,
      ),
    0,
  );

/** The evidence as the calculation completes it: an error is seen, and a blank that no result minds is not. */
function evidenceAfter(fault: Fault, live: LiveNotebook, clean: LiveNotebook, errors: number): Evidence {
  if ("unseen" in fault.evidence) {
    return errorsIn(live) > errors ? { seenBy: "an error in place of a result" } : fault.evidence;
  }
  const blanks = fault.cells.filter(({ text }) => text === "");
  const minded = blanks
    .flatMap((cell) => usersOf(clean.notebook, cell))
    .some((user) => !sameValue(live.value(user), clean.value(user)));
  return blanks.length > 0 && !minded ? { unseen: "no result takes the cell as the notebook stands" } : fault.evidence;
}

/** Makes mistakes one after the other in one open notebook, and asks the audit of each. */
export function judge(shipped: Notebook, faults: readonly Fault[]): Judged[] {
  const live = new LiveNotebook(shipped);
  const clean = new LiveNotebook(shipped);
  const errors = errorsIn(live);
  const before = new Set(auditNotebook(live, { shipped }).open.map(markOf));
  const judged = faults.map((fault): Judged => {
    const start = fault.ticked === undefined ? shipped : review(shipped, fault.ticked, "N. N.", "2026-11-26");
    live.follow(withFault(start, fault));
    const all = auditNotebook(live, { shipped }).open.filter((finding) => !before.has(markOf(finding)));
    const findings = all.filter(({ rule }) => rule !== "adapted");
    const rows = rowsAround(shipped, live.notebook, fault);
    const own = new Set(fault.cells.map(({ page, row }) => rowName(page, row)));
    const elsewhere = findings.filter((finding) => !isAround(live.notebook, rows, fault, finding));
    const [first] = fault.cells;
    return {
      fault,
      where: (first && cellName(shipped, first)?.address) ?? "",
      evidence: evidenceAfter(fault, live, clean, errors),
      findings,
      inItsRow: findings.filter((finding) => own.has(rowOf(live.notebook, finding))).length,
      elsewhere,
      found: findings.length > elsewhere.length,
      foundAsShipped: all.some(({ rule }) => rule === "adapted"),
    };
  });
  live.close();
  clean.close();
  return judged;
}
