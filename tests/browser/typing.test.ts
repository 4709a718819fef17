import { afterAll, beforeAll, describe, expect, it } from "vitest";
import {
  heard,
  type OpenDesk,
  press,
  said,
  select,
  textOf,
  turnTo,
  typedText,
  typeInto,
  Workplace,
  where,
} from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
let desk: OpenDesk;
beforeAll(async () => {
  place = await Workplace.open();
  desk = await place.desk();
});
afterAll(() => place.close());

const input = cellAt("Supply", "I_run", "Cruiser").cell;
const editor = () => desk.page.inputValue("#cells textarea.handsontableInput");

describe("numbers that are typed", () => {
  it("lose no digit however soon the keys follow the click (40 times)", async () => {
    const { page } = desk;
    await turnTo(page, "Supply");
    const cells = ["V_rated", "R_motor", "motor_efficiency", "run_time", "runs"].map((key) =>
      cellAt("Supply", key, "Cruiser"),
    );
    await select(page, "Supply", cells[0]?.cell ?? "");
    const lost: string[] = [];
    for (let i = 0; i < 40; i++) {
      const cell = cells[i % cells.length]?.cell ?? "";
      const text = `1${i}2.5`;
      await press(page, cell);
      await page.keyboard.type(text, { delay: i % 3 });
      await page.keyboard.press("Enter");
      await page.waitForFunction((at) => document.querySelector(".said")?.textContent?.includes(`of ${at}`), cell);
      await page.keyboard.press("ArrowUp");
      if ((await typedText(page)) !== text) lost.push(`${cell}: ${text} became ${await typedText(page)}`);
    }
    expect(lost).toEqual([]);
  });

  it("with % are shares, with a decimal comma or a printed minus are numbers", async () => {
    const { page } = desk;
    for (const [typed, text] of [
      ["92%", "0.92"],
      ["1,5", "1.5"],
      ["12 500", "12500"],
      ["1.234,5", "1234.5"],
      ["\u22125", "-5"],
    ] as const) {
      await select(page, "Supply", input);
      await typeInto(page, typed);
      await expect.poll(() => textOf(page, "Supply", input), { message: typed }).toBe(text);
    }
  });

  it("that read two ways are asked about, and nothing is written before the answer", async () => {
    const { page } = desk;
    await select(page, "Supply", input);
    const before = await typedText(page);
    await typeInto(page, "1,234");
    await page.waitForSelector("dialog[open]");
    await expect.poll(() => page.textContent("dialog")).toMatch(/can be read two ways/);
    await page.keyboard.press("Escape");
    await expect.poll(() => textOf(page, "Supply", input)).toBe(before);
    await typeInto(page, "1,234");
    await page.click("dialog button:has-text('Between thousands')");
    await expect.poll(() => textOf(page, "Supply", input)).toBe("1234");
  });

  it("stay as they are in the columns of words", async () => {
    const { page } = desk;
    const basis = input.replace(/^[A-Z]+/, "D");
    await select(page, "Supply", basis);
    await typeInto(page, "1,5");
    await expect.poll(() => textOf(page, "Supply", basis)).toBe("1,5");
  });

  it("take nothing back and write nothing on Escape", async () => {
    const { page } = desk;
    const before = await textOf(page, "Supply", input);
    await page.keyboard.type("77");
    await page.keyboard.press("Escape");
    await expect.poll(() => typedText(page)).toBe(before);
    await expect.poll(() => textOf(page, "Supply", input)).toBe(before);
  });
});

