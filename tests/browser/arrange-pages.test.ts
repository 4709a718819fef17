import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findings } from "./accessibility";
import { heard, said, textOf, Workplace } from "./desk";
import { focused, until } from "./walk-by-keys";
import { cellAt, worked } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

const names = (page: Page): Promise<string[]> =>
  page.$$eval(".pages button[data-page]", (buttons) => buttons.map((one) => (one as HTMLElement).dataset.page ?? ""));

const shipped = worked.pages.map(({ name }) => name);

describe("the list of pages, by keyboard alone", () => {
  it("gives a page another name, says in the dialog what cannot be one, and takes it back", {
    timeout: 120_000,
  }, async () => {
    const { page, complaints } = await place.desk();
    const reader = cellAt("Compare", "need", "Cruiser");
    await until(page, "Tab", /^Side force$/);
    await page.keyboard.press("F2");
    await page.waitForSelector("dialog[open] #page-name");
    await expect.poll(() => page.inputValue("#page-name")).toBe("Side force");
    expect(await findings(page)).toEqual([]);

    // What is there already is selected, so typing replaces it.
    await page.keyboard.type("tunnel");
    await page.keyboard.press("Enter");
    await expect
      .poll(() => page.textContent("dialog [role=alert]"))
      .toContain('There is already a page "Tunnel"; give another name.');
    expect(await names(page)).toEqual(shipped);
    expect(await findings(page)).toEqual([]);
    await page.keyboard.type("Wind & push");
    await page.keyboard.press("Enter");
    await heard(page, /Page Side force is now Wind & push; what reads it has followed\./);
    await expect.poll(() => page.textContent("h1")).toContain("Wind & push");
    await expect.poll(() => focused(page)).toBe("Wind & push");
    expect(await names(page)).toEqual(shipped.map((name) => (name === "Side force" ? "Wind & push" : name)));
    expect(await textOf(page, "Compare", reader.cell)).toBe(reader.text.replaceAll("'Side force'!", "'Wind & push'!"));
    expect(reader.text).toContain("'Side force'!");
    // Its drawing is found under the other name.
    await page.keyboard.press("Escape");
    await until(page, "Shift+Tab", /^Wind & push$/);
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator(".side figure svg").count()).toBeGreaterThan(0);

    await page.keyboard.press("Control+z");
    await heard(page, /Undone: page Side force renamed, on Side force/);
    expect(await names(page)).toEqual(shipped);
    expect(await textOf(page, "Compare", reader.cell)).toBe(reader.text);
    expect(complaints).toEqual([]);
  });

  it("moves a page with Alt and the arrows and from its menu, and stays on it", { timeout: 120_000 }, async () => {
    const { page, complaints } = await place.desk();
    const at = shipped.indexOf("Side force");
    const before = shipped.toSpliced(at, 1).toSpliced(at - 1, 0, "Side force");
    await until(page, "Tab", /^Side force$/);
    await page.keyboard.press("Alt+ArrowUp");
    await heard(page, new RegExp(`Page Side force is now ${at} of ${shipped.length}\\.`));
    expect(await names(page)).toEqual(before);
    await expect.poll(() => focused(page)).toBe("Side force");
    await expect.poll(() => page.textContent("h1 .number")).toBe(String(at));

    // One after the other without waiting: each key finds the page under the keyboard.
    await page.keyboard.press("Alt+ArrowDown");
    await page.keyboard.press("Alt+ArrowDown");
    await heard(page, new RegExp(`Page Side force is now ${at + 2} of ${shipped.length}\\.`));
    expect(await focused(page)).toBe("Side force");

    await page.keyboard.press("Shift+F10");
    await until(page, "ArrowDown", /^Move up, before Tunnel/);
    expect(await findings(page)).toEqual([]);
    await page.keyboard.press("Enter");
    await heard(page, new RegExp(`Page Side force is now ${at + 1} of ${shipped.length}\\.`));
    await expect.poll(() => focused(page)).toBe("Side force");
    expect(await names(page)).toEqual(shipped);
    const reader = cellAt("Compare", "need", "Cruiser");
    expect(await textOf(page, "Compare", reader.cell)).toBe(reader.text);

    for (let i = 0; i < 4; i++) await page.keyboard.press("Control+z");
    await heard(page, /Undone: page Side force moved up, on Side force/);
    expect(await names(page)).toEqual(shipped);

    // The first page goes no further.
    await until(page, "Escape", /./);
    await page.locator(`.pages button[data-page="${shipped[0]}"]`).focus();
    await page.keyboard.press("Alt+ArrowUp");
    await heard(page, new RegExp(`${shipped[0]} is the first page already\\.`));
    expect(await focused(page)).toBe(shipped[0]);
    await page.keyboard.press("Shift+F10");
    const entries = await page.locator("[role=menuitem]").allTextContents();
    expect(entries.map((one) => one.replace(/\s+/g, " ").trim())).toEqual([
      `Rename page ${shipped[0]} … F2`,
      `Move down, after ${shipped[1]} Alt ↓`,
      `Remove page ${shipped[0]} … Del`,
    ]);
    expect(complaints).toEqual([]);
  });
});

