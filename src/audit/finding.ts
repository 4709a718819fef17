import type { CellName } from "../notebook/cell-name";

export type Severity = "error" | "warning" | "note";

/** One thing that a rule found in one cell. */
export interface Finding {
  readonly rule: string;
  readonly severity: Severity;
  readonly page: string;
  /** Key of the row; empty where it has none. */
  readonly key: string;
  /** Empty for a whole row, and on free sheets. */
  readonly option: string;
  /** `F61`, or `A61` for a whole row. */
  readonly cell: string;
  /** One sentence: what is wrong, with its evidence, and what to do. */
  readonly message: string;
}

/** A finding of a rule at a cell. */
export function found(rule: string, severity: Severity, name: CellName, message: string): Finding {
  const cell = name.cell.slice(name.cell.lastIndexOf("!") + 1);
  return { rule, severity, page: name.page, key: name.key, option: name.option, cell, message };
}

/** How a finding's place is written and kept: `Supply.drop@Cruiser`, `Supply.drop`, or `Free!B3`. */
export function placeOf({ page, key, option, cell }: Pick<Finding, "page" | "key" | "option" | "cell">): string {
  if (!key) return `${page}!${cell}`;
  return option ? `${page}.${key}@${option}` : `${page}.${key}`;
}
