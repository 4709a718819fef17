import { describe, expect, it } from "vitest";
import { auditNotebook } from "../../src/audit/audit";
import type { Finding } from "../../src/audit/finding";
import { review } from "../../src/audit/review";
import { setCells } from "../../src/notebook/edit-cells";
import { feedsOf } from "../../src/notebook/feeds";
import { LiveNotebook } from "../../src/notebook/live";
import { lead, type Notebook, type Position, pageByName } from "../../src/notebook/model";
import { rowAddress } from "../../src/notebook/row-entry";
import { seeded } from "../formula/random-expression";
import { formulaCells, worked, workedFolders } from "../notebook/worked";
import { type Fault, seededFaults, withFault } from "./seeded-faults";

/** Mistakes in one cell or in the unit of a row; the neighbours and the units give them away. */
const inOneCell = (kind: string): boolean => !kind.endsWith("in all options");

const mark = ({ rule, page, key, option, cell, message }: Finding): string =>
  [rule, page, key, option, cell, message].join("|");

/** Rows that hold a fault, and all rows behind them. */
function touchedRows(notebook: Notebook, fault: Fault): ReadonlySet<string> {
  const feeds = feedsOf(notebook);
  const rows = new Set<string>();
  const todo: Position[] = fault.cells.flatMap((cell) =>
    cell.column === lead.unit
      ? Array.from({ length: 3 }, (_, i) => ({ page: cell.page, row: cell.row, column: cell.column + 2 + i }))
      : [cell],
  );
  const seen = new Set<string>();
  for (let at = todo.pop(); at; at = todo.pop()) {
    const key = `${at.page} ${at.row} ${at.column}`;
    if (seen.has(key)) continue;
    seen.add(key);
    rows.add(`${at.page} ${at.row}`);
    todo.push(...feeds.fedBy(at));
  }
  return rows;
}

interface Tally {
  made: number;
  found: number;
  foundAgainstShipped: number;
  findings: number;
  elsewhere: number;
}

function tallyOf(folder: string): ReadonlyMap<string, Tally> {
  const shipped = worked(folder);
  const clean = new LiveNotebook(shipped);
  const before = new Set(auditNotebook(clean).open.map(mark));
  const tally = new Map<string, Tally>();
  for (const fault of seededFaults(seeded(folder.length), clean, 36)) {
    const sum = tally.get(fault.kind) ?? { made: 0, found: 0, foundAgainstShipped: 0, findings: 0, elsewhere: 0 };
    tally.set(fault.kind, sum);
    const live = new LiveNotebook(withFault(shipped, fault));
    const wishes = inOneCell(fault.kind) ? {} : { shipped };
    const now = auditNotebook(live, wishes).open.filter((finding) => !before.has(mark(finding)));
    const own = now.filter(({ rule }) => rule !== "adapted");
    const touched = touchedRows(live.notebook, fault);
    sum.made++;
    if (own.length > 0) sum.found++;
    if (now.length > 0) sum.foundAgainstShipped++;
    sum.findings += own.length;
    sum.elsewhere += own.filter(({ page, cell }) => {
      const id = pageByName(live.notebook, page)?.id;
      return !touched.has(`${id} ${Number(/\d+$/.exec(cell)?.[0]) - 1}`);
    }).length;
    live.close();
  }
  clean.close();
  return tally;
}

describe("the audit of the worked notebooks", () => {
  it.each(workedFolders)(
    "%s with single mistakes: at least 95 of 100 of every kind are found, in the right rows",
    {
      timeout: 900_000,
    },
    (folder) => {
      const { tally } = tallyOf(folder);
      const report = [...tally].map(([kind, sum]) => ({ kind, ...sum }));
      console.table(report);
      const oneCell = report.filter(({ kind }) => inOneCell(kind));
      expect(report.reduce((sum, { made }) => sum + made, 0)).toBeGreaterThan(500);
      for (const { kind, made, found } of oneCell) {
        expect(found / made, `${kind}: ${found} of ${made}`).toBeGreaterThanOrEqual(0.95);
      }
      // The same mistake in every option is told apart from the right formula by units, or by the shipped notebook.
      for (const { kind, made, foundAgainstShipped } of report) {
        expect(foundAgainstShipped / made, `${kind}, with the shipped notebook at hand`).toBeGreaterThanOrEqual(0.95);
      }
      const findings = oneCell.reduce((sum, one) => sum + one.findings, 0);
      const elsewhere = oneCell.reduce((sum, one) => sum + one.elsewhere, 0);
      expect(1 - elsewhere / findings).toBeGreaterThanOrEqual(0.95);
    },
  );

  it.each(workedFolders)(
    "%s as it is: no error, at most one finding for 200 formulas",
    { timeout: 60_000 },
    (folder) => {
      const live = new LiveNotebook(worked(folder));
      const { open, formulas } = auditNotebook(live);
      expect(formulas).toBe(formulaCells(live.notebook).length);
      expect(open.filter(({ severity }) => severity === "error")).toEqual([]);
      expect(open.length).toBeLessThanOrEqual(formulas / 200);
      live.close();
    },
  );

  it.each(workedFolders)(
    "%s: a review goes stale when an input behind it changes, and not before",
    {
      timeout: 120_000,
    },
    (folder) => {
      const notebook = worked(folder);
      const feeds = feedsOf(notebook);
      const random = seeded(5);
      const results = formulaCells(notebook).filter((cell) => feeds.feeding(cell).length > 0);
      const stale = (one: Notebook): number => {
        const live = new LiveNotebook(one);
        const count = auditNotebook(live).open.filter(({ rule }) => rule === "stale-review").length;
        live.close();
        return count;
      };
      let made = 0;
      while (made < 10) {
        const cell = results[Math.floor(random() * results.length)] as Position;
        const page = notebook.pages.find(({ id }) => id === cell.page);
        const place = page && rowAddress(page, cell.row);
        let input: Position = cell;
        for (let next: Position | undefined = cell; next; next = feeds.feeding(next)[0]) input = next;
        const text = notebook.pages.find(({ id }) => id === input.page)?.rows[input.row]?.[input.column] ?? "";
        if (!place || !/^\d+$/.test(text) || input.column !== cell.column) continue;
        const choices = notebook.about.rows;
        const reviewed = review({ ...notebook, about: { ...notebook.about, rows: {} } }, place, "N. N.", "2026-11-25");
        expect(stale({ ...reviewed, about: { ...reviewed.about, rows: choices } })).toBe(0);
        const changed = setCells(reviewed, [{ ...input, text: String(Number(text) + 1) }]);
        expect(stale(changed)).toBe(1);
        made++;
      }
    },
  );
});