describe("a row with choices", () => {
  const choice = cellAt("Supply", "V_nominal", "Cruiser");

  it("offers them, and takes the one that is picked with the keys", async () => {
    const { page } = desk;
    await select(page, "Supply", choice.cell);
    await page.keyboard.press("Enter");
    await page.waitForSelector("[role=listbox]");
    await expect.poll(() => page.locator("[role=option][aria-selected=true] .text").textContent()).toBe(choice.text);
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await expect.poll(() => textOf(page, "Supply", choice.cell)).toBe("24");
  });

  it("refuses what is not among them with a sentence, and keeps what it had", async () => {
    const { page } = desk;
    await select(page, "Supply", choice.cell);
    await typeInto(page, "13");
    expect(await heard(page, /is not a choice/)).toMatch(/Supply\.V_nominal: "13" is not a choice \(allowed 12, 24/);
    await expect.poll(() => textOf(page, "Supply", choice.cell)).toBe("24");
  });
});

describe("a formula that is typed", () => {
  it("is helped with names and with what each argument takes", async () => {
    const { page } = desk;
    await select(page, "Supply", input);
    await page.keyboard.type("=conductor.dr");
    await expect.poll(() => page.locator("[role=option]").first().textContent()).toMatch(/CONDUCTOR\.DROP/);
    await page.keyboard.press("Tab");
    await expect.poll(() => editor()).toBe("=CONDUCTOR.DROP(");
    await expect.poll(() => page.textContent(".hint .call b")).toBe("current");
    await page.keyboard.type("300,");
    await expect.poll(() => page.textContent(".hint .call b")).toBe("run");
    const hint = await page.textContent(".hint");
    expect(hint).toMatch(/out and back, m; allowed 0 to \d+ m/);
    await page.keyboard.press("Escape");
    await select(page, "Tables", "C2");
    await typeInto(page, "=CONDUCTOR.DROP(300,10,50)");
    await select(page, "Tables", "C2");
    // IEC 60228 table 3, 50 mm2: 0.386 ohm/km at 20 °C, times 10 m and 300 A: 1.158 V.
    await expect.poll(() => page.textContent(".cell-line .worth")).toMatch(/^1\.158/);
  });

  it("closes only the list on the first Escape", async () => {
    const { page } = desk;
    await select(page, "Supply", input);
    await page.keyboard.type("=SU");
    await page.keyboard.press("Escape");
    await expect.poll(() => page.locator("[role=listbox]").count()).toBe(0);
    await expect.poll(() => editor()).toBe("=SU");
    await page.keyboard.press("Escape");
  });

  it("takes cells that are clicked, dragged over, or reached with the arrow keys", async () => {
    const { page } = desk;
    const [, row = "0"] = /(\d+)$/.exec(input) ?? [];
    await select(page, "Supply", input);
    await page.keyboard.type("=");
    await press(page, `G${row}`);
    await expect.poll(() => editor()).toBe(`=G${row}`);
    await page.keyboard.type("*2+");
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("ArrowUp");
    await expect.poll(() => editor()).toBe(`=G${row}*2+E${Number(row) - 1}`);
    await page.keyboard.press("Escape");
    await expect.poll(() => where(page)).toBe(input);
  });

  it("takes cells of other pages when it is typed in the line above the cells", async () => {
    const { page } = desk;
    await select(page, "Supply", input);
    await page.click(".cell-line textarea");
    await page.keyboard.press("Control+a");
    await page.keyboard.type("=1+");
    await turnTo(page, "Side force");
    await press(page, "F7");
    await expect.poll(() => typedText(page)).toBe("=1+'Side force'!F7");
    await page.keyboard.press("Enter");
    await heard(page, new RegExp(`Value of ${input}`));
    await expect.poll(() => page.textContent("h1")).toMatch(/Supply$/);
    await expect.poll(() => textOf(page, "Supply", input)).toBe("=1+'Side force'!F7");
  });

  it("that cannot be read says so beside the cell", async () => {
    const { page } = desk;
    await select(page, "Supply", input);
    await typeInto(page, "=1+*");
    await select(page, "Supply", input);
    await expect.poll(() => page.textContent(".cell-line .sentence")).toMatch(/cannot be read: check brackets/);
    await page.keyboard.press("Control+z");
    await expect.poll(() => said(page)).toMatch(/^Undone/);
  });

  it("has raised no complaint in the console", () => {
    expect(desk.complaints).toEqual([]);
  });
});
