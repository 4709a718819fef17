import type { Page } from "../../notebook/model";
import { type AskWishes, type Ready, StudyClient } from "../../study/client";
import type { Studies, StudyName } from "../../study/messages";
import type { Subject } from "../../study/subject";
import { say } from "../../words/say";
import { workerName } from "../speech";

/** The talk with the study worker while the studies are open; the worker starts with the first question. */
export class StudyTalk {
  private worker: Worker | undefined;
  private client: StudyClient | undefined;
  private failed: Promise<never> | undefined;
  private open: { readonly subject: Subject; readonly ready: Promise<Ready> } | undefined;

  /** @throws Stopped, or an Error with one sentence when the study is refused or the worker cannot be loaded. */
  async ask<K extends StudyName>(
    study: K,
    subject: Subject,
    pages: readonly Page[],
    question: Studies[K]["question"],
    wishes: AskWishes,
  ): Promise<{ readonly answer: Studies[K]["answer"]; readonly ready: Ready }> {
    const client = this.start();
    if (this.open?.subject !== subject) this.open = { subject, ready: client.open(subject, pages) };
    const { ready } = this.open;
    const talk = async () => ({ ready: await ready, answer: await client.ask(study, question, wishes) });
    return Promise.race([talk(), this.failed as Promise<never>]);
  }

  close(): void {
    this.worker?.terminate();
    this.worker = undefined;
    this.client = undefined;
    this.open = undefined;
  }

  private start(): StudyClient {
    if (this.client) return this.client;
    const worker = new Worker(new URL("../../study/worker.ts", import.meta.url), {
      type: "module",
      name: workerName(),
    });
    this.failed = new Promise((_, reject) => {
      worker.addEventListener("error", ({ message }) => {
        this.close();
        reject(new Error(say`The study broke off (${message || say`its program could not be loaded`}); try it again.`));
      });
    });
    // Somebody always waits for it while a study runs; between studies nobody does.
    this.failed.catch(() => undefined);
    this.worker = worker;
    this.client = new StudyClient(worker);
    return this.client;
  }
}