describe("a notebook that is closed to changes", () => {
  it("keeps its pages as they are, and says why", { timeout: 120_000 }, async () => {
    const { page: first } = await place.desk();
    await first.waitForFunction(() =>
      /Kept in this browser/.test(document.querySelector(".safety")?.textContent ?? ""),
    );
    const page = await first.context().newPage();
    await page.goto(first.url());
    await page.waitForSelector("html[data-ready]");
    await expect.poll(() => page.textContent(".alarm")).toMatch(/open in another window/);
    expect(await page.locator(".pages .more").isDisabled()).toBe(true);
    await page.locator('.pages button[data-page="Tunnel"]').focus();
    for (const key of ["F2", "Alt+ArrowUp", "Alt+ArrowDown", "Delete", "Shift+F10"]) {
      await page.keyboard.press(key);
      await heard(page, /open in another window/);
    }
    expect(await page.locator("dialog, [role=menu]").count()).toBe(0);
    expect(await names(page)).toEqual(shipped);
    expect(await page.textContent("h1")).not.toContain("Tunnel");
  });
});

describe("the pages of a course", () => {
  it("stay as they are on the trainee's side; the trainer removes a task and brings it back", {
    timeout: 120_000,
  }, async () => {
    const { page, complaints } = await place.desk();
    await page.getByRole("button", { name: "Notebooks …" }).click();
    await page.getByRole("button", { name: "Course at Tern Quay" }).click();
    await page.waitForFunction(() => document.title.endsWith("Course at Tern Quay"));
    const all = await names(page);
    await page.locator('.pages button[data-page="Drop"]').focus();
    for (const key of ["F2", "Alt+ArrowUp", "Alt+ArrowDown", "Delete", "Shift+F10"]) await page.keyboard.press(key);
    expect(await page.locator("dialog, [role=menu], .pages .more").count()).toBe(0);
    expect(await names(page)).toEqual(all);

    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Trainer's side …" }).click();
    await page.getByRole("button", { name: "Show the trainer's side" }).click();
    await page.waitForSelector("#cells .ht_master td");
    await page.locator('.pages button[data-page="Drop"]').focus();
    await page.keyboard.press("Delete");
    await page.waitForSelector("dialog[open]");
    expect(await page.textContent("dialog")).toContain("Remove page Drop?");
    await until(page, "Tab", /^Remove the page$/);
    await page.keyboard.press("Enter");
    await heard(page, /Page Drop is removed; undo brings it back/);
    expect(await names(page)).toEqual(all.filter((name) => name !== "Drop"));
    await page.keyboard.press("Control+z");
    await heard(page, /Undone: page Drop removed, on Drop/);
    expect(await names(page)).toEqual(all);
    expect(await said(page)).not.toContain("Nothing");
    await page.getByRole("button", { name: "Back to the trainee's side" }).click();
    await page.waitForSelector("#task");
    expect(await page.locator(".pages .more").count()).toBe(0);
    expect(complaints).toEqual([]);
  });
});
