import { afterAll, beforeAll, expect, it } from "vitest";
import { heard, type OpenDesk, select, textOf, turnTo, typedText, typeInto, Workplace, worth } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
let desk: OpenDesk;
beforeAll(async () => {
  place = await Workplace.open();
  desk = await place.desk();
});
afterAll(() => place.close());

it("speaks German with a decimal comma once that is chosen, stores a point, asks, and keeps the choice", async () => {
  const { page } = desk;
  const run = cellAt("Supply", "run", "Cruiser");
  await page.getByRole("button", { name: "Language …" }).click();
  await page
    .locator("dialog")
    .getByLabel(/^Language\s/)
    .and(page.locator("select"))
    .selectOption("de");
  await page.getByLabel("Decimal sign").selectOption(",");
  await Promise.all([page.waitForNavigation(), page.getByRole("button", { name: "Use this" }).click()]);
  await page.waitForSelector("html[data-ready]");
  await expect.poll(() => page.getAttribute("html", "lang")).toBe("de");
  await page.getByRole("button", { name: "Einheiten", exact: true }).waitFor();

  await select(page, "Supply", run.cell);
  await typeInto(page, "18,5");
  await heard(page, /Wert von/);
  await expect.poll(() => textOf(page, "Supply", run.cell)).toBe("18,5");
  await expect.poll(() => worth(page)).toMatch(/^18,50?\s*m$/);
  // What the file holds: a point.
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Ausgeben", exact: true }).click();
  const parts: Buffer[] = [];
  for await (const part of await (await download).createReadStream()) parts.push(part as Buffer);
  expect(Buffer.concat(parts).toString()).toMatch(/,18\.5,/);

  await select(page, "Supply", run.cell);
  await typeInto(page, "1.234");
  await page.getByRole("button", { name: "Dezimalzeichen: 1,234" }).click();
  await heard(page, /Wert von/);
  await expect.poll(() => textOf(page, "Supply", run.cell)).toBe("1,234");
  await typeInto(page, "=MAX(1,5;2)*10");
  await expect.poll(() => textOf(page, "Supply", run.cell)).toBe("=MAX(1,5;2)*10");
  await expect.poll(() => worth(page)).toMatch(/^20/);

  await page.reload();
  await page.waitForSelector("html[data-ready]");
  await turnTo(page, "Supply");
  await select(page, "Supply", run.cell);
  await expect.poll(() => typedText(page)).toBe("=MAX(1,5;2)*10");
  await expect.poll(() => page.getAttribute("html", "lang")).toBe("de");
  expect(desk.complaints).toEqual([]);
}, 120_000);
