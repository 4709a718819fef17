import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { catalogue, families } from "../../src/functions";
import { exampleFormula } from "../../src/notebook/proof-page";
import { findings } from "./accessibility";
import { heard, select, typedText, Workplace, worth } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

const name = "CONDUCTOR.DROP";
const drop = catalogue.find((one) => one.name === name);
const { cell } = cellAt("Supply", "drop", "Cruiser");

describe("the place of the named functions", () => {
  it("lists every function by family, finds by word, and shows what a function rests on", async () => {
    const { page, complaints, strayed } = await place.desk();
    await page.getByRole("button", { name: "Functions", exact: true }).click();
    const names = page.locator(".function-list button b");
    await expect.poll(() => names.count()).toBe(catalogue.length);
    await expect.poll(() => page.locator(".function-list h3").allTextContents()).toEqual(Object.keys(families));
    await page.keyboard.type("voltage drop copper");
    await page.waitForFunction(
      (all) => document.querySelectorAll(".function-list button").length < all,
      catalogue.length,
    );
    await expect.poll(() => names.allTextContents()).toContain(name);
    await page.keyboard.press("ArrowDown");
    await page
      .getByRole("button", { name: new RegExp(name.replace(".", "\\.")) })
      .first()
      .click();
    const text = (await page.textContent(".function")) ?? "";
    for (const part of [
      "IEC 60228",
      "2004",
      "0 to 5000",
      "length of conductor out and back",
      "Flexible plain copper",
    ]) {
      expect(text).toContain(part);
    }
    await expect.poll(() => page.locator(".function .steps math").count()).toBeGreaterThan(2);
    await page.getByLabel("Look for").fill("no such word");
    await expect.poll(() => page.textContent(".function-list")).toContain('No function says "no such word"');
    await page.keyboard.press("Escape");
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toContain("Functions");
    expect([...complaints, ...strayed]).toEqual([]);
  });

  it("puts a worked example into the selected cell as one step", async () => {
    const { page } = await place.desk();
    await select(page, "Supply", cell);
    const before = await typedText(page);
    // The working of a cell leads to the functions in it.
    await page.locator(".working .call").getByRole("button", { name, exact: true }).click();
    await page.waitForSelector(".function");
    await expect.poll(() => page.textContent("#function-title")).toBe(drop?.title);
    const formula = exampleFormula(drop as NonNullable<typeof drop>, drop?.examples[0].given ?? {});
    await page.getByRole("button", { name: `Insert ${formula}` }).click();
    await heard(page, /example of CONDUCTOR\.DROP in/i);
    await expect.poll(() => typedText(page)).toBe(formula);
    await expect
      .poll(async () => Number.parseFloat(await worth(page)))
      .toBeCloseTo(Number(drop?.examples[0].expect), 2);
    await page.waitForFunction(() => document.activeElement?.closest("#cells"));
    await page.keyboard.press("Control+z");
    await heard(page, /Undone/);
    await expect.poll(() => typedText(page)).toBe(before);
  });

  it("says why an example cannot go into the name of a row", async () => {
    const { page } = await place.desk();
    await select(page, "Supply", "A5");
    await page.getByRole("button", { name: "Functions", exact: true }).click();
    await expect.poll(() => page.textContent(".function")).toContain("select a cell of an option");
    await expect.poll(() => page.locator(".function .examples").first().getAttribute("inert")).not.toBeNull();
  });

  for (const colorScheme of ["light", "dark"] as const) {
    it(`gives the automatic accessibility check nothing to find, ${colorScheme}`, { timeout: 120_000 }, async () => {
      const { page } = await place.desk({ colorScheme });
      await page.getByRole("button", { name: "Functions", exact: true }).click();
      await page.waitForSelector(".function");
      expect(await findings(page, false)).toEqual([]);
    });
  }
});
