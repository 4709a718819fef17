import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { heard, type OpenDesk, select, turnTo, typedText, typeInto, Workplace, where, worth } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
let desk: OpenDesk;
beforeAll(async () => {
  place = await Workplace.open();
  desk = await place.desk();
});
afterAll(() => place.close());

const number = (key: string): number => Number(cellAt("Supply", key, "Cruiser").text);

/** IEC 60228, table 3, class 5, plain copper: ohm/km at 20 °C. */
const class5: Readonly<Record<number, number>> = { 50: 0.386, 70: 0.272, 95: 0.206, 120: 0.161, 150: 0.129 };

describe("a changed input", () => {
  const current = 250;
  const input = cellAt("Supply", "I_run", "Cruiser");
  const drop = cellAt("Supply", "drop", "Cruiser");
  const verdictOf = () => desk.page.locator(".verdict > div").nth(1);
  let before = "";

  it("moves the drop as resistance times current says (IEC 60228, copper 0.00393 /K)", async () => {
    const { page } = desk;
    await select(page, "Supply", drop.cell);
    before = await worth(page);
    await select(page, "Supply", input.cell);
    await expect.poll(() => typedText(page)).toBe(input.text);
    await typeInto(page, String(current));
    await heard(page, new RegExp(`Value of ${input.cell}; \\d+ other cells followed`));
    await select(page, "Supply", drop.cell);
    const ohm = (class5[number("area")] ?? Number.NaN) / 1000 / number("legs");
    const expected = ohm * number("run") * (1 + 0.00393 * (number("T_cond") - 20)) * current;
    await expect.poll(async () => Number((await worth(page)).replace(/[^\d.]/g, ""))).toBeCloseTo(expected, 2);
    await expect.poll(() => worth(page)).not.toBe(before);
  });

  it("moves the verdict of its page and of Compare", async () => {
    const { page } = desk;
    await turnTo(page, "Supply");
    await expect.poll(() => verdictOf().textContent()).toMatch(/all \S+ hold/);
    await expect.poll(() => page.textContent('.pages button[data-page="Supply"] small')).toMatch(/all hold/);
    await turnTo(page, "Compare");
    await expect.poll(() => verdictOf().textContent()).not.toMatch(/drop in the conductors/);
  });

  it("is taken back by Ctrl+Z, which shows where it was and says so", async () => {
    const { page } = desk;
    await turnTo(page, "Compare");
    await page.keyboard.press("Control+z");
    await heard(page, new RegExp(`Undone: value of ${input.cell}, on Supply`));
    await expect.poll(() => where(page)).toBe(input.cell);
    await expect.poll(() => typedText(page)).toBe(input.text);
    await expect.poll(() => verdictOf().textContent()).toMatch(/drop in the conductors .+ by \d+ %/);
    await select(page, "Supply", drop.cell);
    await expect.poll(() => worth(page)).toBe(before);
  });

  it("comes back by Ctrl+Y and goes by the button that names it", async () => {
    const { page } = desk;
    await page.keyboard.press("Control+y");
    await heard(page, /Redone: value of/);
    const undo = page.locator(".tools button", { hasText: `Undo value of ${input.cell}` });
    await undo.click();
    await heard(page, /Undone: value of/);
    await expect.poll(() => typedText(page)).toBe(input.text);
  });

  it("is announced with the checks that it turned", async () => {
    const { page } = desk;
    await select(page, "Supply", input.cell);
    await typeInto(page, String(current));
    const news = await heard(page, /Changed:/);
    expect(news).toMatch(/Supply, Cruiser: .+ holds, [\d.]+ % to spare/);
    await expect.poll(() => page.getAttribute(".said", "role")).toBe("status");
    await page.keyboard.press("Control+z");
  });

  it("that is left empty opens its checks and never lets them look passed", async () => {
    const { page } = desk;
    await select(page, "Supply", input.cell);
    await page.keyboard.press("Delete");
    await heard(page, /Value of/);
    await expect.poll(() => verdictOf().textContent()).toMatch(/open:/);
    await select(page, "Supply", drop.cell);
    await expect.poll(() => page.textContent(".cell-line .sentence")).toMatch(/blank\./);
    await expect.poll(() => page.locator("#cells td[aria-invalid=true]").count()).toBeGreaterThan(0);
    await page.keyboard.press("Control+z");
    await heard(page, /Undone/);
    await expect.poll(() => typedText(page)).toBe(input.text);
    expect(desk.complaints).toEqual([]);
  });
});
