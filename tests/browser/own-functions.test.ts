import { afterAll, beforeAll, expect, it } from "vitest";
import { unpackNotebook } from "../../src/notebook/zip";
import { findings } from "./accessibility";
import { contentOf, heard, select, turnTo, typeInto, Workplace, worth } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

it("copies a function under another name, changes a row of it, calls it, sees it marked, saves it, and takes it back", {
  timeout: 120_000,
}, async () => {
  const { page, complaints, strayed } = await place.desk();
  await page.getByRole("button", { name: "Functions", exact: true }).click();
  await page.getByLabel("Look for").fill("CONDUCTOR.DROP");
  await page.getByRole("button", { name: "Copy under another name …" }).click();
  const name = page.getByLabel("Name", { exact: true });
  expect(await name.inputValue()).toBe("YARD.DROP");
  await name.fill("conductor.drop");
  await page.keyboard.press("Enter");
  expect(await page.getByRole("alert").textContent()).toContain("CONDUCTOR.DROP is a shipped function");
  await name.fill("yard.drop");
  await page.keyboard.press("Enter");
  await heard(page, /YARD\.DROP can be called in every cell/);
  expect(await page.textContent("h1")).toContain("Own functions");
  expect(await findings(page)).toEqual([]);

  const drop = cellAt("Supply", "drop", "Cruiser");
  await select(page, "Supply", drop.cell);
  const before = await worth(page);
  await typeInto(page, drop.text.replace("CONDUCTOR.DROP", "YARD.DROP"));
  await select(page, "Supply", drop.cell);
  expect(await worth(page)).toBe(before);
  await page.waitForSelector(".working .own-mark");
  expect(await page.textContent(".working .own-mark")).toBe("The notebook's own function, page Own functions");

  // A mistake is one sentence with page and row, where the function is called.
  await turnTo(page, "Own functions");
  const line = await page.evaluate(
    () =>
      [...document.querySelectorAll("#cells .ht_master tbody tr")].findIndex((tr) =>
        tr.textContent?.includes("result"),
      ) + 1,
  );
  await select(page, "Own functions", `C${line}`);
  await typeInto(page, "R * curent");
  await select(page, "Supply", drop.cell);
  await page.waitForSelector(".working .short");
  expect(await page.textContent(".working .short")).toContain(
    `Own functions, row ${line}: step U: curent is not defined before its use`,
  );
  await page.keyboard.press("Control+z");
  await select(page, "Supply", drop.cell);
  expect(await worth(page)).toBe(before);

  await page.getByRole("button", { name: "Functions", exact: true }).click();
  expect(await page.textContent(".function-list h3")).toBe("The notebook's own");
  expect(await page.textContent(".function .own-mark")).toContain("defined on page Own functions");
  expect(await findings(page)).toEqual([]);
  await page.keyboard.press("Escape");

  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: /^Save(, has changes)?$/ }).click();
  const saved = unpackNotebook(new Uint8Array(await contentOf(await download)));
  expect(saved.pages.at(-1)?.rows.map(([part]) => part)).toContain("result");
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+z");
  expect(await page.locator('.pages button[data-page="Own functions"]').count()).toBe(0);
  expect([...complaints, ...strayed]).toEqual([]);
});
