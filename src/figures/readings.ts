import type { LiveNotebook } from "../notebook/live";
import { firstOption, type Notebook, optionsOf } from "../notebook/model";
import { rowOfKey } from "../notebook/rows";
import { usualPage } from "../notebook/usual-page";
import { say } from "../words/say";

/**
 * Numbers of one option, read by the keys of their rows. What cannot be read is remembered and read as no number, so
 * that all that is missing can be said at once.
 */
export class Readings {
  private readonly list: string[] = [];

  constructor(
    private readonly live: LiveNotebook,
    private readonly option: string,
  ) {}

  /** What could not be read, a sentence without its end; empty when everything was there. */
  get missing(): readonly string[] {
    return this.list;
  }

  has(address: string): boolean {
    return place(this.live.notebook, address) !== undefined;
  }

  /** The number in `Page.key` for this option. */
  number(address: string): number {
    const at = place(this.live.notebook, address);
    if (!at) return this.miss(say`there is no row ${address}`);
    const { page, row, called } = at;
    const value = this.live.value({
      page,
      row,
      column: firstOption + optionsOf(this.live.notebook).indexOf(this.option),
    });
    switch (value.kind) {
      case "number":
        return value.value;
      case "error":
        return this.miss(say`${called} is ${value.code}, ${value.sentence}`);
      case "blank":
        return this.miss(say`${called} is blank`);
      default:
        return this.miss(say`${called} is not a number`);
    }
  }

  /** Remembers something else that is missing, a clause without its end. */
  miss(why: string): number {
    this.list.push(why);
    return Number.NaN;
  }
}

/** The row `Page.key`, and what it is called now. */
function place(notebook: Notebook, address: string): { page: string; row: number; called: string } | undefined {
  const split = address.lastIndexOf(".");
  const key = address.slice(split + 1);
  const page = usualPage(notebook.pages, address.slice(0, split));
  const row = page ? rowOfKey(page, key) : -1;
  return page && row > 0 ? { page: page.id, row, called: `${page.name}.${key}` } : undefined;
}
