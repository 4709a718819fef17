import { acceptanceOf } from "../../audit/accept";
import type { Finding } from "../../audit/finding";
import type { Accepted } from "../../notebook/about";
import { firstOption, type Notebook, optionsOf, type Position, pageByName } from "../../notebook/model";
import { referencesOf } from "../../notebook/references";
import { rowOfKey } from "../../notebook/rows";
import type { Said } from "./auditor";

/** What one rule says in the same words of several options of a row: one finding to read, one to accept. */
export interface FindingGroup {
  readonly findings: readonly [Finding, ...Finding[]];
  /** Where it is accepted. */
  readonly acceptance: Accepted | undefined;
}

/** Where a finding stands now, by its row's key where it has one, so that rows may have moved since. */
export function positionOf(notebook: Notebook, { page: name, key, option, cell }: Finding): Position | undefined {
  const page = pageByName(notebook, name);
  if (!page) return undefined;
  const [reference] = cell ? referencesOf(`=${cell}`) : [];
  const row = key ? rowOfKey(page, key) : (reference?.from.row ?? 0);
  const column = option ? firstOption + optionsOf(notebook).indexOf(option) : (reference?.from.column ?? 0);
  return row < 0 || row >= page.rows.length || column < 0 ? undefined : { page: page.id, row, column };
}

/** The findings of a report in groups, each open or accepted as the notebook stands now. */
export function groupsOf(notebook: Notebook, { report }: Said): FindingGroup[] {
  const order = new Map(notebook.pages.map(({ name }, i) => [name, i]));
  const groups = new Map<string, [Finding, ...Finding[]]>();
  for (const finding of [...report.audit.open, ...report.audit.accepted]) {
    const acceptance = acceptanceOf(notebook, finding);
    const { rule, page, key, message, cell } = finding;
    const name = [rule, page, key || cell, message, acceptance?.reason ?? "", acceptance?.who ?? ""].join("\n");
    const known = groups.get(name);
    if (known) known.push(finding);
    else groups.set(name, [finding]);
  }
  const at = ({ findings: [{ page }] }: FindingGroup): number => order.get(page) ?? order.size;
  return [...groups.values()]
    .map((findings) => ({ findings, acceptance: acceptanceOf(notebook, findings[0]) }))
    .sort((a, b) => at(a) - at(b));
}
