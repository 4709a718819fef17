import { auditNotebook } from "../audit/audit";
import { type Finding, placeOf } from "../audit/finding";
import { auditRecord } from "../audit/record";
import { LiveNotebook } from "../notebook/live";
import { readFolder } from "./folder";
import type { Output } from "./output";

export interface AuditWishes {
  readonly json: boolean;
  /** The record that one prints and signs, instead of the list of findings. */
  readonly record: boolean;
  /** Folder of the notebook as it was shipped, to list what was adapted. */
  readonly against?: string | undefined;
}

const line = (finding: Finding): string =>
  `${finding.severity.padEnd(7)}  ${placeOf(finding)}  ${finding.rule}: ${finding.message}`;

const counted = (findings: readonly Finding[], severity: string): string => {
  const count = findings.filter((finding) => finding.severity === severity).length;
  return `${count} ${severity}${count === 1 ? "" : "s"}`;
};

/**
 * Audits the notebook of a folder.
 *
 * @returns whether there is a finding of level error that nobody has accepted.
 */
export function printAudit(output: Output, folder: string, wishes: AuditWishes): boolean {
  const live = new LiveNotebook(readFolder(output.path(folder)));
  const shipped = wishes.against === undefined ? undefined : readFolder(output.path(wishes.against));
  const audit = auditNotebook(live, shipped ? { shipped } : {});
  if (wishes.json) {
    output.write(`${JSON.stringify(audit.open, undefined, 2)}\n`);
  } else if (wishes.record) {
    output.write(auditRecord(live.notebook, audit));
  } else {
    const summary = `${counted(audit.open, "error")}, ${counted(audit.open, "warning")}, ${counted(audit.open, "note")}, ${audit.accepted.length} accepted, in ${audit.formulas} formulas`;
    output.write(`${[...audit.open.map(line), ...(audit.note ? [audit.note] : []), summary].join("\n")}\n`);
  }
  live.close();
  return audit.open.some(({ severity }) => severity === "error");
}
