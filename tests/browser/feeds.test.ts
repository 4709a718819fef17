import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { select, typeInto, Workplace, where } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

const drop = cellAt("Supply", "drop", "Cruiser");
const margin = cellAt("Supply", "drop_ok", "Cruiser");

const spoken = (page: Page): Promise<string> =>
  page.evaluate(() => document.activeElement?.getAttribute("aria-label") ?? "");

const arrived = (page: Page, cell: string) =>
  page.waitForFunction(
    (wanted) =>
      document.querySelector(".cell-line .where b")?.textContent === wanted &&
      document.activeElement?.getAttribute("data-id") === "self" &&
      document.activeElement?.textContent?.trim() === wanted,
    cell,
  );

describe("what feeds a cell and what it feeds", () => {
  it("is walked by keyboard: to a cell that feeds, onward to what that feeds, and back", async () => {
    const { page, complaints } = await place.desk();
    await select(page, "Supply", margin.cell);
    await page.waitForSelector(".feed-graph");
    await page.focus(".feed-graph [data-id=self]");
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("Home");
    await expect.poll(() => spoken(page)).toMatch(new RegExp(`^Fed by .*${drop.cell}`));
    // What feeds it is marked in the cells while the keyboard is in the drawing.
    await page.waitForSelector("#cells td.feeding");
    await page.keyboard.press("Enter");
    await arrived(page, drop.cell);
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => spoken(page)).toMatch(/^Feeds /);
    await page.keyboard.press("ArrowLeft");
    await expect.poll(() => spoken(page)).toContain("the selected cell");
    await page.keyboard.press("Backspace");
    await arrived(page, margin.cell);
    await expect.poll(() => page.getByRole("button", { name: /^Back to/ }).count()).toBe(0);
    await page.keyboard.press("Escape");
    await page.waitForFunction(() => document.activeElement?.closest("#cells"));
    await expect.poll(() => where(page)).toBe(margin.cell);
    await page.waitForFunction(() => document.querySelectorAll("#cells td.feeding").length === 0);
    expect(complaints).toEqual([]);
  });

  it("counts the cells of a range and shows the rest when asked", async () => {
    const { page } = await place.desk();
    const least = cellAt("Compare", "least", "Cruiser");
    await select(page, "Compare", least.cell);
    const range = page.locator(".feed-graph .node.range");
    await range.waitFor();
    const count = Number(/(\d+) cells/.exec((await range.getAttribute("aria-label")) ?? "")?.[1]);
    expect(count).toBeGreaterThan(10);
    await expect.poll(() => page.textContent(".feeds .ends")).toContain(`Fed by ${count} cells`);
    const cells = page.locator(".feed-graph .node.cell");
    await expect.poll(() => cells.count()).toBeLessThan(count);
    await page.locator(".feed-graph .node.more").focus();
    await page.keyboard.press("Enter");
    await page.waitForFunction(
      (wanted) => document.querySelectorAll(".feed-graph .node.cell").length === wanted,
      count,
    );
  });

  it("lists them in words only while that list is open, and follows an edit there", async () => {
    const { page } = await place.desk();
    const fed = cellAt("Supply", "run", "Cruiser");
    await select(page, "Supply", fed.cell);
    const list = page.locator(".working details", { hasText: "as a list" }).first();
    await list.waitFor();
    await expect.poll(() => list.locator("li").count()).toBe(0);
    await list.locator("summary").click();
    await expect.poll(() => list.locator("li").count()).toBeGreaterThan(0);
    const before = await list.locator("ul").textContent();
    await select(page, "Supply", fed.cell);
    await typeInto(page, String(Number(fed.text) + 7));
    await select(page, "Supply", fed.cell);
    await expect.poll(() => list.locator("ul").textContent()).not.toBe(before);
    await list.locator("summary").click();
    await expect.poll(() => list.locator("li").count()).toBe(0);
  });

  it("crosses pages and stays in the drawing", async () => {
    const { page } = await place.desk();
    await select(page, "Supply", margin.cell);
    await page.waitForSelector(".feed-graph");
    const other = page.locator(".feed-graph .node[aria-label*='Compare ']");
    await other.first().focus();
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => document.querySelector("h1")?.textContent?.endsWith("Compare"));
    await page.waitForFunction(() => document.activeElement?.getAttribute("data-id") === "self");
    await page.getByRole("button", { name: `Back to Supply ${margin.cell}` }).click();
    await page.waitForFunction(() => document.querySelector("h1")?.textContent?.endsWith("Supply"));
    await expect.poll(() => where(page)).toBe(margin.cell);
  });
});
