import { type Audit, auditNotebook } from "../audit/audit";
import { type Finding, placeOf, type Severity } from "../audit/finding";
import { auditRecord } from "../audit/record";
import { ruleNamed } from "../audit/rule-words";
import { LiveNotebook } from "../notebook/live";
import type { Language } from "../words/language";
import { retold } from "../words/retold";
import { counted, said, say } from "../words/say";
import { readFolder } from "./folder";
import { speakWith } from "./language";
import type { Output } from "./output";

export interface AuditWishes {
  readonly json: boolean;
  /** The record that one prints and signs, instead of the list of findings. */
  readonly record: boolean;
  /** Folder of the notebook as it was shipped, to list what was adapted. */
  readonly against?: string | undefined;
  /** Of what a person reads; English when left out. */
  readonly language?: Language;
}

const line = (finding: Finding): string =>
  `${said(finding.severity).padEnd(7)}  ${placeOf(finding)}  ${ruleNamed(finding.rule)}: ${retold(finding.message)}`;

function summaryOf({ open, accepted, formulas }: Audit): string {
  const count = (severity: Severity) => open.filter((finding) => finding.severity === severity).length;
  return [
    counted(count("error"), "error"),
    counted(count("warning"), "warning"),
    counted(count("note"), "note"),
    say`${accepted.length} accepted`,
    say`in ${formulas} formulas`,
  ].join(", ");
}

/**
 * Audits the notebook of a folder. The audit itself is done in English, because a notebook knows an accepted finding
 * by its English words; what a person reads is told again.
 *
 * @returns whether there is a finding of level error that nobody has accepted.
 */
export async function printAudit(output: Output, folder: string, wishes: AuditWishes): Promise<boolean> {
  const live = new LiveNotebook(readFolder(output.path(folder)));
  const shipped = wishes.against === undefined ? undefined : readFolder(output.path(wishes.against));
  const audit = auditNotebook(live, shipped ? { shipped } : {});
  if (wishes.json) {
    output.write(`${JSON.stringify(audit.open, undefined, 2)}\n`);
  } else {
    await speakWith(wishes.language ?? "en");
    const notes = audit.note ? [retold(audit.note)] : [];
    const text = wishes.record
      ? auditRecord(live.notebook, audit)
      : `${[...audit.open.map(line), ...notes, summaryOf(audit)].join("\n")}\n`;
    output.write(text);
  }
  live.close();
  return audit.open.some(({ severity }) => severity === "error");
}
