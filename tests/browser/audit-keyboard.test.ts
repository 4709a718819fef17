import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { heard, select, typeInto, Workplace } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

const drop = cellAt("Supply", "drop", "Cruiser");

/** What has the keyboard: the words on it, or its kind of element. */
const holder = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const element = document.activeElement;
    return element instanceof HTMLButtonElement || element instanceof HTMLAnchorElement
      ? (element.textContent?.replace(/\s+/g, " ").trim() ?? "")
      : (element?.localName ?? "none");
  });

it("leaves the keyboard in the audit when what was pressed goes away", { timeout: 120_000 }, async () => {
  const { page, complaints } = await place.desk();
  await select(page, "Supply", drop.cell);
  await typeInto(page, "1.1");
  await page.getByRole("button", { name: "Audit", exact: true }).click();
  const typed = page.locator(".findings > .finding[data-rule='typed-over']");
  await typed.waitFor();

  // The reason can be typed at once.
  await typed.getByRole("button", { name: "Accept with reason" }).press("Enter");
  await expect.poll(() => holder(page)).toBe("textarea");
  await page.keyboard.type("measured on the boat");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await page.getByLabel("Name", { exact: true }).fill("R. Tern");
  await page.keyboard.press("Enter");
  await heard(page, /accepted at/);
  // The next finding stands in its place now, and its cell is what comes first in it.
  await expect.poll(() => holder(page)).toMatch(/^A\d+$/);

  await select(page, "Supply", drop.cell);
  const tick = page.locator(".tick-here").getByRole("button", { name: /this row/ });
  await tick.press("Enter");
  await expect.poll(() => holder(page)).toBe("Take tick of this row back");
  await page.keyboard.press("Enter");
  await expect.poll(() => holder(page)).toBe("Tick this row");
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "Take the tick of Supply.drop back" }).press("Enter");
  await heard(page, /taken back/);
  await expect.poll(() => holder(page)).toBe("h2");
  expect(complaints).toEqual([]);
});
