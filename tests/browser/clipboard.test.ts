import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { heard, middleOf, type OpenDesk, select, textOf, typeInto, Workplace, where } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
let desk: OpenDesk;
beforeAll(async () => {
  place = await Workplace.open();
  desk = await place.desk();
});
afterAll(() => place.close());

// The product of Supply: volts at rest of the bank, a formula over rows above it, in three options.
const volts = ["Sloop", "Cruiser", "Pilot"].map((option) => cellAt("Supply", "V_open", option));
const [sloop, cruiser, pilot] = volts as [(typeof volts)[number], (typeof volts)[number], (typeof volts)[number]];
const spare = (letter: string) => `${letter}${sloop.row + 2}`;

const extend = async (key: string, times = 1) => {
  for (let i = 0; i < times; i++) await desk.page.keyboard.press(`Shift+${key}`);
};

describe("copied cells", () => {
  it("paste with their references shifted", async () => {
    const { page } = desk;
    expect(sloop.text).toMatch(/^=E/);
    await select(page, "Supply", sloop.cell);
    await page.keyboard.press("Control+c");
    await heard(page, /copied/);
    await select(page, "Supply", pilot.cell);
    await page.keyboard.press("Delete");
    await page.keyboard.press("Control+v");
    await heard(page, /Paste into/);
    await expect.poll(() => textOf(page, "Supply", pilot.cell)).toBe(pilot.text);
  });

  it("paste as they were when they were copied, whatever changed since", async () => {
    const { page } = desk;
    await select(page, "Supply", sloop.cell);
    await page.keyboard.press("Control+c");
    await typeInto(page, "13");
    await select(page, "Supply", cruiser.cell);
    await page.keyboard.press("Control+v");
    await heard(page, /Nothing changed/);
    await expect.poll(() => textOf(page, "Supply", cruiser.cell)).toBe(cruiser.text);
    await page.keyboard.press("Control+z");
  });

  it("paste again and again over a selection that is a multiple of them", async () => {
    const { page } = desk;
    await select(page, "Supply", sloop.cell);
    await page.keyboard.press("Control+c");
    await select(page, "Supply", sloop.cell);
    await extend("ArrowRight", 2);
    await page.keyboard.press("Control+v");
    await heard(page, /Nothing changed/);
    for (const { cell, text } of volts) await expect.poll(() => textOf(page, "Supply", cell)).toBe(text);
  });

  it("go out as values between tabs", async () => {
    const { page } = desk;
    await select(page, "Supply", cellAt("Supply", "I_run", "Sloop").cell);
    await extend("ArrowRight", 2);
    await page.keyboard.press("Control+c");
    await expect.poll(() => page.evaluate(() => navigator.clipboard.readText())).toBe("240\t310\t420");
  });

  it("of other programs come in as text, decimal commas read, in one step", async () => {
    const { page } = desk;
    await page.evaluate(() => navigator.clipboard.writeText('1,5\t"two\tparts"\r\n7\t8\r\n'));
    await select(page, "Tables", "B5");
    const before = await textOf(page, "Tables", "B5");
    await page.keyboard.press("Control+v");
    await heard(page, /Paste into B5:C6/);
    await expect.poll(() => textOf(page, "Tables", "B5")).toBe("1.5");
    await expect.poll(() => textOf(page, "Tables", "C5")).toBe("two\tparts");
    await expect.poll(() => textOf(page, "Tables", "C6")).toBe("8");
    await page.keyboard.press("Control+z");
    await heard(page, /Undone/);
    await expect.poll(() => textOf(page, "Tables", "B5")).toBe(before);
  });

  it("of whole rows leave taken keys out and say so", async () => {
    const { page } = desk;
    await select(page, "Supply", `A${sloop.row}`);
    await extend("ArrowRight", 6);
    await page.keyboard.press("Control+c");
    await select(page, "Supply", `A${sloop.row}`);
    await page.keyboard.press("Control+Alt+i");
    await heard(page, /inserted/);
    await select(page, "Supply", `A${sloop.row}`);
    await page.keyboard.press("Control+v");
    expect(await heard(page, /without a key/)).toContain("V_open");
    await expect.poll(() => textOf(page, "Supply", `A${sloop.row}`)).toBe("Volts of the bank at rest");
    await expect.poll(() => textOf(page, "Supply", `B${sloop.row}`)).toBe("");
    await page.keyboard.press("Control+z");
    await page.keyboard.press("Control+z");
  });

  it("stay where they are when the page has no room, with a sentence", async () => {
    const { page } = desk;
    await select(page, "Supply", sloop.cell);
    await extend("ArrowRight", 2);
    await page.keyboard.press("Control+c");
    await select(page, "Supply", pilot.cell);
    await page.keyboard.press("Control+v");
    expect(await heard(page, /add an option/)).toMatch(/Supply has 3 options/);
    await expect.poll(() => textOf(page, "Supply", pilot.cell)).toBe(pilot.text);
  });
});

