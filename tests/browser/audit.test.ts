import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { unpackNotebook } from "../../src/notebook/zip";
import { findings } from "./accessibility";
import { contentOf, heard, select, turnTo, typedText, typeInto, Workplace, where } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

const drop = cellAt("Supply", "drop", "Cruiser");
const area = cellAt("Supply", "area", "Cruiser");

async function openAudit(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Audit", exact: true }).click();
  await page.waitForSelector(".audit .sum");
}

/** The first line, once it speaks of the notebook as it is now. */
async function verdict(page: Page): Promise<string> {
  await page.waitForFunction(() => {
    const text = document.querySelector(".audit .sum")?.textContent ?? "";
    return text !== "" && !text.includes("Checking");
  });
  return ((await page.textContent(".audit .sum")) ?? "").replace(/\s+/g, " ").trim();
}

const sign = async (page: Page): Promise<void> => {
  await page.getByLabel("Name", { exact: true }).fill("R. Tern");
  await page.keyboard.press("Enter");
};

const typed = (page: Page) => page.locator(".findings > .finding[data-rule='typed-number']");

describe("findings beside the cells", () => {
  it("shows a number typed into a formula, leads to it, takes a reason, keeps it in the file, and undo brings it back", {
    timeout: 120_000,
  }, async () => {
    const { page, complaints, strayed } = await place.desk();
    await openAudit(page);
    await expect
      .poll(() => verdict(page))
      .toMatch(/^No errors, \d+ warnings?, \d+ notes? open in \d+ formulas; 0 accepted\. 0 of/);
    await expect.poll(() => typed(page).count()).toBe(0);
    await select(page, "Supply", drop.cell);
    await typeInto(page, `${drop.text}*1.07`);
    await typed(page).waitFor();
    await expect.poll(() => typed(page).textContent()).toContain("1.07");
    await select(page, "Supply", "E3");
    await typed(page).getByRole("link").first().click();
    await page.waitForFunction(
      (cell) => document.querySelector(".cell-line .where b")?.textContent === cell,
      drop.cell,
    );
    // The cell says it by a shape, and in words on the line above the cells.
    const cell = page.locator("#cells .ht_master td.finding.current");
    await expect.poll(() => cell.evaluate((td) => getComputedStyle(td, "::after").content)).not.toBe("none");
    await expect.poll(() => page.textContent(".cell-line .sentence")).toContain("1.07");

    await typed(page).getByRole("button", { name: "Accept with reason …" }).click();
    await page.getByLabel("Why it may stand").fill("allowance of the yard");
    await page.getByRole("button", { name: "Accept", exact: true }).click();
    await sign(page);
    await heard(page, /typed number accepted at Supply\.drop@Cruiser/i);
    await expect.poll(() => verdict(page)).toContain("1 accepted");
    const accepted = page.locator(".accepted .finding[data-rule='typed-number']");
    await page.locator(".accepted summary").click();
    await expect
      .poll(() => accepted.textContent())
      .toMatch(/Accepted by R\. Tern on \d{4}-\d\d-\d\d: allowance of the yard/);

    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: /^Save(, has changes)?$/ }).click();
    const { about } = unpackNotebook(new Uint8Array(await contentOf(await download)));
    expect(about.accepted).toEqual([
      expect.objectContaining({ rule: "typed-number", at: "Supply.drop@Cruiser", reason: "allowance of the yard" }),
    ]);

    await page.getByRole("button", { name: /^Undo/ }).click();
    await page.waitForFunction(() => document.querySelectorAll(".accepted").length === 0);
    await expect.poll(() => typed(page).count()).toBe(1);
    await page.getByRole("button", { name: /^Redo/ }).click();
    await page.locator(".accepted summary").click();
    await accepted.getByRole("button", { name: "Withdraw acceptance" }).click();
    await page.waitForFunction(() => document.querySelectorAll(".accepted").length === 0);
    expect([...complaints, ...strayed]).toEqual([]);
  });

  it("shows only this page, one level or one check when asked", { timeout: 120_000 }, async () => {
    const { page } = await place.desk();
    await select(page, "Supply", drop.cell);
    await typeInto(page, `${drop.text}*1.07`);
    await openAudit(page);
    await typed(page).waitFor();
    const shown = (rule: RegExp) =>
      page.waitForFunction((source) => {
        const rules = [...document.querySelectorAll<HTMLElement>(".findings > .finding")].map(
          (one) => one.dataset.rule,
        );
        return new RegExp(source).test([...new Set(rules)].join(" "));
      }, rule.source);
    await page
      .locator(".filters label", { hasText: /^\s*Check/ })
      .locator("select")
      .selectOption("Typed number");
    await shown(/^typed-number$/);
    await page
      .locator(".filters label", { hasText: /^\s*Level/ })
      .locator("select")
      .selectOption("Errors");
    await shown(/^$/);
    await page
      .locator(".filters label", { hasText: /^\s*Level/ })
      .locator("select")
      .selectOption("Any");
    await shown(/^typed-number$/);
    await page
      .locator(".filters label", { hasText: /^\s*Pages/ })
      .locator("select")
      .selectOption("This page");
    await turnTo(page, "Boat");
    await shown(/^$/);
    await turnTo(page, "Supply");
    await shown(/^typed-number$/);
  });

  it("is brought into sight where it stands below the cells", async () => {
    const { page } = await place.desk({ viewport: { width: 820, height: 1180 } });
    await openAudit(page);
    const box = await page.locator(".side h2").first().boundingBox();
    expect(box?.y).toBeGreaterThanOrEqual(0);
    expect(box?.y).toBeLessThan(1180 / 2);
  });

  it("closes with Escape and gives the keyboard back to its button", async () => {
    const { page } = await place.desk();
    await openAudit(page);
    await page.waitForFunction(() => document.activeElement?.closest(".side h2"));
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Escape");
    await page.waitForSelector(".working");
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent?.trim())).toBe("Audit");
    await expect.poll(() => page.locator("#cells td.finding").count()).toBe(0);
  });
});

