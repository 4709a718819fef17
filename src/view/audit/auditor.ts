import type { Report } from "../../audit/report";
import type { ReportReply, ReportRequest } from "../../audit/worker";
import type { Notebook } from "../../notebook/model";
import { say } from "../../words/say";
import { inBackground } from "../background";
import type { Desk } from "../desk";
import { shipped, shippedNotebook } from "../shipped";

/** So long after a change the notebook is audited again, in ms: one typing after the other is one audit. */
const pause = 300;

/** What the worker has said, and of which notebook. */
export interface Said {
  readonly report: Report;
  readonly of: Notebook;
}

/** A page's bytes are of no use to the worker. */
const plain = ({ about, pages }: Notebook): Notebook => ({
  about,
  pages: pages.map(({ id, name, file, rows }) => ({ id, name, file, rows })),
});

/** Has the open notebook audited in a worker, again after every change; one audit at a time. */
export class Auditor {
  private worker: Worker | undefined;
  private asks = 0;
  private asked: Notebook | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private heard: Said | undefined;
  private why: string | undefined;

  /** @param update is called whenever there is something new. */
  constructor(
    private readonly desk: Desk,
    private readonly update: () => void,
  ) {
    desk.subscribe(({ kind }) => {
      if (kind === "opened") this.heard = undefined;
      if (kind === "opened" || kind === "change") this.due();
    });
    this.ask();
  }

  /** The last report; it may be of the notebook as it was before the last change. */
  get said(): Said | undefined {
    return this.heard;
  }

  /** Why there is no report. */
  get problem(): string | undefined {
    return this.why;
  }

  /** Whether the report is of the notebook as it is now. */
  get isFresh(): boolean {
    return this.heard?.of === this.desk.notebook;
  }

  private due(): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.ask(), pause);
  }

  private ask(): void {
    const { notebook } = this.desk;
    if (this.asked || this.heard?.of === notebook) return;
    this.asked = notebook;
    inBackground(this.send(notebook));
  }

  private async send(notebook: Notebook): Promise<void> {
    const own = shipped.find(({ folder }) => folder === notebook.about.shipped);
    const asShipped = own && (await shippedNotebook(own.folder));
    this.worker ??= this.start();
    const request: ReportRequest = {
      ask: ++this.asks,
      notebook: plain(notebook),
      shipped: asShipped && plain(asShipped),
    };
    this.worker.postMessage(request);
  }

  private start(): Worker {
    const worker = new Worker(new URL("../../audit/worker.ts", import.meta.url), { type: "module" });
    worker.addEventListener("message", ({ data }: MessageEvent<ReportReply>) => this.take(data));
    worker.addEventListener("error", ({ message }) => {
      this.worker = undefined;
      worker.terminate();
      this.take({ ask: this.asks, problem: message || say`the part that audits could not be loaded` });
    });
    return worker;
  }

  private take(reply: ReportReply): void {
    const of = this.asked;
    this.asked = undefined;
    if (!of || reply.ask !== this.asks) return;
    if ("report" in reply) {
      this.heard = { report: reply.report, of };
      this.why = undefined;
    } else {
      this.heard = undefined;
      this.why = reply.problem;
    }
    if (of !== this.desk.notebook) this.due();
    this.update();
  }
}
