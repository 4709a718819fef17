import type { Download } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { unpackNotebook } from "../../src/notebook/zip";
import { contentOf, heard, type OpenDesk, select, textOf, turnTo, typeInto, Workplace } from "./desk";
import { cellAt, worked, workedFile } from "./worked";

let place: Workplace;
let desk: OpenDesk;
beforeAll(async () => {
  place = await Workplace.open();
  desk = await place.desk();
});
afterAll(() => place.close());

/** Presses a button that hands out a file. */
async function handedOut(button: string): Promise<Download> {
  const [download] = await Promise.all([
    desk.page.waitForEvent("download"),
    desk.page.click(`.files >> text="${button}"`),
  ]);
  return download;
}

/** Gives a file to a button that asks for one. */
async function give(button: string, name: string, content: string | Buffer): Promise<void> {
  const [chooser] = await Promise.all([
    desk.page.waitForEvent("filechooser"),
    desk.page.click(`.files >> text="${button}"`),
  ]);
  await chooser.setFiles({ name, mimeType: "application/octet-stream", buffer: Buffer.from(content) });
}

const input = cellAt("Supply", "I_run", "Cruiser");

describe("a page as CSV", () => {
  it("goes out byte for byte as its file holds it, and with a change only in the changed cell", async () => {
    const { page } = desk;
    await turnTo(page, "Supply");
    const download = await handedOut("Export");
    expect(download.suggestedFilename()).toBe("supply.csv");
    expect((await contentOf(download)).toString("utf8")).toBe(workedFile("supply.csv"));
    await select(page, "Supply", input.cell);
    await typeInto(page, "333");
    const changed = (await contentOf(await handedOut("Export"))).toString("utf8").split("\n");
    const before = workedFile("supply.csv").split("\n");
    expect(changed.filter((line, i) => line !== before[i])).toEqual([
      before[input.row - 1]?.replace(`,${input.text},`, ",333,"),
    ]);
  });

  it("goes out with values in the place of formulas", async () => {
    const download = await handedOut("Values only");
    const text = (await contentOf(download)).toString("utf8");
    expect(download.suggestedFilename()).toBe("supply-values.csv");
    expect(text).not.toMatch(/(^|,)"?=/m);
    expect(text.split("\n")[input.row - 1]).toContain(",333,");
  });

  it("comes in again: shown first, taken when asked, and undone as one step", async () => {
    const { page } = desk;
    await give("Import …", "supply.csv", workedFile("supply.csv"));
    await page.waitForSelector("dialog[open]");
    await expect.poll(() => page.locator("dialog .preview tr").count()).toBeGreaterThan(5);
    await page.check("dialog input[type=checkbox]");
    await page.click("dialog button:has-text('Take the table')");
    await heard(page, /supply\.csv taken onto Supply/);
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe(input.text);
    const drop = cellAt("Supply", "drop", "Pilot");
    await expect.poll(() => textOf(page, "Supply", drop.cell)).toBe(drop.text);
    await page.keyboard.press("Control+z");
    await heard(page, /Undone: import of supply\.csv/);
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe("333");
    await page.keyboard.press("Control+z");
  });

  it("of another program is understood: semicolons, decimal commas, Windows letters; all changeable", async () => {
    const { page } = desk;
    const table = "Länge;Wert\r\nRumpf;1,5\r\nNummer;007\r\nFormel;=1+1\r\n";
    await give("Import …", "tafel.csv", Buffer.from(table, "latin1"));
    await page.waitForSelector("dialog[open]");
    const chosen = await page.$$eval("dialog select", (all) =>
      all.map((one) => (one as HTMLSelectElement).selectedOptions[0]?.textContent),
    );
    expect(chosen.slice(0, 3)).toEqual(["semicolon", "comma", "windows-1252"]);
    await page.selectOption("dialog select >> nth=3", { label: "onto a new page" });
    await page.fill("dialog .fields input", "Tafel");
    await page.click("dialog button:has-text('Take the table')");
    await heard(page, /taken onto the new page Tafel/);
    await expect.poll(() => textOf(page, "Tafel", "A1")).toBe("Länge");
    await expect.poll(() => textOf(page, "Tafel", "B2")).toBe("1.5");
    await expect.poll(() => textOf(page, "Tafel", "B3")).toBe("007");
    await expect.poll(() => textOf(page, "Tafel", "B4")).toBe("'=1+1");
    await expect.poll(() => page.textContent(".cell-line .worth")).toBe("=1+1");
    await page.keyboard.press("Control+z");
    await heard(page, /Undone/);
    await expect.poll(() => page.locator(".pages li").count()).toBe(worked.pages.length);
  });

  it("is not taken while a number in it reads two ways", async () => {
    const { page } = desk;
    await give("Import …", "two-ways.csv", "name;size\na;1,234\nb;2.5\n");
    await page.waitForSelector("dialog[open]");
    const take = page.locator("dialog button:has-text('Take the table')");
    await expect.poll(() => take.isDisabled()).toBe(true);
    await page.check("dialog input[type=radio] >> nth=1");
    await expect.poll(() => take.isDisabled()).toBe(false);
    await expect.poll(() => page.locator("dialog .preview td.right").allTextContents()).toEqual(["1234", "2.5"]);
    await page.keyboard.press("Escape");
  });

  it("that does not fit is refused in the dialog, and the work stays", async () => {
    const { page } = desk;
    await turnTo(page, "Supply");
    await give("Import …", "other.csv", "a,b\n1,2\n");
    await page.click("dialog button:has-text('Take the table')");
    await expect
      .poll(() => page.textContent("dialog [role=alert]"))
      .toMatch(/Supply is an option page.+Nothing was changed\./);
    await page.keyboard.press("Escape");
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe(input.text);
  });
});

describe("a whole notebook", () => {
  it("is saved as a zip of its files, and opened again", async () => {
    const { page } = desk;
    await select(page, "Supply", input.cell);
    await typeInto(page, "444");
    await heard(page, /Value of/);
    const zip = await contentOf(await handedOut("Save"));
    const saved = unpackNotebook(new Uint8Array(zip));
    expect(saved.pages.map(({ name }) => name)).toEqual(worked.pages.map(({ name }) => name));
    await select(page, "Supply", input.cell);
    await typeInto(page, "445");
    await heard(page, /Value of/);
    await page.keyboard.press("Control+z");
    await heard(page, /Undone/);
    await give("Open …", "three-hulls.zip", zip);
    await heard(page, /is open/);
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe("444");
  });

  it("that is damaged is refused with a sentence, and the open one stays", async () => {
    const { page } = desk;
    await give("Open …", "broken.zip", "this is no zip");
    expect(await heard(page, /broken\.zip/)).toMatch(/not a zip that can be read.+The open notebook is unchanged/);
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe("444");
    expect(desk.complaints).toEqual([]);
    expect(desk.strayed).toEqual([]);
  });
});

describe("the notes of a page", () => {
  it("are written in Markdown and show no script, image or form of it", async () => {
    const { page } = desk;
    await turnTo(page, "Fit");
    await page.click("text=Edit notes");
    await page.fill(
      "#note-text",
      '**Bold** <script>window.hurt = 1</script><img src=x onerror="window.hurt = 2"> [go](javascript:alert(1)) [see](https://example.org/)',
    );
    await page.click(".note-form button:has-text('Keep')");
    await page.waitForSelector(".notes strong");
    await expect.poll(() => page.locator(".notes script, .notes img, .notes [onerror]").count()).toBe(0);
    const links = await page.$$eval(".notes a", (all) => all.map((one) => one.getAttribute("href")));
    expect(links.filter((href) => href !== null)).toEqual(["https://example.org/"]);
    await expect.poll(() => page.evaluate(() => (window as unknown as { hurt?: number }).hurt)).toBe(undefined);
    await page.click(".tools button:has-text('Undo notes of Fit')");
    await page.waitForFunction(() => !document.querySelector(".notes")?.textContent?.includes("see"));
  });
});
