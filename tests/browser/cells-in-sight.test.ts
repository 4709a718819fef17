import { afterAll, beforeAll, expect, it } from "vitest";
import { select, Workplace } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

it("keeps the options beside the columns that stay in sight when one of them is made wider", async () => {
  const { page } = await place.desk();
  /** From the right edge of the columns that stay to the left edge of the first option, in px. */
  const gap = () =>
    page.evaluate(() => {
      const head = (part: string, words: string) =>
        [...document.querySelectorAll(`#cells ${part} thead th`)]
          .find(({ textContent }) => textContent?.trim().endsWith(words))
          ?.getBoundingClientRect();
      const stays = head(".ht_clone_top_inline_start_corner", "Basis")?.right ?? Number.NaN;
      return (head(".ht_clone_top", "Sloop")?.left ?? Number.NaN) - stays;
    });
  const widths = () =>
    page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>("#cells .ht_clone_inline_start col")].map(({ style }) => style.width),
    );
  await select(page, "Supply", "E3");
  expect(Math.abs(await gap())).toBeLessThanOrEqual(1);
  const before = await widths();
  await select(page, "Supply", "A3");
  await page.keyboard.press("Shift+F10");
  await page.getByRole("menuitem", { name: "Wider column" }).click();
  await expect.poll(widths).not.toEqual(before);
  expect(Math.abs(await gap())).toBeLessThanOrEqual(1);
});

it("keeps the selected cell in sight when what stands above the cells grows", async () => {
  const { page } = await place.desk();
  await select(page, "Supply", cellAt("Supply", "area", "Cruiser").cell);
  /** How far the selected cell reaches below the cells' own room, in px. */
  const below = () =>
    page.evaluate(() => {
      const cell = document.querySelector("#cells td.current");
      const room = document.querySelector("#cells");
      return cell && room ? cell.getBoundingClientRect().bottom - room.getBoundingClientRect().bottom : Number.NaN;
    });
  expect(await below()).toBeLessThanOrEqual(1);
  const grown = await page.evaluate(() => {
    const before = document.querySelector("#cells")?.clientHeight ?? 0;
    const head = document.querySelector<HTMLElement>(".cell-line");
    if (head) head.style.marginTop = "70px";
    return before - (document.querySelector("#cells")?.clientHeight ?? 0);
  });
  expect(grown).toBeGreaterThan(50);
  await expect.poll(below).toBeLessThanOrEqual(1);
});
