import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findings } from "./accessibility";
import { select, turnTo, Workplace, where } from "./desk";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

describe("the automatic accessibility check", () => {
  it("finds nothing in the narrow form, in dialogs, menus and while typing", { timeout: 120_000 }, async () => {
    const { page } = await place.desk({ viewport: { width: 820, height: 1180 } });
    await turnTo(page, "Supply");
    expect(await findings(page), "narrow").toEqual([]);
    await page.click(".tools button:has-text('Options')");
    expect(await findings(page, false), "options").toEqual([]);
    await page.keyboard.press("Escape");
    await select(page, "Supply", "F5");
    await page.keyboard.press("Shift+F10");
    await page.waitForSelector("[role=menu]");
    expect(await findings(page, false), "menu").toEqual([]);
    await page.keyboard.press("Escape");
    await select(page, "Supply", "F5");
    await page.keyboard.type("=COND");
    await page.waitForSelector("[role=listbox]");
    expect(await findings(page, false), "suggestions").toEqual([]);
    await page.keyboard.press("Tab");
    await page.waitForSelector(".hint");
    expect(await findings(page, false), "hint").toEqual([]);
  });
});

/** The element that has the keyboard, in a few words. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const element = document.activeElement;
    if (element?.closest("#cells")) return "cells";
    const words = element?.getAttribute("aria-label") ?? element?.textContent ?? "";
    return `${element?.tagName.toLowerCase()} ${words.trim().replace(/\s+/g, " ")}`;
  });

describe("by keyboard alone", () => {
  it("everything is reached with Tab, in the order in which it stands, and the cells are left again", async () => {
    const { page } = await place.desk();
    const stops: string[] = [];
    for (let i = 0; i < 60 && !stops.at(-1)?.startsWith("cells"); i++) {
      await page.keyboard.press("Tab");
      stops.push(await focused(page));
    }
    const order = ["To the cells", "1 Boat", "14 Tables", "Open …", "Import …", "Rows and cells", "Options"];
    const places = order.map((words) => stops.findIndex((stop) => stop.includes(words)));
    expect(
      places.every((at) => at >= 0),
      stops.join("; "),
    ).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    expect(stops.at(-2)).toMatch(/^textarea What was typed in/);
    await page.waitForTimeout(100);
    const at = await where(page);
    await page.keyboard.press("Tab");
    await expect.poll(() => focused(page)).toBe("cells");
    await page.waitForFunction((cell) => document.querySelector(".cell-line .where b")?.textContent !== cell, at);
    await page.keyboard.press("Escape");
    await page.keyboard.press("Tab");
    await page.waitForFunction(() => !document.activeElement?.closest("#cells"));
    await expect.poll(() => focused(page)).toMatch(/^div Width of the right side/);
    await page.keyboard.press("Shift+Tab");
    await page.waitForFunction(() => document.activeElement?.closest("#cells"));
    await page.keyboard.press("Escape");
    await page.keyboard.press("Shift+Tab");
    await page.waitForFunction(() => !document.activeElement?.closest("#cells"));
    await expect.poll(() => focused(page)).toMatch(/^textarea What was typed in/);
  });

  it("every stop of the keyboard can be seen", async () => {
    const { page } = await place.desk();
    for (let i = 0; i < 30; i++) {
      await page.keyboard.press("Tab");
      const isSeen = await page.evaluate(() => {
        const element = document.activeElement;
        if (!element || element.closest("#cells")) return true;
        const { outlineStyle, outlineWidth } = getComputedStyle(element);
        return outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2;
      });
      expect(isSeen, await focused(page)).toBe(true);
    }
  });

  it("the first stop leads past the pages into the cells; pages turn with Alt and Page Down", async () => {
    const { page } = await place.desk();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => document.activeElement?.closest("#cells"));
    const first = await where(page);
    await page.keyboard.press("ArrowRight");
    await page.waitForFunction((cell) => document.querySelector(".cell-line .where b")?.textContent !== cell, first);
    await page.keyboard.press("Alt+PageDown");
    await page.waitForFunction(() => document.querySelector("h1")?.textContent?.endsWith("Side force"));
    await page.waitForFunction(() => document.activeElement?.closest("#cells"));
    await page.keyboard.type("7");
    await page.keyboard.press("Escape");
    await expect.poll(() => page.textContent("h1")).toMatch(/Side force$/);
  });

  it("the right side is made wider and narrower with the arrow keys", async () => {
    const { page } = await place.desk();
    const width = async () => (await page.locator("aside.side").boundingBox())?.width ?? 0;
    const before = await width();
    await page.focus(".divider");
    await page.keyboard.press("ArrowLeft");
    await expect.poll(() => width()).toBeGreaterThan(before);
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => width()).toBeLessThan(before);
    await page.keyboard.press("Enter");
    await expect.poll(() => width()).toBe(before);
  });
});

describe("the page's shape", () => {
  for (const [width, height] of [
    [820, 1180],
    [720, 450],
    [320, 640],
  ] as const) {
    it(`fits ${width} × ${height} without being pushed sideways, the right side below the cells`, async () => {
      const { page } = await place.desk({ viewport: { width, height } });
      await turnTo(page, "Supply");
      await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      const cells = await page.locator("#cells").boundingBox();
      const side = await page.locator("aside.side").boundingBox();
      expect(cells?.height ?? 0).toBeGreaterThanOrEqual(300);
      expect(side?.y ?? 0).toBeGreaterThanOrEqual((cells?.y ?? 0) + (cells?.height ?? 0) - 1);
    });
  }

  it("is dark where the person's system is, the cells too", async () => {
    const { page } = await place.desk({ colorScheme: "dark" });
    await turnTo(page, "Supply");
    const grounds = await page.evaluate(() =>
      ["main", "#cells .ht_master td.cell", "nav.left"].map((selector) => {
        const [red = 255] = getComputedStyle(document.querySelector(selector) as Element)
          .backgroundColor.match(/\d+/g)
          ?.map(Number) ?? [255];
        return red;
      }),
    );
    for (const red of grounds.slice(0, 2)) expect(red).toBeLessThan(60);
  });
});
