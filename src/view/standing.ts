import type { LiveNotebook } from "../notebook/live";
import { isOptionPage, lead, optionsOf, type Page } from "../notebook/model";
import { type Check, checksOf, outcomeWords } from "../notebook/verdict";

/** How one option stands on one page. */
export interface OptionStanding {
  readonly option: string;
  readonly checks: readonly Check[];
  readonly short: readonly Check[];
  readonly open: readonly Check[];
}

/** How every option stands on every page that has checks, by page id. */
export type Standing = ReadonlyMap<string, readonly OptionStanding[]>;

export function standingOf(live: LiveNotebook): Standing {
  const options = optionsOf(live.notebook);
  const ofPage = (page: Page): OptionStanding[] =>
    options.map((option) => {
      const checks = checksOf(live, page, option);
      return {
        option,
        checks,
        short: checks.filter(({ outcome }) => outcome.kind === "short"),
        open: checks.filter(({ outcome }) => outcome.kind === "open"),
      };
    });
  const pages = live.notebook.pages.filter(isOptionPage).map((page) => [page.id, ofPage(page)] as const);
  return new Map(pages.filter(([, standing]) => standing.some(({ checks }) => checks.length > 0)));
}

const nameOf = ({ page, row, column }: Check): string => `${page.id} ${page.rows[row]?.[lead.key] || row} ${column}`;

/**
 * Sentences for the checks that came to hold, fall short or stand open by a change: `Supply, Cruiser: Drop against
 * limit falls short by 8 %`. Checks that come or go with their row or option are no news.
 */
export function newsOf(before: Standing, after: Standing): string[] {
  const was = new Map<string, string>();
  for (const standings of before.values()) {
    for (const { checks } of standings) for (const check of checks) was.set(nameOf(check), check.outcome.kind);
  }
  return [...after.values()].flatMap((standings) =>
    standings.flatMap(({ option, checks }) =>
      checks
        .filter((check) => (was.get(nameOf(check)) ?? check.outcome.kind) !== check.outcome.kind)
        .map(({ page, quantity, outcome }) => `${page.name}, ${option}: ${quantity} ${outcomeWords(outcome)}`),
    ),
  );
}
