import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type OpenDesk, turnTo, Workplace } from "./desk";
import { worked } from "./worked";

let place: Workplace;
let desk: OpenDesk;
beforeAll(async () => {
  place = await Workplace.open();
  desk = await place.desk({ hasTouch: true, reducedMotion: "reduce" });
});
afterAll(() => place.close());

describe("on paper", () => {
  it("the shown page is printed whole: heading, verdict, every row, drawing and title block, and no buttons", async () => {
    const { page } = desk;
    await turnTo(page, "Supply");
    const supply = worked.pages.find(({ name }) => name === "Supply");
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
    const table = page.locator("table.printed");
    await expect.poll(() => table.locator("tbody tr").count()).toBe((supply?.rows.length ?? 0) - 1);
    await expect.poll(() => table.locator("thead").textContent()).toContain("Cruiser");
    const quantities = await table.locator("tbody td:first-child").allTextContents();
    expect(quantities).toEqual(supply?.rows.slice(1).map(([quantity]) => quantity));
    for (const part of ["h1", ".verdict", "table.printed", ".title-block"]) {
      await expect.poll(() => page.locator(part).isVisible(), { message: part }).toBe(true);
    }
    const hidden = await page.$$eval("button, nav, #cells, .said", (elements) =>
      elements.filter((element) => element.getClientRects().length > 0).map(({ outerHTML }) => outerHTML.slice(0, 60)),
    );
    expect(hidden).toEqual([]);
    const ground = await page.evaluate(
      () => getComputedStyle(document.querySelector("main") as Element).backgroundColor,
    );
    expect(ground).toBe("rgb(255, 255, 255)");
    await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
    await expect.poll(() => table.count()).toBe(0);
    await page.emulateMedia({ media: "screen", colorScheme: "light", reducedMotion: "reduce" });
  });
});

describe("for those who need it otherwise", () => {
  it("nothing moves where the person wants less motion", async () => {
    const { page } = desk;
    const moving = await page.$$eval("body *", (elements) =>
      elements
        .filter((element) => {
          const { animationName, animationDuration, transitionDuration } = getComputedStyle(element);
          const lasts = (times: string) => times.split(",").some((time) => Number.parseFloat(time) > 0);
          return lasts(transitionDuration) || (animationName !== "none" && lasts(animationDuration));
        })
        .map((element) => element.outerHTML.slice(0, 80)),
    );
    expect(moving).toEqual([]);
  });

  it("whatever is touched is at least 24 px high and wide", async () => {
    const { page } = desk;
    await page.setViewportSize({ width: 820, height: 1180 });
    for (const name of ["Boat", "Supply", "Compare"]) {
      await turnTo(page, name);
      const small = await page.$$eval("button, select, input, textarea, summary, [role=tab]", (elements) =>
        elements
          .filter((element) => element.closest("#cells") === null)
          .map((element) => ({ box: element.getBoundingClientRect(), what: element.outerHTML.slice(0, 80) }))
          .filter(({ box }) => box.width > 0 && (box.width < 24 || box.height < 24))
          .map(({ box, what }) => `${box.width.toFixed(0)} × ${box.height.toFixed(0)}: ${what}`),
      );
      expect(small, name).toEqual([]);
    }
    await page.locator(".pages button[data-page=Tunnel]").tap();
    await page.waitForFunction(() => document.querySelector("h1")?.textContent?.endsWith("Tunnel"));
  });

  it("twice the size: half the window holds the page without being pushed sideways, dialogs too", async () => {
    const { page } = desk;
    await page.setViewportSize({ width: 720, height: 450 });
    await turnTo(page, "Supply");
    for (const name of ["Options", "Paper", "Studies", "Notebooks …"]) {
      await page.getByRole("button", { name, exact: true }).click();
      await page.locator("dialog[open]").waitFor();
      const wide = await page.evaluate(() => {
        const dialog = document.querySelector("dialog[open]") as HTMLElement;
        const { left, right, top, bottom } = dialog.getBoundingClientRect();
        return { page: document.documentElement.scrollWidth, out: left < 0 || right > 720 || top < 0 || bottom > 450 };
      });
      expect(wide, name).toEqual({ page: 720, out: false });
      await page.keyboard.press("Escape");
    }
  });
});
