import type { Page } from "playwright-core";
import { expect } from "vitest";

/** What has the keyboard: the page of an entry in the list of pages, else its label or its words. */
export const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const element = document.activeElement as HTMLElement | null;
    return element?.dataset.page ?? element?.getAttribute("aria-label") ?? element?.textContent?.trim() ?? "";
  });

/** Presses a key until something is reached. */
export async function until(page: Page, key: string, reached: RegExp): Promise<void> {
  for (let i = 0; i < 40 && !reached.test(await focused(page)); i++) await page.keyboard.press(key);
  expect(await focused(page)).toMatch(reached);
}
