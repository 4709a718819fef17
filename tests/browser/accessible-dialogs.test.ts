import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { printTraineeFile } from "../../src/course/trainee-file";
import { packNotebook } from "../../src/notebook/zip";
import { worked as course } from "../course/course";
import { findingsInBothLights, settled } from "./accessibility";
import { heard, type OpenDesk, select, turnTo, typeInto, Workplace } from "./desk";
import { give } from "./files-given";
import { cellAt, worked } from "./worked";

let place: Workplace;
let desk: OpenDesk;
beforeAll(async () => {
  place = await Workplace.open();
  desk = await place.desk({ reducedMotion: "reduce" });
});
afterAll(() => place.close());

const found: string[] = [];
/** What stands in front of the cells, by day and by night. */
async function look(what: string): Promise<void> {
  const { page } = desk;
  await settled(page);
  for (const finding of await findingsInBothLights(page, false)) found.push(`${what}: ${finding}`);
}

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
const notebooks = (page: Page) => page.locator(".files").getByRole("button", { name: "Notebooks …" });
const open = (page: Page, title: string) => page.locator("dialog[open] h2", { hasText: title }).waitFor();

/** Closes the dialog in front with Escape. */
async function leave(page: Page): Promise<void> {
  const before = await page.locator("dialog").count();
  await page.keyboard.press("Escape");
  await page.waitForFunction((count) => document.querySelectorAll("dialog").length < count, before);
}

/** Looks at a dialog that a button opens. */
async function opened(name: string, title: string): Promise<void> {
  await button(desk.page, name).click();
  await open(desk.page, title);
  await look(title);
}

async function nothingFound(): Promise<void> {
  expect(found.splice(0)).toEqual([]);
  expect([...desk.complaints, ...desk.strayed]).toEqual([]);
}

/** A browser that keeps nothing, with a folder on its disk that holds what is no notebook. */
async function withoutKeeping(): Promise<void> {
  Reflect.deleteProperty(Navigator.prototype, "serviceWorker");
  Object.defineProperty(window, "indexedDB", { value: undefined });
  const folder = async () => (await navigator.storage.getDirectory()).getDirectoryHandle("yard", { create: true });
  Object.assign(window, { showDirectoryPicker: folder });
  const file = await (await folder()).getFileHandle("notebook.json", { create: true });
  const stream = await file.createWritable();
  await stream.write("{");
  await stream.close();
}

const zip = Buffer.from(packNotebook(worked));
const current = cellAt("Supply", "I_run", "Cruiser");

