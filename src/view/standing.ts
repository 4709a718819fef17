import type { Change, LiveNotebook } from "../notebook/live";
import { firstOption, isOptionPage, lead, optionsOf, type Page, pageById } from "../notebook/model";
import { rowKind } from "../notebook/rows";
import { anyMissing } from "../notebook/unfilled";
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

function optionStanding(live: LiveNotebook, page: Page, option: string): OptionStanding {
  const checks = checksOf(live, page, option);
  return {
    option,
    checks,
    short: checks.filter(({ outcome }) => outcome.kind === "short"),
    open: checks.filter(({ outcome }) => outcome.kind === "open"),
  };
}

/** Standings in which a check stands open for a missing input: filling it in may turn checks whose numbers stay. */
const waiting = new WeakSet<Standing>();

/** How every option stands on every page. */
export function standingOf(live: LiveNotebook): Standing {
  const options = optionsOf(live.notebook);
  const ofPage = (page: Page): OptionStanding[] => options.map((option) => optionStanding(live, page, option));
  const pages = live.notebook.pages.filter(isOptionPage).map((page) => [page.id, ofPage(page)] as const);
  const standing: Standing = new Map(
    pages.filter(([, standings]) => standings.some(({ checks }) => checks.length > 0)),
  );
  if (anyMissing(live)) waiting.add(standing);
  return standing;
}

/** Whether a page has rows of checks, be they empty as yet. */
function mayHaveChecks(live: LiveNotebook, id: string): boolean {
  const page = pageById(live.notebook, id);
  return page?.rows.some((_, row) => rowKind(page, row) === "check") ?? false;
}

/** How everything stands after a change: only what the change reached is judged anew. */
export function standingAfter(live: LiveNotebook, before: Standing | undefined, change: Change): Standing {
  const isWhole =
    !before ||
    change.structure ||
    change.cells.length === 0 ||
    // A quantity or an option may have another name.
    change.cells.some(({ row, column }) => row === 0 || column < firstOption) ||
    [...new Set(change.cells.map(({ page }) => page))].some((id) => !before.has(id) && mayHaveChecks(live, id)) ||
    waiting.has(before) ||
    anyMissing(live);
  if (isWhole) return standingOf(live);
  const reached = new Map<string, Set<number>>();
  for (const { page, column } of change.cells) reached.set(page, (reached.get(page) ?? new Set()).add(column));
  const standings = [...before].map(([id, standing]): [string, readonly OptionStanding[]] => {
    const columns = reached.get(id);
    const page = pageById(live.notebook, id);
    if (!columns || !page) return [id, standing];
    const anew = standing.map((one, i) =>
      columns.has(firstOption + i) ? optionStanding(live, page, one.option) : one,
    );
    return [id, anew];
  });
  return new Map(standings.filter(([, standing]) => standing.some(({ checks }) => checks.length > 0)));
}

const nameOf = ({ page, row, column }: Check): string => `${page.id} ${page.rows[row]?.[lead.key] || row} ${column}`;

/**
 * Sentences for the checks that came to hold, fall short or stand open by a change: `Supply, Cruiser: Drop against
 * limit falls short by 8 %`. Checks that come or go with their row or option are no news.
 */
export function newsOf(before: Standing, after: Standing): string[] {
  const was = new Map<string, string>();
  const left = new Set([...before.values()].flat());
  for (const { checks } of left) for (const check of checks) was.set(nameOf(check), check.outcome.kind);
  return [...after.values()].flatMap((standings) =>
    standings.flatMap((one) => {
      // What a change did not reach is the same object still.
      if (left.has(one)) return [];
      const { option, checks } = one;
      return checks
        .filter((check) => (was.get(nameOf(check)) ?? check.outcome.kind) !== check.outcome.kind)
        .map(({ page, quantity, outcome }) => `${page.name}, ${option}: ${quantity} ${outcomeWords(outcome)}`);
    }),
  );
}
