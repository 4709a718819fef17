import type { Notebook } from "../notebook/model";
import { type Report, Reporter } from "./report";

/** What the page sends: a notebook to audit, with the number by which it is answered. */
export interface ReportRequest {
  readonly ask: number;
  readonly notebook: Notebook;
  readonly shipped: Notebook | undefined;
}

export type ReportReply =
  | { readonly ask: number; readonly report: Report }
  /** Why there is no report. */
  | { readonly ask: number; readonly problem: string };

/**
 * Audits away from the page, so that a long audit never holds up a key. It speaks English: an accepted finding is
 * known again in the file by its words, whatever language the page speaks.
 */
const reporter = new Reporter();

addEventListener("message", ({ data: { ask, notebook, shipped } }: MessageEvent<ReportRequest>) => {
  let reply: ReportReply;
  try {
    reply = { ask, report: reporter.report(notebook, shipped) };
  } catch (problem) {
    reply = { ask, problem: problem instanceof Error ? problem.message : String(problem) };
  }
  postMessage(reply);
});
