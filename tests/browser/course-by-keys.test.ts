import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { asAsked } from "../../src/course/allowance";
import { numbersFor, scalarOf } from "../../src/course/numbers";
import { taskOf, worked } from "../course/course";
import { Workplace } from "./desk";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

/** What has the keyboard, by its label or its words. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const element = document.activeElement as HTMLInputElement | null;
    const label = element?.getAttribute("aria-label") ?? element?.labels?.[0]?.textContent ?? element?.textContent;
    return (label ?? "").trim().replace(/\s+/g, " ");
  });

/** Goes on with Tab until something has the keyboard. */
async function tabTo(page: Page, what: RegExp): Promise<void> {
  const passed: string[] = [];
  for (let i = 0; i < 90; i++) {
    await page.keyboard.press("Tab");
    const here = await focused(page);
    if (what.test(here)) return;
    passed.push(here);
  }
  throw new Error(`Tab never came to ${what}; it passed ${passed.join(" | ")}`);
}

it("a task is found, worked and marked by the keyboard alone, and the slider moved", { timeout: 120_000 }, async () => {
  const drop = taskOf(worked, "drop.csv");
  const own = numbersFor(worked, drop, "T07");
  const { page, complaints } = await place.desk();
  await tabTo(page, /^Notebooks …$/);
  await page.keyboard.press("Enter");
  await page.waitForSelector("dialog[open]");
  await tabTo(page, /^Course at Tern Quay$/);
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => document.title.endsWith("Course at Tern Quay"));
  await tabTo(page, new RegExp(`${drop.title}$`));
  await page.keyboard.press("Enter");
  await page.waitForFunction((wanted) => document.querySelector("h1")?.textContent?.endsWith(wanted), drop.title);
  await tabTo(page, /^Your trainee number$/);
  await page.keyboard.type("T07");
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => document.activeElement?.matches(".answers input"));

  for (const { name, allowance } of drop.answers) {
    const right = asAsked(allowance, scalarOf(own.worked.values.get(name)) ?? "");
    if (await page.evaluate(() => (document.activeElement as HTMLInputElement).type !== "radio")) {
      await page.keyboard.type(right);
    } else {
      // The arrows walk the choices; each is the answer while it has the keyboard.
      for (let i = 0; (await focused(page)) !== right && i < 10; i++) await page.keyboard.press("ArrowDown");
      await page.keyboard.press("Space");
      await expect.poll(() => page.isChecked(".answers input:focus")).toBe(true);
    }
    await page.keyboard.press("Tab");
  }
  await expect.poll(() => focused(page)).toBe("Mark my answers");
  await page.keyboard.press("Enter");
  await page.getByText("All right.", { exact: true }).waitFor();

  await tabTo(page, /^Show the first step$/);
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => document.querySelectorAll(".way > li").length === 1);
  await tabTo(page, /^current while running, A$/);
  const typed = () => page.getByLabel("current while running, A, typed").inputValue();
  const before = await typed();
  await page.keyboard.press("ArrowRight");
  await expect.poll(async () => Number(await typed())).toBeGreaterThan(Number(before));
  expect(complaints).toEqual([]);
});
