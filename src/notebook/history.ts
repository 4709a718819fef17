import type { Notebook, Position } from "./model";

/** One change, as the notebooks before and after it; they share all that did not change. */
export interface Step {
  readonly label: string;
  readonly before: Notebook;
  readonly after: Notebook;
  readonly at: readonly Position[];
}

const mostSteps = 1000;

/** The one history of a notebook. */
export class History {
  private steps: Step[] = [];
  private done = 0;

  /** Adds a step; what had been taken back can no longer be done again. */
  add(step: Step): void {
    this.steps = [...this.steps.slice(0, this.done), step].slice(-mostSteps);
    this.done = this.steps.length;
  }

  get last(): Step | undefined {
    return this.steps[this.done - 1];
  }

  get next(): Step | undefined {
    return this.steps[this.done];
  }

  /** All steps, the oldest first, and how many of them are done; the others can be done again. */
  get all(): { readonly steps: readonly Step[]; readonly done: number } {
    return { steps: this.steps, done: this.done };
  }

  back(): Step | undefined {
    const step = this.last;
    if (step) this.done--;
    return step;
  }

  forward(): Step | undefined {
    const step = this.next;
    if (step) this.done++;
    return step;
  }
}
