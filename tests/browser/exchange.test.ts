import type { Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { pageByName } from "../../src/notebook/model";
import { parsePage } from "../../src/notebook/page-csv";
import { heard, type OpenDesk, select, textOf, turnTo, typeInto, Workplace, worth } from "./desk";
import { give, handedOut } from "./files-given";
import { cellAt, worked, workedFile } from "./worked";

let place: Workplace;
let desk: OpenDesk;
beforeAll(async () => {
  place = await Workplace.open();
});
beforeEach(async () => {
  await desk?.page.context().close();
  desk = await place.desk();
});
afterAll(() => place.close());

const list = (page: Page, label: string) =>
  page.locator("dialog .fields label", { hasText: new RegExp(`^${label}`) }).locator("select");
const choose = (page: Page, label: string, choice: string) => list(page, label).selectOption({ label: choice });
const chosen = (page: Page, label: string): Promise<string> =>
  list(page, label).evaluate((one: HTMLSelectElement) => one.selectedOptions[0]?.textContent ?? "");
const choices = (page: Page, label: string): Promise<string[]> => list(page, label).locator("option").allTextContents();
const dialogButton = (page: Page, name: string) => page.locator("dialog").getByRole("button", { name, exact: true });
const previewRow = (page: Page, row: number) =>
  page.locator(`dialog .preview tr >> nth=${row} >> td`).allTextContents();
const gone = (page: Page) => page.waitForFunction(() => !document.querySelector("dialog"));
const cut = (text: string, separator: string): string[][] => text.split("\n").map((line) => line.split(separator));

async function openExport(page: Page): Promise<void> {
  await page.getByRole("button", { name: "For others …", exact: true }).click();
  await page.waitForSelector("dialog[open] pre");
}

async function openImport(page: Page, name: string, content: string): Promise<void> {
  await give(page, "Import …", name, content);
  await page.waitForSelector("dialog[open] .choices");
}

/** The page as its own file holds it, and that nothing can be undone: the notebook is as it was opened. */
async function expectUntouched(page: Page, file: string): Promise<void> {
  expect((await handedOut(page, "Export")).text).toBe(workedFile(file));
  await expect.poll(() => page.getAttribute(".tools .step >> nth=0", "title")).toBe("Nothing to undo");
}

const current = cellAt("Supply", "I_run", "Cruiser");
const drop = cellAt("Supply", "drop", "Cruiser");
const supply = pageByName(worked, "Supply")?.rows ?? [];

describe("a table for another program", () => {
  it("is written as the settings say, and shown so before", async () => {
    const { page } = desk;
    await turnTo(page, "Supply");
    await openExport(page);
    const shown = async () => (await page.textContent("dialog pre")) ?? "";
    await expect
      .poll(async () => (await shown()).trimStart().split("\n")[0])
      .toBe("Quantity;Key;Unit;Basis;Sloop;Cruiser;Pilot");
    const values = await handedOut(page, "Save the file");
    await gone(page);
    expect(values.name).toBe("supply-for-another-program.csv");
    expect(values.text.startsWith("\uFEFFQuantity;")).toBe(true);
    expect(values.text).not.toMatch(/(^|;)"?=/m);
    expect(values.text).toMatch(/;\d+,\d+;/);
    expect(cut(values.text, ";")[current.row - 1]?.[5]).toBe(current.text);

    await openExport(page);
    await choose(page, "Holds", "what was typed, formulas included");
    await choose(page, "Between cells", "tab");
    await choose(page, "Decimal sign", "point");
    await page.locator("dialog input[type=checkbox]").uncheck();
    await expect
      .poll(async () => (await shown()).trimStart().split("\n")[0])
      .toBe("Quantity\tKey\tUnit\tBasis\tSloop\tCruiser\tPilot");
    const typed = await handedOut(page, "Save the file");
    expect(typed.name).toBe("supply-for-another-program.tsv");
    expect(typed.text.startsWith("Quantity\t")).toBe(true);
    expect(cut(typed.text, "\t")[drop.row - 1]?.[5]).toBe(drop.text);
    await expectUntouched(page, "supply.csv");
  });

  it("comes in again and reads as before, whatever stands between cells and for the decimal sign", async () => {
    const { page } = desk;
    await turnTo(page, "Supply");
    for (const [separator, sign] of [
      ["comma", "point"],
      ["semicolon", "comma"],
      ["tab", "comma"],
      ["upright line", "point"],
    ] as const) {
      await openExport(page);
      await choose(page, "Holds", "what was typed, formulas included");
      await choose(page, "Between cells", separator);
      await choose(page, "Decimal sign", sign);
      const { name, text } = await handedOut(page, "Save the file");
      await gone(page);
      await openImport(page, name, text);
      await expect.poll(() => chosen(page, "Between cells")).toBe(separator);
      await choose(page, "Decimal sign", sign);
      await page.locator("dialog input[type=checkbox]").check();
      const meant = page.locator("dialog").getByLabel("the mark stands between thousands");
      if (await meant.count()) await meant.check();
      await page.locator("dialog").getByText("Supply reads so already.").waitFor();
      await expect.poll(() => page.locator("dialog .preview td.other").count()).toBe(0);
      await dialogButton(page, "Take the table").click();
      await heard(page, /holds what Supply holds already/);
    }
    await expectUntouched(page, "supply.csv");
  });

  it("with results comes in as a new page that shows the same numbers", async () => {
    const { page } = desk;
    await select(page, "Supply", drop.cell);
    const before = Number.parseFloat(await worth(page));
    await openExport(page);
    const { name, text } = await handedOut(page, "Save the file");
    await gone(page);
    await openImport(page, name, text);
    await choose(page, "Goes", "onto a new page");
    await page.getByLabel("Name of the page").fill("Supply in numbers");
    await dialogButton(page, "Take the table").click();
    await heard(page, /taken onto the new page Supply in numbers/);
    const held = await textOf(page, "Supply in numbers", drop.cell);
    expect(Number(held)).toBeCloseTo(before, 2);
    await expect.poll(() => textOf(page, "Supply in numbers", current.cell)).toBe(current.text);
    await expect.poll(() => page.locator("h1").textContent()).toContain("Supply in numbers");
  });
});

describe("the first row of a table", () => {
  const [, ...rows] = parsePage("supply.csv", workedFile("supply.csv"));
  const foreign = (head: string) =>
    `${head}\n${rows.map((row) => row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(",")).join("\n")}\n`;

  it("gives way to the page's own where its columns have other names, or is refused and nothing changes", async () => {
    const { page } = desk;
    await turnTo(page, "Supply");
    await openImport(page, "boot.csv", foreign("Größe,Zeichen,Einheit,Grundlage,Segler,Kreuzer,Lotse"));
    await expect.poll(() => chosen(page, "First row")).toBe("the page's own instead");
    await expect.poll(() => previewRow(page, 0)).toEqual(supply[0]);
    await choose(page, "First row", "taken as it stands");
    await expect.poll(async () => (await previewRow(page, 0))[0]).toBe("Größe");
    await dialogButton(page, "Take the table").click();
    await expect
      .poll(() => page.locator("dialog [role=alert]").textContent())
      .toMatch(
        /Supply is an option page; the table must begin with Quantity, Key, Unit, Basis and the options\. Nothing was changed\./,
      );
    await choose(page, "First row", "left out");
    await expect.poll(() => page.locator("dialog [role=alert]").count()).toBe(0);
    await expect.poll(async () => (await previewRow(page, 0))[0]).toBe(rows[0]?.[0]);
    await dialogButton(page, "Take the table").click();
    await page
      .locator("dialog [role=alert]")
      .getByText(/Nothing was changed/)
      .waitFor();
    await choose(page, "First row", "the page's own instead");
    await page.locator("dialog input[type=checkbox]").check();
    await page.locator("dialog").getByText("Supply reads so already.").waitFor();
    await dialogButton(page, "Leave it").click();
    await gone(page);
    await expectUntouched(page, "supply.csv");
  });

  it("with other options than the notebook's is refused with both lists", async () => {
    const { page } = desk;
    await turnTo(page, "Supply");
    await openImport(page, "other.csv", foreign("Quantity,Key,Unit,Basis,Sloop,Cruiser,Launch"));
    await expect.poll(() => chosen(page, "First row")).toBe("taken as it stands");
    await dialogButton(page, "Take the table").click();
    await expect
      .poll(() => page.locator("dialog [role=alert]").textContent())
      .toMatch(
        /options are Sloop, Cruiser, Launch; the notebook has Sloop, Cruiser, Pilot: make them equal first\. Nothing was changed\./,
      );
    await page.keyboard.press("Escape");
    await gone(page);
    await expectUntouched(page, "supply.csv");
  });

  it("is left out of a new page, which has no row of its own to put there", async () => {
    const { page } = desk;
    await openImport(page, "list.csv", "Part;Count\nBolt;8\nNut;16\n");
    await choose(page, "Goes", "onto a new page");
    await expect.poll(() => choices(page, "First row")).toEqual(["taken as it stands", "left out"]);
    await choose(page, "First row", "left out");
    await expect.poll(() => previewRow(page, 0)).toEqual(["Bolt", "8"]);
    await dialogButton(page, "Take the table").click();
    await heard(page, /list\.csv taken onto the new page list/);
    await expect.poll(() => textOf(page, "list", "A1")).toBe("Bolt");
    await expect.poll(() => textOf(page, "list", "B2")).toBe("16");
  });

  it("is not left out where it is all there is", async () => {
    const { page } = desk;
    await turnTo(page, "Tables");
    await openImport(page, "one.csv", "only;row\n");
    await choose(page, "First row", "left out");
    await expect.poll(() => dialogButton(page, "Take the table").isDisabled()).toBe(true);
    await expect
      .poll(() => page.locator("dialog").textContent())
      .toContain("Nothing is left of the table without its first row.");
    await choose(page, "Goes", "onto a new page");
    await expect.poll(() => dialogButton(page, "Take the table").isDisabled()).toBe(false);
    await choose(page, "First row", "left out");
    await expect.poll(() => dialogButton(page, "Take the table").isDisabled()).toBe(true);
    await page.keyboard.press("Escape");
    await gone(page);
    await expectUntouched(page, "tables.csv");
  });
});

describe("a file that would break formulas", () => {
  it("says so before it is taken: formulas as texts, and rows that move", async () => {
    const { page } = desk;
    await turnTo(page, "Supply");
    await openExport(page);
    await choose(page, "Holds", "what was typed, formulas included");
    await choose(page, "Between cells", "comma");
    await choose(page, "Decimal sign", "point");
    const { name, text } = await handedOut(page, "Save the file");
    await gone(page);
    const [head = "", ...rest] = text.split("\n");
    await openImport(page, name, [head, "Another,another,m,,1,2,3", ...rest].join("\n"));
    const warnings = () => page.locator("dialog p.open").allTextContents();
    await expect.poll(warnings).toHaveLength(2);
    expect((await warnings())[0]).toMatch(/\d+ formulas would come as text and calculate nothing/);
    expect((await warnings())[1]).toContain("V_nominal and what follows would move from row 3 to row 4");
    await page.locator("dialog input[type=checkbox]").check();
    await expect.poll(warnings).toHaveLength(1);
    await page.keyboard.press("Escape");
    await gone(page);
  });
});

describe("a page that defines functions", () => {
  it("goes out and comes in: a changed row changes the function, a mistake is said and undone", async () => {
    const { page } = desk;
    await page.getByRole("button", { name: "Functions", exact: true }).click();
    await page.getByRole("button", { name: "A function of your own …" }).click();
    await page.getByLabel("Name", { exact: true }).fill("YARD.MASS");
    await page.keyboard.press("Enter");
    await heard(page, /YARD\.MASS can be called/);
    await openExport(page);
    await choose(page, "Holds", "what was typed, formulas included");
    const { name, text } = await handedOut(page, "Save the file");
    await gone(page);
    expect(text).toContain("constant;kgPerMetre;1,2;kg/m");
    await openImport(page, name, text);
    await page.locator("dialog").getByText("Own functions reads so already.").waitFor();
    await dialogButton(page, "Leave it").click();
    await gone(page);

    await select(page, "Supply", current.cell);
    await typeInto(page, "=YARD.MASS(10, 0.1)");
    await select(page, "Supply", current.cell);
    const mass = () => worth(page).then(Number.parseFloat);
    await expect.poll(() => mass()).toBe(13);

    await turnTo(page, "Own functions");
    const doubled = text.replace("constant;kgPerMetre;1,2;", "constant;kgPerMetre;2,4;");
    await openImport(page, name, doubled.replace(/^\uFEFF[^\n]*/, "Teil;Name;Formel;Einheit;Grenzen;Warum;Quelle"));
    await choose(page, "First row", "the page's own instead");
    await page.locator("dialog").getByText("On Own functions 1 cell would read otherwise.").waitFor();
    await expect.poll(() => page.locator("dialog .preview td.other").allTextContents()).toEqual(["2.4"]);
    await dialogButton(page, "Take the table").click();
    await heard(page, /taken onto Own functions/);
    await select(page, "Supply", current.cell);
    await expect.poll(() => mass()).toBe(26);

    await turnTo(page, "Own functions");
    await openImport(page, name, text.replace("L * kgPerMetre", "L * kgPerMeter"));
    await dialogButton(page, "Take the table").click();
    await heard(page, /taken onto Own functions/);
    await select(page, "Supply", current.cell);
    await page.locator(".cell-line .sentence", { hasText: /Own functions, row \d+: .*kgPerMeter/ }).waitFor();
    await turnTo(page, "Own functions");
    await page.keyboard.press("Control+z");
    await heard(page, /Undone: import of/);
    await select(page, "Supply", current.cell);
    await expect.poll(() => mass()).toBe(26);
    expect([...desk.complaints, ...desk.strayed]).toEqual([]);
  });
});