describe("ticks of a review", () => {
  it("stand with name and date, go stale when something behind them changes, and are one step each", {
    timeout: 120_000,
  }, async () => {
    const { page, complaints } = await place.desk();
    await openAudit(page);
    await select(page, "Supply", drop.cell);
    await page.getByRole("button", { name: "Tick this row" }).click();
    await sign(page);
    await heard(page, /review of Supply\.drop/i);
    const head = page.locator("#cells tbody th.tick");
    await head.first().waitFor({ state: "attached" });
    await expect.poll(() => head.first().getAttribute("title")).toMatch(/^reviewed by R\. Tern on \d{4}-\d\d-\d\d$/);
    // The name is asked for once.
    await page.getByRole("button", { name: "Tick this page" }).click();
    await heard(page, /review of Supply\.\*/i);
    await expect.poll(() => verdict(page)).toMatch(/[1-9]\d* of \d+ filled cells reviewed\.$/);
    // The tick of the page stands at its title and in the list of pages, in words.
    const title = page.locator(".head .page-tick");
    await expect.poll(() => title.textContent()).toMatch(/Whole page: reviewed by R\. Tern on \d{4}-\d\d-\d\d\./);
    const listed = page.locator('.pages button[data-page="Supply"] .page-tick');
    await expect.poll(() => listed.textContent()).toMatch(/reviewed: reviewed by R\. Tern on/);
    await expect.poll(() => page.locator(".page-tick").count()).toBe(2);

    await select(page, "Supply", area.cell);
    const before = await typedText(page);
    await typeInto(page, "150");
    await select(page, "Supply", drop.cell);
    await page.locator("#cells tbody th.stale-tick").first().waitFor({ state: "attached" });
    await expect.poll(() => verdict(page)).toContain("2 ticks stale");
    await expect
      .poll(() => page.textContent(".cell-line .sentence"))
      .toContain("stale: something behind it has changed");
    await expect.poll(() => title.textContent()).toContain("stale: something behind it has changed");
    await expect.poll(() => listed.textContent()).toMatch(/tick stale: ticked by R\. Tern on/);
    await expect.poll(() => listed.getAttribute("class")).toContain("open");
    expect(await findings(page)).toEqual([]);
    await page.getByRole("button", { name: /^Undo/ }).click();
    await page.waitForFunction(() => document.querySelectorAll("#cells tbody th.stale-tick").length === 0);
    // The panel says that it checks until the next report is there.
    await expect.poll(() => verdict(page)).not.toMatch(/stale|Checking/);
    await select(page, "Supply", area.cell);
    await expect.poll(() => typedText(page)).toBe(before);
    await page.getByRole("button", { name: "Take the tick of Supply.* back" }).click();
    await page.waitForFunction(() => document.querySelectorAll(".ticks li").length === 1);
    await page.waitForFunction(() => document.querySelectorAll(".page-tick").length === 0);
    expect(complaints).toEqual([]);
  });

  it("are made from the cells by keyboard", async () => {
    const { page } = await place.desk();
    await select(page, "Supply", drop.cell);
    await page.keyboard.press("Control+Alt+k");
    await sign(page);
    await page.locator("#cells td.tick").first().waitFor();
    await expect.poll(() => where(page)).toBe(drop.cell);
    await page.waitForFunction(() =>
      /Reviewed by R\. Tern/.test(document.querySelector(".cell-line .sentence")?.textContent ?? ""),
    );
  });

  it("are printed with the findings as a record", async () => {
    const { page } = await place.desk();
    await select(page, "Supply", drop.cell);
    await page.keyboard.press("Control+Alt+k");
    await sign(page);
    await openAudit(page);
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save record" }).click();
    const text = (await contentOf(await download)).toString("utf8");
    expect(text).toContain("<h1>Audit record</h1>");
    expect(text).toContain("Supply.drop@Cruiser");
    expect(text).toContain("R. Tern");
  });
});

describe("the automatic accessibility check", () => {
  for (const colorScheme of ["light", "dark"] as const) {
    it(`finds nothing in the audit and in the drawing of feeds, ${colorScheme}`, { timeout: 120_000 }, async () => {
      const { page } = await place.desk({ colorScheme });
      await select(page, "Supply", drop.cell);
      await page.waitForSelector(".feed-graph");
      expect(await findings(page, false), "feeds").toEqual([]);
      await page.keyboard.press("Control+Alt+k");
      expect(await findings(page, false), "name").toEqual([]);
      await sign(page);
      await select(page, "Supply", drop.cell);
      await typeInto(page, `${drop.text}*1.07`);
      await openAudit(page);
      await typed(page).waitFor();
      await typed(page).getByRole("button", { name: "Accept with reason …" }).click();
      expect(await findings(page, false), "audit").toEqual([]);
    });
  }
});
