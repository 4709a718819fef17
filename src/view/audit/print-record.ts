import { acceptanceOf } from "../../audit/accept";
import type { Audit } from "../../audit/audit";
import { recordOf } from "../../audit/record";
import type { Report } from "../../audit/report";
import type { Notebook } from "../../notebook/model";
import { auditRecordSheets } from "../../paper/audit-record";
import { say } from "../../words/say";
import { inBackground } from "../background";
import type { Desk } from "../desk";
import { fileName, handOut } from "../files/hand-out";
import { printDocument } from "../files/print-document";

/** The audit as it stands with what has been accepted since. */
function auditNow(notebook: Notebook, { audit }: Report): Audit {
  const judged = [...audit.open, ...audit.accepted].map((finding) => ({
    finding,
    acceptance: acceptanceOf(notebook, finding),
  }));
  return {
    ...audit,
    open: judged.flatMap(({ finding, acceptance }) => (acceptance ? [] : [finding])),
    accepted: judged.flatMap(({ finding, acceptance }) => (acceptance ? [{ ...finding, acceptance }] : [])),
  };
}

/** Prints the audit's record, or saves it as a file. */
export function handRecord(desk: Desk, report: Report, what: "print" | "save"): void {
  const { notebook } = desk;
  const sheets = auditRecordSheets(recordOf(notebook, auditNow(notebook, report)), "A4");
  if (what === "print") {
    inBackground(printDocument(sheets));
    return;
  }
  const name = `audit-record-${fileName(notebook.about.title)}.html`;
  handOut(name, sheets, "text/html;charset=utf-8");
  desk.say(say`The audit's record saved as ${name}.`);
}
