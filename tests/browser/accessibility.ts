import axe from "axe-core";
import type { Page } from "playwright-core";

const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/**
 * What the grid library causes by its own markup, and nothing else: its root is a treegrid that also holds its scroll
 * boxes and text field, and its scroll box is scrolled by the keys of the cells and not by a stop of its own.
 * DEVELOPERS.md says what was tried against it.
 */
const byTheGrid = [
  { id: "aria-required-children", inside: "#cells" },
  { id: "scrollable-region-focusable", inside: "#cells" },
];

/** Cells that look alike, in one place of the grid, are alike to the check: the first of each is looked at. */
function markLooks(): void {
  const seen = new Set<string>();
  for (const cell of document.querySelectorAll("#cells td, #cells tbody th")) {
    const look = `${cell.closest(".handsontable")?.className} ${cell.className}`;
    cell.toggleAttribute("data-alike", seen.has(look));
    seen.add(look);
  }
}

/** The side is drawn when the browser has nothing better to do. */
export const settled = (page: Page): Promise<unknown> =>
  page.evaluate(() => new Promise((done) => requestIdleCallback(() => requestAnimationFrame(done), { timeout: 400 })));

interface Only {
  readonly type: "tag" | "rule";
  readonly values: readonly string[];
}

async function check(page: Page, only: Only, cells: boolean): Promise<string[]> {
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(axe.source);
  await page.evaluate(() =>
    Promise.allSettled(
      document
        .getAnimations()
        .filter((one) => one instanceof CSSTransition)
        .map(({ finished }) => finished),
    ),
  );
  await page.evaluate(markLooks);
  const without = cells ? "#cells [data-alike]" : "#cells";
  return page.evaluate(
    async ([{ type, values }, exclude, known]) => {
      const { axe: checker } = window as unknown as { axe: typeof axe };
      const { violations } = await checker.run(
        { include: ["html"], exclude: [exclude] },
        { runOnly: { type, values: [...values] }, resultTypes: ["violations"], preload: false, iframes: false },
      );
      return violations.flatMap(({ id, nodes }) =>
        nodes.flatMap(({ target }) => {
          const selector = target.flat().at(-1) ?? "";
          const cause = known.find((one) => one.id === id);
          return cause && document.querySelector(selector)?.closest(cause.inside) ? [] : [`${id}: ${selector}`];
        }),
      );
    },
    [only, without, byTheGrid] as const,
  );
}

/**
 * What the automatic check finds on a page beyond what the grid causes.
 *
 * @param cells whether the cells are looked at as well.
 */
export const findings = (page: Page, cells = true): Promise<string[]> =>
  check(page, { type: "tag", values: rules }, cells);

/** The same by day and by night; what does not hang on the light is looked at once. */
export async function findingsInBothLights(page: Page, cells = true): Promise<string[]> {
  await page.emulateMedia({ colorScheme: "light" });
  const byDay = await findings(page, cells);
  await page.emulateMedia({ colorScheme: "dark" });
  const byNight = await check(page, { type: "rule", values: ["color-contrast", "link-in-text-block"] }, cells);
  return [...byDay, ...byNight.map((finding) => `${finding}, dark`)];
}
