import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { unpackNotebook } from "../../src/notebook/zip";
import { contentOf, heard, typedText, Workplace, where, worth } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

const current = cellAt("Supply", "I_run", "Cruiser");
const drop = cellAt("Supply", "drop", "Cruiser");

const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const element = document.activeElement;
    return (element?.getAttribute("aria-label") ?? element?.textContent ?? "").replace(/\s+/g, " ").trim();
  });

/** Presses a key until the keyboard is at what is called so. */
async function keyTo(page: Page, key: string, name: RegExp): Promise<void> {
  const passed: string[] = [];
  for (let i = 0; i < 80; i++) {
    await page.keyboard.press(key);
    const here = await focused(page);
    if (name.test(here)) return;
    passed.push(here.slice(0, 30));
  }
  throw new Error(`${key} does not lead to ${name}: ${passed.join("; ")}`);
}

/** Goes to a cell of the shown page with the arrow keys. */
async function arrowsTo(page: Page, cell: string): Promise<void> {
  const parts = (name: string) => [name.charCodeAt(0), Number(name.slice(1))] as const;
  const [column, row] = parts(cell);
  for (let i = 0; i < 120; i++) {
    const [c, r] = parts(await where(page));
    if (c === column && r === row) return;
    await page.keyboard.press(r < row ? "ArrowDown" : r > row ? "ArrowUp" : c < column ? "ArrowRight" : "ArrowLeft");
  }
  throw new Error(`The arrow keys do not lead to ${cell}.`);
}

/** Leaves the cells upwards: Escape, then back. */
async function leaveCells(page: Page): Promise<void> {
  await page.keyboard.press("Escape");
  await page.keyboard.press("Shift+Tab");
  await page.waitForFunction(() => !document.activeElement?.closest("#cells"));
}

describe("the main job by keyboard alone", () => {
  it("opens, types inputs, hears and sees the verdict, reads the working, studies, prints and saves", {
    timeout: 90_000,
  }, async () => {
    const { page, complaints } = await place.desk();
    // The frame's own print would open the system's window.
    await page.evaluate(() => {
      Object.assign(window, { printed: 0 });
      new MutationObserver(() => {
        const inner = document.querySelector<HTMLIFrameElement>("iframe.to-print")?.contentWindow;
        if (inner) inner.print = () => Object.assign(window, { printed: 1 });
      }).observe(document.body, { childList: true });
    });
    await page.keyboard.press("Tab");
    await expect.poll(() => focused(page)).toBe("To the cells");
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => document.activeElement?.closest("#cells"));
    for (let i = 0; i < 10 && !/Supply$/.test((await page.textContent("h1")) ?? ""); i++) {
      await page.keyboard.press("Alt+PageDown");
      await page.waitForTimeout(60);
    }
    await expect.poll(() => page.textContent("h1")).toMatch(/Supply$/);
    await page.waitForFunction(() => document.activeElement?.closest("#cells"));

    await arrowsTo(page, current.cell);
    await expect.poll(() => typedText(page)).toBe(current.text);
    const verdict = () => page.textContent(".verdict");
    const before = await verdict();
    await page.keyboard.type("700");
    await page.keyboard.press("Enter");
    const spoken = await heard(page, /Changed: .*Cruiser.*falls short/);
    expect(spoken).toMatch(/other cells? followed/);
    await expect.poll(() => page.getAttribute(".said", "role")).toBe("status");
    await expect.poll(() => verdict()).not.toBe(before);
    await expect.poll(() => verdict()).toMatch(/Cruiser.*short/s);

    await arrowsTo(page, drop.cell);
    await expect.poll(() => worth(page)).toMatch(/\d.*V/);
    const working = page.locator("aside.side");
    await expect.poll(() => working.textContent()).toMatch(new RegExp(`Working ${drop.cell}`));
    await expect.poll(() => working.textContent()).toMatch(/Ohm/);

    await page.keyboard.type("=1/0");
    await page.keyboard.press("Enter");
    await arrowsTo(page, drop.cell);
    await expect.poll(() => page.textContent(".cell-line .sentence")).toMatch(/\S/);
    await page.keyboard.press("Control+z");
    await heard(page, /^Undone/);

    await leaveCells(page);
    await keyTo(page, "Shift+Tab", /^Studies$/);
    await page.keyboard.press("Enter");
    await page.waitForSelector("dialog[open] [role=tab]");
    const first = await page.getByRole("tab", { selected: true }).textContent();
    await keyTo(page, "Tab", new RegExp(`^${first}$`));
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => page.getByRole("tab", { selected: true }).textContent()).not.toBe(first);
    await page.keyboard.press("Escape");
    await expect.poll(() => focused(page)).toBe("Studies");

    await keyTo(page, "Tab", /^Paper$/);
    await page.keyboard.press("Enter");
    await page.waitForSelector("dialog[open]");
    await keyTo(page, "Tab", /^Print$/);
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => "printed" in window && window.printed === 1);
    await page.keyboard.press("Escape");
    await expect.poll(() => focused(page)).toBe("Paper");

    const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Control+s")]);
    const { pages } = unpackNotebook(new Uint8Array(await contentOf(download)));
    expect(pages.find(({ name }) => name === "Supply")?.rows[current.row - 1]?.[5]).toBe("700");
    expect(complaints).toEqual([]);
  });
});
