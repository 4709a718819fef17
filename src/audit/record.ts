import type { Notebook } from "../notebook/model";
import { retold } from "../words/retold";
import { said, say } from "../words/say";
import type { Audit } from "./audit";
import { type Finding, placeOf } from "./finding";
import { type Review, reviewsOf } from "./review";
import { ruleNamed } from "./rule-words";

/** A part of the record: a table, or nothing to say. */
export interface RecordPart {
  readonly title: string;
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The record of an audit as data: what is printed and signed. */
export interface AuditRecord {
  readonly job: string;
  readonly revision: string;
  readonly date: string;
  readonly sum: string;
  /** Rules that could not be applied in full, with the reason. */
  readonly note: string | undefined;
  readonly parts: readonly RecordPart[];
  readonly limits: string;
}

const findingRow = (finding: Finding): string[] => [
  said(finding.severity),
  placeOf(finding),
  ruleNamed(finding.rule),
  retold(finding.message),
];

const reviewRow = ({ place, who, when, stale, lost }: Review): string[] => [
  place,
  who,
  when,
  lost ? say`no longer there` : stale ? say`stale: something behind it has changed` : say`stands`,
];

/** Open findings, accepted ones with their reasons, and the reviews with what has become of them. */
export function recordOf(notebook: Notebook, audit: Audit): AuditRecord {
  const { title, revision, date } = notebook.about;
  const open = audit.open.map(findingRow);
  const accepted = audit.accepted.map((finding) => {
    const { who, when, reason } = finding.acceptance;
    return [placeOf(finding), ruleNamed(finding.rule), retold(finding.message), reason, who, when];
  });
  const reviews = reviewsOf(notebook).map(reviewRow);
  return {
    job: title,
    revision: revision ?? "",
    date: date ?? "",
    sum: say`${audit.formulas} formulas, ${open.length} open findings, ${accepted.length} accepted, ${reviews.length} reviews.`,
    note: audit.note && retold(audit.note),
    parts: [
      { title: say`Still open`, header: [say`Level`, say`Place`, say`Rule`, say`Finding`], rows: open },
      {
        title: say`Accepted`,
        header: [say`Place`, say`Rule`, say`Finding`, say`Reason`, say`By`, say`On`],
        rows: accepted,
      },
      { title: say`Reviewed`, header: [say`Place`, say`By`, say`On`, say`State`], rows: reviews },
    ],
    limits: say`Checked against the rules of this program. Local codes and licensed practice decide.`,
  };
}

const escaped = (text: string): string => text.replaceAll("|", "\\|").replaceAll("\n", " ");

const table = ({ header, rows }: RecordPart): string =>
  [header, header.map(() => "---"), ...rows].map((row) => `| ${row.map(escaped).join(" | ")} |`).join("\n");

/** The record of an audit as Markdown, to print and sign. */
export function auditRecord(notebook: Notebook, audit: Audit): string {
  const { job, revision, date, sum, note, parts, limits } = recordOf(notebook, audit);
  const head = [revision && say`Revision ${revision}`, date].filter(Boolean).join(", ");
  return [
    `# ${say`Audit record: ${job}`}\n`,
    ...(head ? [`${head}\n`] : []),
    `${sum}\n`,
    ...(note ? [`${note}\n`] : []),
    ...parts.map((part) => `## ${part.title}\n\n${part.rows.length > 0 ? table(part) : say`Nothing.`}\n`),
    `${limits}\n`,
    `${say`Name`}: ____________________  ${say`Date`}: ____________  ${say`Signature`}: ____________________\n`,
  ].join("\n");
}
