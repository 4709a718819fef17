import { html, nothing, type TemplateResult } from "lit/html.js";
import type { Progress } from "../../study/carry-out";
import { type AskWishes, Stopped } from "../../study/client";
import { say } from "../../words/say";

/** One study of a part: whether it runs, how far it is, and its answer with the sentence that stands first. */
export class Running<Answer> {
  answer: Answer | undefined;
  /** The verdict, a refusal, or that the study was stopped. */
  sentence = "";
  isRefused = false;
  private stop: AbortController | undefined;
  private progress: Progress | undefined;
  private isDue = false;

  constructor(private readonly update: () => void) {}

  get isRunning(): boolean {
    return this.stop !== undefined;
  }

  /** @param words the verdict of an answer, in one sentence. */
  async start(ask: (wishes: AskWishes) => Promise<Answer>, words: (answer: Answer) => string): Promise<void> {
    this.clear();
    const stop = new AbortController();
    this.stop = stop;
    this.update();
    const progress = (one: Progress) => {
      if (this.stop !== stop) return;
      this.progress = one;
      this.updateSoon();
    };
    try {
      const answer = await ask({ signal: stop.signal, progress });
      // Somebody may have changed the question meanwhile.
      if (this.stop !== stop) return;
      this.answer = answer;
      this.sentence = words(answer);
    } catch (cause) {
      if (this.stop !== stop) return;
      this.isRefused = !(cause instanceof Stopped);
      this.sentence = cause instanceof Error ? cause.message : String(cause);
    } finally {
      if (this.stop === stop) {
        this.stop = undefined;
        this.update();
      }
    }
  }

  /** Draws at most once a picture, so that a study never tells more than the screen can show. */
  private updateSoon(): void {
    if (this.isDue) return;
    this.isDue = true;
    requestAnimationFrame(() => {
      this.isDue = false;
      if (this.isRunning) this.update();
    });
  }

  /** Takes the answer away: it belongs to another question. */
  clear(): void {
    this.stop?.abort();
    this.stop = undefined;
    this.progress = undefined;
    this.answer = undefined;
    this.sentence = "";
    this.isRefused = false;
  }

  /** Says something beside the answer, or in its place. */
  say(sentence: string, isRefused = false): void {
    this.sentence = sentence;
    this.isRefused = isRefused;
    this.update();
  }

  cancel(): void {
    this.stop?.abort();
  }

  /** The button that starts and stops: one and the same, so that the keyboard stays on it. */
  button(label: string, isOff = false): TemplateResult {
    return html`<button type="submit" class="main" ?disabled=${isOff && !this.isRunning}>${this.isRunning ? say`Stop` : label}</button>`;
  }

  /** The first line of an answer; it is read out when it changes. */
  line(hint: string): TemplateResult {
    const { progress } = this;
    const words = this.isRunning
      ? progress
        ? say`Calculating: ${progress.done} of ${progress.of}.`
        : say`Calculating …`
      : this.sentence || hint;
    const kind = this.isRunning || this.sentence === "" ? "soft" : this.isRefused ? "short" : "";
    return html`<p class="verdict-line ${kind}" role="status" aria-live=${this.isRunning && progress ? "off" : "polite"}>${words}</p>
      ${this.isRunning ? html`<progress aria-label=${say`Progress of the study`} .max=${progress?.of ?? 1} .value=${progress?.done ?? 0}></progress>` : nothing}`;
  }
}
