import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { heard, type OpenDesk, press, select, textOf, turnTo, typeInto, Workplace, where } from "./desk";
import { cellAt, worked } from "./worked";

let place: Workplace;
let desk: OpenDesk;
beforeAll(async () => {
  place = await Workplace.open();
  desk = await place.desk();
});
afterAll(() => place.close());

const heads = () => desk.page.$$eval("#cells .ht_clone_top thead th .name", (all) => all.map((one) => one.textContent));

describe("rows", () => {
  const input = cellAt("Supply", "I_run", "Cruiser");
  const reader = cellAt("Supply", "drop", "Cruiser");
  const down = (text: string) => text.replace(/F(\d+)/g, (_, n) => `F${Number(n) + 1}`);

  it("are inserted by the keys; formulas follow", async () => {
    const { page } = desk;
    await select(page, "Supply", input.cell);
    await page.keyboard.press("Control+Alt+i");
    await heard(page, /1 empty row inserted at row/);
    await expect.poll(() => textOf(page, "Supply", `F${reader.row + 1}`)).toBe(down(reader.text));
    await page.keyboard.press("Control+z");
    await heard(page, /Undone: 1 row inserted/);
    await expect.poll(() => textOf(page, "Supply", reader.cell)).toBe(reader.text);
  });

  it("are removed by the menu; what pointed to them says that a cell is gone; undo brings all back", async () => {
    const { page } = desk;
    await select(page, "Supply", input.cell);
    await page.keyboard.press("Shift+F10");
    await page.waitForSelector("[role=menu]");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowDown");
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toMatch(/Remove 1 row/);
    await page.keyboard.press("Enter");
    await heard(page, /removed; undo brings it back/);
    await expect.poll(() => textOf(page, "Supply", `F${reader.row - 1}`)).toContain("#REF!");
    await page.keyboard.press("Control+z");
    await heard(page, /Undone/);
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe(input.text);
    await expect.poll(() => textOf(page, "Supply", reader.cell)).toBe(reader.text);
  });

  it("open their menu at the mouse, which Escape closes", async () => {
    const { page } = desk;
    await select(page, "Supply", "F3");
    await press(page, "F4");
    await page.mouse.click(700, 420, { button: "right" });
    await page.waitForSelector("[role=menu]");
    await page.keyboard.press("Escape");
    await page.waitForFunction(
      () => !document.querySelector("[role=menu]") && document.activeElement?.closest("#cells"),
    );
  });

  it("and columns come and go on a free sheet", async () => {
    const { page } = desk;
    const before = await textOf(page, "Tables", "B5");
    await select(page, "Tables", "B5");
    await page.keyboard.press("Shift+F10");
    await page.click("[role=menuitem]:has-text('column to the left')");
    await heard(page, /1 empty column inserted at B/);
    await expect.poll(() => textOf(page, "Tables", "C5")).toBe(before);
    await page.keyboard.press("Control+z");
    await heard(page, /Undone/);
    await expect.poll(() => textOf(page, "Tables", "B5")).toBe(before);
  });
});

describe("hull options", () => {
  it("are added on every option page at once, with the formulas of the one they are like", async () => {
    const { page } = desk;
    await turnTo(page, "Supply");
    await page.click(".tools button:has-text('Options')");
    await page.fill("dialog input[name=name] >> nth=0", "Ferry");
    await page.selectOption("dialog select[name=like]", "Cruiser");
    await page.click("dialog button:has-text('Add option')");
    await heard(page, /Option Ferry added to every option page, with the cells of Cruiser/);
    await expect.poll(() => heads()).toContain("Ferry");
    await expect.poll(() => page.locator(".verdict dt").allTextContents()).toContain("Ferry");
    const drop = cellAt("Supply", "drop", "Cruiser");
    await expect.poll(() => textOf(page, "Supply", drop.cell.replace("F", "H"))).toBe(drop.text.replaceAll("F", "H"));
    await turnTo(page, "Compare");
    await expect.poll(() => heads()).toContain("Ferry");
  });

  it("refuse a name that is taken, in the dialog, and keep everything", async () => {
    const { page } = desk;
    await page.click(".tools button:has-text('Options')");
    await page.fill("dialog input[name=name] >> nth=0", "sloop");
    await page.keyboard.press("Enter");
    await page.waitForSelector("dialog [role=alert]");
    await expect.poll(() => page.textContent("dialog [role=alert]")).toMatch(/already an option "Sloop"/);
    await page.keyboard.press("Escape");
  });

  it("are renamed and removed, and undo goes back through all of it", async () => {
    const { page } = desk;
    await page.click(".tools button:has-text('Options')");
    await page.fill('dialog input[aria-label="Name of Ferry"]', "Tug");
    await page.keyboard.press("Enter");
    await heard(page, /Option Ferry is now Tug/);
    await expect.poll(() => heads()).toContain("Tug");
    await page.click(".tools button:has-text('Options')");
    await page
      .locator("dialog li", { has: page.locator('[aria-label="Name of Tug"]') })
      .locator("text=Remove")
      .click();
    await heard(page, /Option Tug removed/);
    await expect.poll(() => heads()).not.toContain("Tug");
    for (const label of [/Tug removed/, /Ferry renamed/, /Ferry added/]) {
      await select(page, "Compare", "E3");
      await page.keyboard.press("Control+z");
      await heard(page, label);
    }
    await expect.poll(() => heads()).not.toContain("Ferry");
    await expect.poll(() => page.locator(".verdict dt").allTextContents()).toEqual(["Sloop", "Cruiser", "Pilot"]);
  });
});

describe("undo over several pages", () => {
  it("goes back step by step, showing each page and cell, until nothing is left", async () => {
    const { page } = desk;
    const steps = [
      ["Boat", cellAt("Boat", "half_breadth", "Sloop")],
      ["Supply", cellAt("Supply", "I_run", "Pilot")],
      ["Joint", cellAt("Joint", "ply", "Cruiser")],
    ] as const;
    const changed: [string, string, string][] = [];
    for (const [name, { cell }] of steps) {
      const text = await textOf(page, name, cell);
      await typeInto(page, text.startsWith("=") ? "3" : String(Number(text) + 1));
      await heard(page, new RegExp(`Value of ${cell}`));
      changed.push([name, cell, text]);
    }
    for (const [name, cell, text] of changed.reverse()) {
      await page.keyboard.press("Control+z");
      await heard(page, new RegExp(`Undone: value of ${cell}, on ${name}`));
      await expect.poll(() => page.textContent("h1")).toMatch(new RegExp(`${name}$`));
      await expect.poll(() => where(page)).toBe(cell);
      await expect.poll(() => page.inputValue(".cell-line textarea")).toBe(text);
    }
    expect(worked.pages.length).toBe(await page.locator(".pages li").count());
    expect(desk.complaints).toEqual([]);
  });
});
