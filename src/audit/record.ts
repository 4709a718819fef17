import type { Notebook } from "../notebook/model";
import type { Audit } from "./audit";
import { type Finding, placeOf } from "./finding";
import { type Review, reviewsOf } from "./review";

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

const findingRow = (finding: Finding): string[] => [finding.severity, placeOf(finding), finding.rule, finding.message];

const reviewRow = ({ place, who, when, stale, lost }: Review): string[] => [
  place,
  who,
  when,
  lost ? "no longer there" : stale ? "stale: something behind it has changed" : "stands",
];

/** Open findings, accepted ones with their reasons, and the reviews with what has become of them. */
export function recordOf(notebook: Notebook, audit: Audit): AuditRecord {
  const { title, revision, date } = notebook.about;
  const open = audit.open.map(findingRow);
  const accepted = audit.accepted.map((finding) => {
    const { who, when, reason } = finding.acceptance;
    return [placeOf(finding), finding.rule, finding.message, reason, who, when];
  });
  const reviews = reviewsOf(notebook).map(reviewRow);
  return {
    job: title,
    revision: revision ?? "",
    date: date ?? "",
    sum: `${audit.formulas} formulas, ${open.length} open findings, ${accepted.length} accepted, ${reviews.length} reviews.`,
    note: audit.note,
    parts: [
      { title: "Open", header: ["Level", "Place", "Rule", "Finding"], rows: open },
      { title: "Accepted", header: ["Place", "Rule", "Finding", "Reason", "By", "On"], rows: accepted },
      { title: "Reviewed", header: ["Place", "By", "On", "State"], rows: reviews },
    ],
    limits: "Checked against the rules of this program. Local codes and licensed practice decide.",
  };
}

const escaped = (text: string): string => text.replaceAll("|", "\\|").replaceAll("\n", " ");

const table = ({ header, rows }: RecordPart): string =>
  [header, header.map(() => "---"), ...rows].map((row) => `| ${row.map(escaped).join(" | ")} |`).join("\n");

/** The record of an audit as Markdown, to print and sign. */
export function auditRecord(notebook: Notebook, audit: Audit): string {
  const { job, revision, date, sum, note, parts, limits } = recordOf(notebook, audit);
  const head = [revision && `Revision ${revision}`, date].filter(Boolean).join(", ");
  return [
    `# Audit record: ${job}\n`,
    ...(head ? [`${head}\n`] : []),
    `${sum}\n`,
    ...(note ? [`${note}\n`] : []),
    ...parts.map((part) => `## ${part.title}\n\n${part.rows.length > 0 ? table(part) : "Nothing."}\n`),
    `${limits}\n`,
    "Name: ____________________  Date: ____________  Signature: ____________________\n",
  ].join("\n");
}