describe("the automatic accessibility check finds nothing, light and dark", { timeout: 120_000 }, () => {
  it("in the import preview, with doubtful numbers, formulas, a refusal, an unreadable file", async () => {
    const { page } = desk;
    await turnTo(page, "Supply");
    await give(page, "Import …", "doubtful.csv", "name;size\na;1,234\nb;=1+1\nc;2.5\n");
    await open(page, "Import a table");
    await look("doubtful");
    await page.locator("dialog input[type=radio]").first().check();
    await page.locator("dialog select").nth(3).selectOption({ index: 1 });
    await look("onto a new page");
    await page.locator("dialog select").nth(3).selectOption({ index: 0 });
    await button(page, "Take the table").click();
    await page.locator("dialog [role=alert]").waitFor();
    await look("refused");
    await page.locator("dialog select").nth(2).selectOption("utf-16le");
    await look("unreadable");
    await leave(page);
    await nothingFound();
  });

  it("in the dialogs of export, language, paper and functions, and in a function of the notebook's own", async () => {
    const { page } = desk;
    await opened("For others …", "Export for another program");
    await leave(page);
    await opened("Language …", "Language and numbers");
    await leave(page);
    await opened("Paper", "Sheets on paper");
    await page.locator("dialog select").first().selectOption({ label: "Full-size templates" });
    await look("templates");
    await leave(page);
    await opened("Functions", "Named functions");
    for (const name of ["CONDUCTOR.DROP", "THRUST", "SURVEY"]) {
      await page.getByLabel("Look for").fill(name);
      await page.locator(".function-list button").first().click();
      for (const summary of await page.locator(".function-text summary").all()) await summary.click();
      await look(name);
    }
    await page.getByLabel("Look for").fill("no such thing");
    await look("no function found");
    await page.getByLabel("Look for").fill("DROP");
    await button(page, "Copy under another name …").first().click();
    await open(page, "under another name");
    await look("copy");
    await page.getByLabel("Name", { exact: true }).fill("conductor.drop");
    await page.keyboard.press("Enter");
    await page.locator("dialog [role=alert]", { hasText: "shipped" }).waitFor();
    await look("refused name");
    await page.getByLabel("Name", { exact: true }).fill("YARD.DROP");
    await page.keyboard.press("Enter");
    await heard(page, /YARD\.DROP can be called/);
    await look("page of own functions");
    await opened("Functions", "Named functions");
    await page.locator("dialog .own-mark").waitFor();
    await look("own function");
    await leave(page);
    await nothingFound();
  });

  it("in what is asked of a comma, and in versions and last states", async () => {
    const { page } = desk;
    await select(page, "Supply", current.cell);
    await typeInto(page, "1,234");
    await open(page, "How is the comma meant?");
    await look("comma");
    await leave(page);
    await notebooks(page).click();
    await open(page, "Notebooks");
    await page.getByLabel("Name of a version").fill("before the refit");
    await button(page, "Keep this state under a name").click();
    await page.locator("dialog").getByText("before the refit").waitFor();
    await page.locator("dialog summary").click();
    await look("versions and last states");
    await leave(page);
    await nothingFound();
  });

  it("in the audit with findings, a reason, a name, ticks and acceptances", async () => {
    const { page } = desk;
    await select(page, "Supply", cellAt("Supply", "drop", "Cruiser").cell);
    await typeInto(page, "0.5");
    await select(page, "Supply", current.cell);
    await button(page, "Audit").click();
    await page.locator(".audit .finding").first().waitFor();
    await look("findings");
    await button(page, "Accept with reason …").first().click();
    await page.getByLabel("Why it may stand").fill("measured on board");
    await look("reason");
    await button(page, "Accept").click();
    await open(page, "Who reviews?");
    await look("who reviews");
    await page.getByLabel("Name", { exact: true }).fill("A. Reviewer");
    await page.keyboard.press("Enter");
    await page.locator(".audit details.accepted summary").click();
    await page.getByText("Accepted by A. Reviewer").first().waitFor();
    await look("accepted");
    await button(page, "Tick this cell").click();
    await page.locator(".audit .ticks li").first().waitFor();
    await button(page, "Tick this row").click();
    await look("ticks");
    await select(page, "Supply", current.cell);
    await typeInto(page, "299");
    await page.locator(".audit .ticks .open").first().waitFor();
    await look("stale ticks");
    await page.locator(".audit").getByRole("button", { name: "Another name …" }).click();
    await open(page, "Who reviews?");
    await leave(page);
    await button(page, "Audit").click();
    await nothingFound();
  });

  it("in what feeds a cell, with its nodes open and shown in the cells", async () => {
    const { page } = desk;
    for (const [name, key] of [
      ["Supply", "drop"],
      ["Supply", "I_run"],
    ] as const) {
      await select(page, name, cellAt(name, key, "Pilot").cell);
      await page.locator(".feed-graph").waitFor();
      await button(page, "Show in the cells").click();
      const more = page.locator(".feed-graph .more");
      if (await more.count()) await more.first().click();
      for (const summary of await page.locator(".working summary").all()) await summary.click();
      await look(`feeds of ${key}`);
      for (const finding of await findingsInBothLights(page)) found.push(`marked cells: ${finding}`);
      await button(page, "Show in the cells").click();
    }
    await nothingFound();
  });

  it("in every study with its answer", async () => {
    const { page } = desk;
    await opened("Studies", "Studies");
    for (const tab of await page.getByRole("tab").all()) {
      await tab.click();
      const submit = page.locator(".study form.ask button[type=submit]");
      if ((await submit.count()) > 0 && (await submit.first().isEnabled())) {
        await submit.first().click();
        await page.waitForFunction(() => document.querySelector(".study .verdict-line")?.textContent?.trim());
        await page.waitForFunction(() => !document.querySelector(".study progress"));
      }
      await look(`study ${await tab.textContent()}`);
    }
    await leave(page);
    await nothingFound();
  });

  it("where nothing is kept: before another notebook takes the place of the open one, or files on the disk", async () => {
    const kept = desk;
    desk = await place.desk({ reducedMotion: "reduce" }, (context) => context.addInitScript(withoutKeeping));
    const { page } = desk;
    await select(page, "Supply", current.cell);
    await typeInto(page, "301");
    await page.locator(".alarm[role=alert]").waitFor();
    await look("alarm");
    await give(page, "Open …", "three-hulls.zip", zip);
    await open(page, "Replace the open notebook?");
    await look("another notebook");
    await leave(page);
    await notebooks(page).click();
    await button(page, "Save to a folder …").click();
    await open(page, "Replace these files?");
    await look("files on the disk");
    await leave(page);
    expect(desk.strayed).toEqual([]);
    desk = kept;
    await nothingFound();
  });

  it("in the class and a task, on the trainee's side and on the trainer's", async () => {
    const { page } = desk;
    await notebooks(page).click();
    await button(page, "Course at Tern Quay").click();
    await heard(page, /Course at Tern Quay is open/);
    await turnTo(page, "Drop");
    await page.waitForSelector("#trainee");
    await look("who");
    await page.getByLabel("Your trainee number").fill("T07");
    await page.keyboard.press("Enter");
    await page.waitForSelector(".question");
    await look("task of a trainee");
    await opened("Trainer's side …", "Trainer's side");
    await button(page, "Show the trainer's side").click();
    await page.waitForSelector("#cells .ht_master td");
    await look("task as cells");
    await opened("Class and marks …", "Class and marks");
    await page.getByLabel("or one trainee").fill("T08");
    await button(page, "Add").click();
    await give(page, "Take answer files …", "T07.csv", printTraineeFile(course, "T07"));
    await page.getByText("1 file marked.").waitFor();
    await look("marks");
    await give(page, "Take answer files …", "x.csv", "a,b\n1,2\n");
    await page.locator("dialog [role=alert]").waitFor();
    await look("refused answers");
    await leave(page);
    await nothingFound();
  });
});
