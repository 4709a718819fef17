import type { SheetTexts } from "../engine/engine";
import { say } from "../words/say";
import type { Progress } from "./carry-out";
import type { Asked, Studies, StudyName, StudyReply, StudyRequest } from "./messages";
import type { Subject } from "./subject";

/** The part of a worker that is used here; a test puts its own in its place. */
export interface StudyPort {
  postMessage(request: StudyRequest): void;
  addEventListener(type: "message", listener: (event: MessageEvent<StudyReply>) => void): void;
}

export interface AskWishes {
  readonly signal?: AbortSignal;
  readonly progress?: (progress: Progress) => void;
}

interface Waiting {
  readonly resolve: (answer: never) => void;
  readonly reject: (cause: Error) => void;
  readonly progress: ((progress: Progress) => void) | undefined;
}

/** A study was stopped, by its signal or because the notebook changed. */
export class Stopped extends Error {
  override readonly name = "Stopped";
}

/** Who calculates in the worker, and why it is the engine where it is. */
export type Ready = Omit<Extract<StudyReply, { kind: "ready" }>, "kind">;

/**
 * The page's side of the talk with the study worker:
 * `new StudyClient(new Worker(new URL("../study/worker.ts", import.meta.url), { type: "module" }))`.
 */
export class StudyClient {
  private asks = 0;
  private readonly waiting = new Map<number, Waiting>();
  private readonly readies: ((ready: Ready) => void)[] = [];

  constructor(private readonly port: StudyPort) {
    port.addEventListener("message", ({ data }) => this.take(data));
  }

  /** Gives the worker what is studied; again after every change of the notebook, which stops all studies. */
  open(subject: Subject, sheets: readonly SheetTexts[]): Promise<Ready> {
    // Only what a sheet is made of may be sent; pages know more.
    const plain = sheets.map(({ name, rows }) => ({ name, rows }));
    this.port.postMessage({ kind: "subject", subject, sheets: plain });
    return new Promise((resolve) => this.readies.push(resolve));
  }

  /** @throws Stopped, or an Error with one sentence when the study is refused. */
  ask<K extends StudyName>(
    study: K,
    question: Studies[K]["question"],
    wishes: AskWishes = {},
  ): Promise<Studies[K]["answer"]> {
    const ask = ++this.asks;
    const { signal, progress } = wishes;
    if (signal?.aborted) return Promise.reject(new Stopped(say`The study was stopped.`));
    signal?.addEventListener("abort", () => this.port.postMessage({ kind: "stop", ask }), { once: true });
    this.port.postMessage({ kind: "ask", ask, ...({ study, question } as Asked) });
    return new Promise((resolve, reject) => this.waiting.set(ask, { resolve, reject, progress }));
  }

  private take(reply: StudyReply): void {
    if (reply.kind === "ready") {
      this.readies.shift()?.({ by: reply.by, why: reply.why });
      return;
    }
    const waiting = this.waiting.get(reply.ask);
    if (reply.kind === "progress") {
      waiting?.progress?.({ done: reply.done, of: reply.of });
      return;
    }
    this.waiting.delete(reply.ask);
    if (reply.kind === "answer") waiting?.resolve(reply.answer as never);
    else if (reply.kind === "stopped") waiting?.reject(new Stopped(say`The study was stopped.`));
    else waiting?.reject(new Error(reply.sentence));
  }
}
