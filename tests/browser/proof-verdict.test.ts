import { afterAll, beforeAll, expect, it } from "vitest";
import { select, Workplace } from "./desk";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

it("shows the verdict over all proofs whole, as a verdict", async () => {
  const { page } = await place.desk();
  await select(page, "Proof", "F2");
  const verdict = page.locator("#cells .ht_master td.current");
  await expect.poll(() => verdict.textContent()).toMatch(/^\d+ of \d+ agree$/);
  expect(await verdict.evaluate((td) => td.classList.contains("holds"))).toBe(true);
  // Nothing of it is cut off: the words with their mark and the sides fit into the cell.
  const cut = await verdict.evaluate((td) => td.scrollWidth - td.clientWidth);
  expect(cut).toBeLessThanOrEqual(0);
});
