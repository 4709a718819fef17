import type { Notebook } from "../notebook/model";
import { speakAs } from "../words/in-worker";
import type { Report, Reporter } from "./report";

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

/** Audits away from the page, so that a long audit never holds up a key. */
const reporter: Promise<Reporter> = speakAs(self.name)
  .then(() => import("./report"))
  .then(({ Reporter }) => new Reporter());

addEventListener("message", async ({ data: { ask, notebook, shipped } }: MessageEvent<ReportRequest>) => {
  let reply: ReportReply;
  try {
    reply = { ask, report: (await reporter).report(notebook, shipped) };
  } catch (problem) {
    reply = { ask, problem: problem instanceof Error ? problem.message : String(problem) };
  }
  postMessage(reply);
});
