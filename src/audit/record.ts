import type { Notebook } from "../notebook/model";
import type { Audit } from "./audit";
import { type Finding, placeOf } from "./finding";
import { type Review, reviewsOf } from "./review";

const escaped = (text: string): string => text.replaceAll("|", "\\|").replaceAll("\n", " ");

const table = (header: readonly string[], rows: readonly (readonly string[])[]): string =>
  [header, header.map(() => "---"), ...rows].map((row) => `| ${row.map(escaped).join(" | ")} |`).join("\n");

const findingRow = (finding: Finding): string[] => [finding.severity, placeOf(finding), finding.rule, finding.message];

const reviewRow = ({ place, who, when, stale, lost }: Review): string[] => [
  place,
  who,
  when,
  lost ? "no longer there" : stale ? "stale: something behind it has changed" : "stands",
];

const section = (title: string, body: string): string => `## ${title}\n\n${body}\n`;

/**
 * The record of an audit as Markdown, to print and sign: open findings, accepted ones with their reasons, and
 * the reviews with what has become of them.
 */
export function auditRecord(notebook: Notebook, audit: Audit): string {
  const { title, revision, date } = notebook.about;
  const open = audit.open.map(findingRow);
  const accepted = audit.accepted.map((finding) => {
    const { who, when, reason } = finding.acceptance;
    return [placeOf(finding), finding.rule, finding.message, reason, who, when];
  });
  const reviews = reviewsOf(notebook).map(reviewRow);
  const head = [revision && `Revision ${revision}`, date].filter(Boolean).join(", ");
  return [
    `# Audit record: ${title}\n`,
    ...(head ? [`${head}\n`] : []),
    `${audit.formulas} formulas, ${open.length} open findings, ${accepted.length} accepted, ${reviews.length} reviews.\n`,
    ...(audit.note ? [`${audit.note}\n`] : []),
    section("Open", open.length ? table(["Level", "Place", "Rule", "Finding"], open) : "Nothing."),
    section(
      "Accepted",
      accepted.length ? table(["Place", "Rule", "Finding", "Reason", "By", "On"], accepted) : "Nothing.",
    ),
    section("Reviewed", reviews.length ? table(["Place", "By", "On", "State"], reviews) : "Nothing."),
    "Checked against the rules of this program. Local codes and licensed practice decide.\n",
    "Name: ____________________  Date: ____________  Signature: ____________________\n",
  ].join("\n");
}
