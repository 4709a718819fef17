import { LiveNotebook } from "../notebook/live";
import { columnsOf, firstOption, isOptionPage, type Notebook } from "../notebook/model";
import { type Audit, auditNotebook, ruleList } from "./audit";
import { cellsOfPlace, type Review, reviewsOf } from "./review";

/** Everything that is said of a notebook at once: findings, ticks, and how far the ticks reach. */
export interface Report {
  readonly audit: Audit;
  readonly reviews: readonly Review[];
  /** Filled cells under a tick that stands, and all of them. */
  readonly covered: { readonly ticked: number; readonly of: number };
  readonly rules: readonly { readonly name: string; readonly about: string }[];
}

/** The filled cells of a notebook that hold a value: on option pages those of the options. */
function filledCells(notebook: Notebook): Set<string> {
  const filled = new Set<string>();
  for (const page of notebook.pages) {
    const [top, left] = isOptionPage(page) ? [1, firstOption] : [0, 0];
    for (let row = top; row < page.rows.length; row++) {
      for (let column = left; column < columnsOf(page); column++) {
        if (page.rows[row]?.[column]) filled.add(`${page.id} ${row} ${column}`);
      }
    }
  }
  return filled;
}

function covered(notebook: Notebook, reviews: readonly Review[]): Report["covered"] {
  const filled = filledCells(notebook);
  const ticked = new Set<string>();
  for (const { place, stale } of reviews) {
    if (stale) continue;
    for (const { page, row, column } of cellsOfPlace(notebook, place) ?? []) {
      const key = `${page} ${row} ${column}`;
      if (filled.has(key)) ticked.add(key);
    }
  }
  return { ticked: ticked.size, of: filled.size };
}

/**
 * Calculates and audits notebooks one after the other; what two of them share is calculated once.
 *
 * Meant for a place away from the screen: a full audit takes as long as it takes.
 */
export class Reporter {
  private live: LiveNotebook | undefined;

  /** @param shipped the notebook as it was shipped, to tell what was adapted. */
  report(notebook: Notebook, shipped: Notebook | undefined): Report {
    if (this.live) {
      // Its steps would never be taken back: the history belongs to the screen.
      this.live.follow(notebook);
    } else {
      this.live = new LiveNotebook(notebook);
    }
    const audit = auditNotebook(this.live, shipped ? { shipped } : {});
    const reviews = reviewsOf(notebook);
    return { audit, reviews, covered: covered(notebook, reviews), rules: ruleList };
  }
}
