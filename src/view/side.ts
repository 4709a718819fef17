import type { TemplateResult } from "lit/html.js";

/** Something that stands beside the cells in the place of drawing, working and notes. */
export interface Beside {
  readonly name: string;
  readonly show: () => TemplateResult;
  /** It is about to stand there. */
  readonly enter?: () => void;
  /** It has just been drawn there. */
  readonly drawn?: () => void;
  /** The place was given to something else. */
  readonly leave?: () => void;
}

/** What stands beside the cells. */
export class Side {
  private beside: Beside | undefined;

  /** @param update draws it again. */
  constructor(readonly update: () => void) {}

  /** Undefined while drawing, working and notes stand there. */
  get shown(): Beside | undefined {
    return this.beside;
  }

  /** Puts something there; undefined brings drawing, working and notes back. */
  put(beside: Beside | undefined): void {
    const old = this.beside;
    if (old === beside) return;
    this.beside = beside;
    old?.leave?.();
    beside?.enter?.();
    this.update();
  }
}
