import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";

const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/**
 * What the grid library causes by its own markup, and nothing else: its root is a treegrid that also holds its scroll
 * boxes and text field, and its scroll box is scrolled by the keys of the cells and not by a stop of its own.
 */
const byTheGrid = [
  { id: "aria-required-children", inside: "#cells" },
  { id: "scrollable-region-focusable", inside: "#cells" },
];

/**
 * What the automatic check finds on a page beyond what the grid causes.
 *
 * @param cells whether the cells are looked at as well: they are many, alike, and slow to look at.
 */
export async function findings(page: Page, cells = true): Promise<string[]> {
  const check = new AxeBuilder({ page }).withTags(rules);
  const { violations } = await (cells ? check : check.exclude("#cells")).analyze();
  const found = await Promise.all(
    violations.flatMap(({ id, nodes }) =>
      nodes.map(async ({ target }) => {
        const selector = target.flat().at(-1) ?? "";
        const known = byTheGrid.find((one) => one.id === id);
        const isInside =
          known !== undefined &&
          (await page.evaluate(
            ([inside, own]) => document.querySelector(own as string)?.closest(inside as string) !== null,
            [known.inside, selector],
          ));
        return isInside ? [] : [`${id}: ${selector}`];
      }),
    ),
  );
  return found.flat();
}
