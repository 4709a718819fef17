import type { LiveNotebook } from "../../notebook/live";
import type { Page } from "../../notebook/model";
import { rowDecimals } from "../shown/row-decimals";

type Decimals = Map<number, number | undefined>;

/** How many digits after the point the numbers of a row show: asked for by every cell, worked out once a change. */
export class RowDigits {
  private known: Decimals = new Map();
  /** The same before the last change. */
  private old: Decimals = new Map();

  of(live: LiveNotebook | undefined, page: Page, line: number): number | undefined {
    if (live && !this.known.has(line)) this.known.set(line, rowDecimals(live, page, line));
    return this.known.get(line);
  }

  /** Begins anew after a change. */
  follow(): void {
    this.old = this.known;
    this.known = new Map();
  }

  forget(): void {
    this.known.clear();
  }

  /** Whether the last change gave a row's numbers another count of digits. */
  isOther(live: LiveNotebook | undefined, page: Page, line: number): boolean {
    return this.of(live, page, line) !== this.old.get(line);
  }
}