describe("cut cells", () => {
  it("move to another page when they are pasted, and every formula follows", async () => {
    const { page } = desk;
    const input = cellAt("Supply", "I_run", "Cruiser");
    const reader = cellAt("Supply", "drop", "Cruiser");
    expect(reader.text).toContain(input.cell);
    await select(page, "Supply", input.cell);
    await page.keyboard.press("Control+x");
    await heard(page, /is cut and moves when it is pasted/);
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe(input.text);
    await select(page, "Tables", "C2");
    await page.keyboard.press("Control+v");
    await heard(page, /Move of .+ to C2/);
    await expect.poll(() => textOf(page, "Tables", "C2")).toBe(input.text);
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe("");
    await expect.poll(() => textOf(page, "Supply", reader.cell)).toContain("Tables!C2");
    await page.keyboard.press("Control+z");
    await heard(page, /Undone: move/);
    await expect.poll(() => page.textContent("h1")).toMatch(/Tables$/);
    await expect.poll(() => textOf(page, "Supply", reader.cell)).toBe(reader.text);
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe(input.text);
  });

  it("keep pointing at what they pointed at, by the name of the page they left", async () => {
    const { page } = desk;
    await select(page, "Supply", sloop.cell);
    await page.keyboard.press("Control+x");
    await select(page, "Tables", "C2");
    await page.keyboard.press("Control+v");
    await heard(page, /Move of/);
    await expect.poll(() => textOf(page, "Tables", "C2")).toBe(sloop.text.replace(/\bE(\d)/g, "Supply!E$1"));
    await page.keyboard.press("Control+z");
  });
});

describe("cells that are filled or emptied", () => {
  const row = cellAt("Supply", "capacity", "Sloop");

  it("repeat the first column to the right by Ctrl+Shift+D", async () => {
    const { page } = desk;
    await select(page, "Supply", sloop.cell);
    await extend("ArrowRight", 2);
    await page.keyboard.press("Control+Shift+d");
    await heard(page, /Nothing changed/);
    await select(page, "Supply", row.cell);
    await typeInto(page, "=E20*3");
    await select(page, "Supply", row.cell);
    await extend("ArrowRight", 2);
    await page.keyboard.press("Control+Shift+d");
    await heard(page, /Fill of/);
    await expect.poll(() => textOf(page, "Supply", row.cell.replace("E", "G"))).toBe("=G20*3");
    await page.keyboard.press("Control+z");
    await page.keyboard.press("Control+z");
  });

  it("repeat downwards when the corner of the selection is dragged", async () => {
    const { page } = desk;
    await select(page, "Supply", sloop.cell);
    const from = await middleOf(page, sloop.cell);
    const to = await middleOf(page, spare("E"));
    const corner = await page.locator(".ht_master .wtBorder.corner:visible").first().boundingBox();
    if (!corner) throw new Error("The selection has no corner to drag.");
    await page.mouse.move(corner.x + corner.width / 2, corner.y + corner.height / 2);
    await page.mouse.down();
    await page.mouse.move(from.x, (from.y + to.y) / 2, { steps: 4 });
    await page.mouse.move(to.x, to.y, { steps: 6 });
    await page.mouse.up();
    await heard(page, /Fill of/);
    const shifted = sloop.text.replace(/E(\d+)/g, (_, n) => `E${Number(n) + 1}`);
    await expect.poll(() => textOf(page, "Supply", `E${sloop.row + 1}`)).toBe(shifted);
    await page.keyboard.press("Control+z");
    await heard(page, /Undone/);
    await expect
      .poll(() => textOf(page, "Supply", `E${sloop.row + 1}`))
      .toBe(cellAt("Supply", "capacity", "Sloop").text);
  });

  it("are emptied together by Delete and come back together", async () => {
    const { page } = desk;
    await select(page, "Supply", sloop.cell);
    await extend("ArrowRight", 2);
    await extend("ArrowDown");
    await page.keyboard.press("Delete");
    await heard(page, new RegExp(`Emptying of ${sloop.cell}:`));
    await expect.poll(() => textOf(page, "Supply", pilot.cell)).toBe("");
    await page.keyboard.press("Control+z");
    await heard(page, /Undone/);
    await expect.poll(() => where(page)).toBe(sloop.cell);
    await expect.poll(() => textOf(page, "Supply", pilot.cell)).toBe(pilot.text);
    expect(desk.complaints).toEqual([]);
    await expect.poll(() => page.locator("dialog.fault").count()).toBe(0);
  });
});
