import { afterAll, beforeAll, expect, it } from "vitest";
import { findings } from "./accessibility";
import { heard, select, typedText, typeInto, Workplace } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

const cover = cellAt("Tunnel", "cover_light", "Cruiser");

it("unfolds a function by keyboard, from the menu and beside its working, and one undo brings it back", {
  timeout: 120_000,
}, async () => {
  const { page, complaints, strayed } = await place.desk();
  await select(page, "Tunnel", cover.cell);
  const before = await typedText(page);
  expect(before).toContain("TUNNEL.COVER(");
  await page.keyboard.press("Control+Alt+u");
  await heard(page, /TUNNEL\.COVER is unfolded into \d+ rows, \d+ to \d+; undo brings it back\./);
  await expect.poll(() => typedText(page)).toMatch(/^=IF\(.*,NA\(\)\)/);
  expect(await findings(page)).toEqual([]);
  await page.keyboard.press("Control+z");
  await select(page, "Tunnel", cover.cell);
  await expect.poll(() => typedText(page)).toBe(before);

  await page.keyboard.press("Shift+F10");
  await page.getByRole("menuitem", { name: "Unfold TUNNEL.COVER into rows" }).click();
  await heard(page, /TUNNEL\.COVER is unfolded/);
  await page.getByRole("button", { name: /^Undo/ }).click();
  await select(page, "Tunnel", cover.cell);
  await page.getByRole("button", { name: "Unfold into rows" }).click();
  await heard(page, /TUNNEL\.COVER is unfolded/);
  // The button has gone with the call, and the keyboard is with what came of it.
  await expect.poll(() => page.evaluate(() => document.activeElement?.closest("#cells") !== null)).toBe(true);

  // A function that reads a table says why it stays as it is.
  const drop = cellAt("Supply", "drop", "Cruiser");
  await select(page, "Supply", drop.cell);
  await page.keyboard.press("Control+Alt+u");
  await heard(page, /CONDUCTOR\.DROP cannot be unfolded: its step r reads the table/);
  await expect.poll(() => typedText(page)).toBe(drop.text);
  expect([...complaints, ...strayed]).toEqual([]);
});

it("says beside a cell that a branch is not taken, and shows no error in the steps of it", {
  timeout: 120_000,
}, async () => {
  const { page, complaints } = await place.desk();
  const drop = cellAt("Supply", "drop", "Cruiser");
  // A temperature beyond what the function holds for: an error where it is worked out.
  const call = (asked: string) => `=IF(${asked},CONDUCTOR.DROP(300,10,50,500),1)`;
  await select(page, "Supply", drop.cell);
  await typeInto(page, call("1=2"));
  await select(page, "Supply", drop.cell);
  const steps = page.locator(".working .call");
  await expect.poll(() => steps.textContent()).toContain("This branch is not taken now");
  expect(await steps.locator(".short, .stops").count()).toBe(0);
  // What the function was given is a plain input, shown in any branch, as on the terminal.
  const given = steps.locator(".given tr", { hasText: "temperature" }).locator("td").first();
  await expect.poll(() => given.textContent()).toBe("500\u00a0°C");
  expect(await findings(page)).toEqual([]);

  await typeInto(page, call("1=1"));
  await select(page, "Supply", drop.cell);
  await expect.poll(() => steps.locator(".short").count()).toBeGreaterThan(0);
  expect(await steps.textContent()).not.toContain("not taken");
  await expect.poll(() => given.textContent()).toContain("500\u00a0°C");
  await expect.poll(() => given.locator(".short").count()).toBe(1);
  expect(complaints).toEqual([]);
});
