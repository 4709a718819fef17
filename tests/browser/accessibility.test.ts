import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findingsInBothLights, settled } from "./accessibility";
import { heard, type OpenDesk, select, turnTo, Workplace } from "./desk";

let place: Workplace;
let desk: OpenDesk;
beforeAll(async () => {
  place = await Workplace.open();
  desk = await place.desk({ reducedMotion: "reduce" });
});
afterAll(() => place.close());

async function openShipped(page: Page, title: string): Promise<void> {
  await page.getByRole("button", { name: "Notebooks …" }).click();
  await page.locator("dialog").getByRole("button", { name: title, exact: true }).click();
  await heard(page, new RegExp(`^${title} is open`));
}

const pagesShown = (page: Page): Promise<string[]> =>
  page.$$eval(".pages button[data-page]", (buttons) =>
    buttons.map((button) => (button as HTMLElement).dataset.page ?? ""),
  );

describe("the automatic accessibility check, light and dark", () => {
  for (const title of ["Three hulls at Tern Quay", "One hull, three layouts", "Course at Tern Quay"]) {
    it(`finds nothing but what the grid causes on every page of ${title}, its figures included`, {
      timeout: 120_000,
    }, async () => {
      const { page } = desk;
      await openShipped(page, title);
      const names = await pagesShown(page);
      expect(names.length).toBeGreaterThan(10);
      const found: string[] = [];
      for (const name of names) {
        await turnTo(page, name);
        await settled(page);
        for (const finding of await findingsInBothLights(page)) found.push(`${name}: ${finding}`);
      }
      expect(found).toEqual([]);
    });
  }

  it("finds nothing in any dialog, panel and menu", { timeout: 120_000 }, async () => {
    const { page } = desk;
    await openShipped(page, "Three hulls at Tern Quay");
    await turnTo(page, "Supply");
    const found: string[] = [];
    const look = async (what: string) => {
      await settled(page);
      for (const finding of await findingsInBothLights(page, false)) found.push(`${what}: ${finding}`);
    };
    for (const name of ["Options", "Units", "Paper", "Functions", "Notebooks …", "For others …"]) {
      const button = page.getByRole("button", { name, exact: true });
      await expect.poll(() => button.count(), { message: name }).toBe(1);
      await button.click();
      await page.locator("dialog[open]").waitFor();
      await look(name);
      await page.keyboard.press("Escape");
    }
    await page.getByRole("button", { name: "Studies", exact: true }).click();
    await page.getByRole("tab").first().waitFor();
    const tabs = await page.getByRole("tab").allTextContents();
    expect(tabs.length).toBeGreaterThan(2);
    for (const name of tabs) {
      await page.getByRole("tab", { name, exact: true }).click();
      await look(`Studies, ${name}`);
    }
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: "Audit", exact: true }).click();
    await page.waitForSelector(".audit .sum");
    await look("Audit");
    await page.getByRole("button", { name: "Audit", exact: true }).click();
    await select(page, "Supply", "F5");
    await page.keyboard.press("Shift+F10");
    await page.waitForSelector("[role=menu]");
    await look("menu");
    await page.keyboard.press("Escape");
    await select(page, "Supply", "F5");
    await page.keyboard.type("=COND");
    await page.waitForSelector("[role=listbox]");
    await look("suggestions");
    await page.keyboard.press("Tab");
    await page.waitForSelector(".hint");
    await look("hint");
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
    expect(found).toEqual([]);
    expect(desk.complaints).toEqual([]);
  });
});
