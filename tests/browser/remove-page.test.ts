import { afterAll, beforeAll, expect, it } from "vitest";
import { findings } from "./accessibility";
import { heard, textOf, Workplace } from "./desk";
import { focused, until } from "./walk-by-keys";
import { cellAt, worked } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

it("goes by keyboard after a question that says what reads it, and comes back with undo", {
  timeout: 90_000,
}, async () => {
  const { page, complaints } = await place.desk();
  const reader = cellAt("Compare", "need", "Cruiser");
  await until(page, "Tab", /^Side force$/);
  await page.keyboard.press("Enter");
  await expect.poll(() => page.textContent("h1")).toContain("Side force");
  await page.keyboard.press("Tab");
  await expect.poll(() => focused(page)).toBe("What can be done with page Side force");
  await page.keyboard.press("Enter");
  await expect.poll(() => focused(page)).toMatch(/^Rename page Side force …/);
  await until(page, "ArrowDown", /^Remove page Side force …/);
  await page.keyboard.press("Enter");
  await page.waitForSelector("dialog[open]");
  expect((await page.textContent("dialog"))?.replace(/\s+/g, " ")).toMatch(
    /Remove page Side force\?.*\d+ formulas on \d pages \(.*Compare.*\) read it and would show #REF!\..*Removed with it: its note/,
  );
  expect(await findings(page)).toEqual([]);
  await page.keyboard.press("Escape");
  await expect.poll(() => page.locator("dialog").count()).toBe(0);
  expect(await page.locator(".pages li").count()).toBe(worked.pages.length);

  // The key does the same as the menu.
  await until(page, "Shift+Tab", /^Side force$/);
  await page.keyboard.press("Delete");
  await until(page, "Tab", /^Remove the page$/);
  await page.keyboard.press("Enter");
  await heard(page, /Page Side force is removed; undo brings it back/);
  await expect.poll(() => page.locator('.pages button[data-page="Side force"]').count()).toBe(0);
  const after = worked.pages[worked.pages.findIndex(({ name }) => name === "Side force") + 1]?.name;
  await expect.poll(() => focused(page)).toBe(after);
  expect(await textOf(page, "Compare", reader.cell)).toBe("=#REF!");

  await page.keyboard.press("Control+z");
  await heard(page, /Undone: page Side force removed, on Side force/);
  expect(await textOf(page, "Compare", reader.cell)).toBe(reader.text);
  const back = cellAt("Side force", "need", "Cruiser");
  expect(await textOf(page, "Side force", back.cell)).toBe(back.text);
  await page.waitForSelector(".notes");
  expect(complaints).toEqual([]);
});
