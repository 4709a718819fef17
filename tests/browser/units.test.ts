import { afterAll, beforeAll, expect, it } from "vitest";
import { type OpenDesk, select, typedText, typeInto, Workplace, worth } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
let desk: OpenDesk;
beforeAll(async () => {
  place = await Workplace.open();
  desk = await place.desk();
});
afterAll(() => place.close());

it("shows and takes customary units, and holds metric ones all the same (1 in = 25.4 mm, NIST SP 811)", async () => {
  const { page } = desk;
  const diameter = cellAt("Tunnel", "diameter", "Cruiser");
  const axis = cellAt("Tunnel", "axis_height", "Cruiser");
  const area = cellAt("Supply", "area", "Cruiser");
  await page.getByRole("button", { name: "Units", exact: true }).click();
  await page.getByRole("button", { name: "All customary" }).click();
  await page.getByRole("button", { name: "Close" }).click();

  await select(page, "Tunnel", diameter.cell);
  await expect
    .poll(async () => Number((await worth(page)).replace(/[^\d.]/g, "")))
    .toBeCloseTo(Number(diameter.text) / 25.4, 1);
  await expect.poll(() => worth(page)).toMatch(/in$/);
  // A choice of the list is held as it stands there: 9.8425197 in is 250 mm.
  await typeInto(page, String(Number((250 / 25.4).toPrecision(8))));
  await select(page, "Tunnel", axis.cell);
  await typeInto(page, "11.5");
  await select(page, "Supply", area.cell);
  await expect.poll(() => worth(page)).toMatch(/^3\/0 \(95 mm²\)/);
  await typeInto(page, "4/0");

  await page.getByRole("button", { name: "Units", exact: true }).click();
  await page.getByRole("button", { name: "All metric" }).click();
  await page.getByRole("button", { name: "Close" }).click();
  await select(page, "Tunnel", diameter.cell);
  await expect.poll(() => typedText(page)).toBe("250");
  await select(page, "Tunnel", axis.cell);
  // 11.5 in · 25.4
  await expect.poll(() => typedText(page)).toBe("292.1");
  await select(page, "Supply", area.cell);
  await expect.poll(() => typedText(page)).toBe("120");
  expect(desk.complaints).toEqual([]);
}, 120_000);
