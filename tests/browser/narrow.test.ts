import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isOptionPage, lead } from "../../src/notebook/model";
import { columnName } from "../../src/notebook/references";
import { cutVerdicts } from "./cut-verdicts";
import { select, turnTo, typeInto, Workplace } from "./desk";
import { cellAt, worked } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

const narrow = { width: 820, height: 1180 };
const wide = { width: 1440, height: 900 };
const languages = [
  ["English", "en-GB"],
  ["German", "de-DE"],
] as const;

/** Room that the bar beside the cells takes where it is drawn. */
const scrollBar = 14;

/** Names of the options that do not stand whole in sight beside the bar, from what their heads show. */
const optionsOutOfSight = (page: Page): Promise<string[]> =>
  page.evaluate((bar) => {
    const host = document.querySelector("#cells")?.getBoundingClientRect();
    const heads = [...document.querySelectorAll("#cells .ht_clone_top thead th.right")];
    if (!host || heads.length < 3) return [`${heads.length} options have a head`];
    const isOut = (head: Element) => head.getBoundingClientRect().right > host.right - bar + 0.5;
    return heads.filter(isOut).map((head) => head.textContent ?? "");
  }, scrollBar);

const basisWidth = (page: Page): Promise<number> =>
  page.$$eval("#cells thead th", (heads) =>
    Math.max(
      ...heads
        .filter((head) => head.querySelector(".letter")?.textContent === "D")
        .map((head) => head.getBoundingClientRect().width),
    ),
  );

describe("a window of 820 × 1180", () => {
  for (const [language, locale] of languages) {
    it(`has all three options whole in sight on every page, in ${language}`, { timeout: 120_000 }, async () => {
      const { page } = await place.desk({ viewport: narrow, locale });
      await expect.poll(() => page.getAttribute("html", "lang")).toBe(locale.slice(0, 2));
      for (const { name } of worked.pages.filter(isOptionPage)) {
        await turnTo(page, name);
        await expect.poll(() => optionsOutOfSight(page), { message: name }).toEqual([]);
      }
    });
  }

  it("keeps the basis within reach: its cell is a stop of the arrow keys, and says all of it above and on hovering", async () => {
    const { page } = await place.desk({ viewport: narrow });
    const { row } = cellAt("Supply", "V_rated", "Sloop");
    const basis = worked.pages.find(({ name }) => name === "Supply")?.rows[row - 1]?.[lead.basis] ?? "";
    expect(basis).not.toBe("");
    await select(page, "Supply", `E${row}`);
    await expect.poll(() => page.textContent(".cell-line .sentence")).toContain(basis);
    await page.keyboard.press("ArrowLeft");
    await expect.poll(() => page.textContent(".cell-line .where b")).toBe(`D${row}`);
    await expect.poll(() => page.inputValue(".cell-line textarea")).toBe(basis);
    const cell = page.locator("#cells .ht_clone_inline_start td.current");
    expect(await cell.getAttribute("title")).toBe(basis);
    expect((await cell.textContent())?.trim()).toBe(basis);
    // Three dots stand for the words, which are there for those who have the cell read out.
    const look = (element: Element) => [
      getComputedStyle(element).fontSize,
      getComputedStyle(element, "::before").content,
    ];
    expect(await cell.locator(".words").evaluate(look)).toEqual(["0px", '"…"']);
    await page.keyboard.press("ArrowLeft");
    await expect.poll(() => page.textContent(".cell-line .where b")).toBe(`C${row}`);
  });

  it("gives the basis its room again when the window is made wide", async () => {
    const { page } = await place.desk({ viewport: narrow });
    await turnTo(page, "Supply");
    await expect.poll(() => basisWidth(page)).toBeLessThan(40);
    await page.setViewportSize(wide);
    await expect.poll(() => basisWidth(page)).toBeGreaterThan(65);
    expect(await page.locator("#cells th.sign").count()).toBe(0);
  });
});

describe("a verdict", () => {
  for (const [language, locale] of languages)
    for (const viewport of [narrow, wide])
      for (const title of ["Three hulls at Tern Quay", "One hull, three layouts"])
        it(`is never cut short in ${title}, in ${language}, ${viewport.width} px wide`, {
          timeout: 120_000,
        }, async () => {
          const { page } = await place.desk({ viewport, locale });
          if (title.startsWith("One")) {
            await page.click(".files button");
            await page.locator("dialog").getByRole("button", { name: title }).click();
            await expect.poll(() => page.textContent(".job")).toContain("three layouts");
            await expect.poll(() => page.locator("dialog[open]").count()).toBe(0);
          }
          const names = await page.$$eval(".pages button[data-page]", (buttons) =>
            buttons.map((button) => button.getAttribute("data-page") ?? ""),
          );
          expect(names).toContain("Compare");
          for (const name of names) {
            await turnTo(page, name);
            await expect.poll(() => cutVerdicts(page), { message: name }).toEqual([]);
          }
        });

  for (const viewport of [narrow, wide])
    it(`is not cut short once an edit makes it longer, ${viewport.width} px wide`, async () => {
      const { page } = await place.desk({ viewport });
      const rows = worked.pages.find(({ name }) => name === "Side force")?.rows ?? [];
      const row = rows.findIndex((cells) => cells[lead.unit] === "margin") + 1;
      expect(row).toBeGreaterThan(1);
      for (const column of [4, 5, 6]) {
        await select(page, "Side force", `${columnName(column)}${row}`);
        await typeInto(page, "=-0.0004");
        const verdicts = () => page.$$eval("#cells .ht_master td.short", (cells) => cells.map((td) => td.textContent));
        await expect.poll(async () => (await verdicts()).join()).toContain("short by < 0.1 %");
        await expect.poll(() => cutVerdicts(page)).toEqual([]);
      }
    });
});
