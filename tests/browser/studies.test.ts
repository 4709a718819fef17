// Past 150 lines: every study once on one worked notebook, against the same question asked without a screen.
import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { finish } from "../../src/study/carry-out";
import { moves } from "../../src/study/moves";
import { printOptions } from "../../src/study/options/print";
import { readOptions } from "../../src/study/options/read";
import { runOptions } from "../../src/study/options/run";
import { checkRows, columnOf, cellOf as positionOf, rowsNamed } from "../../src/study/rows";
import { runnerOf } from "../../src/study/runner";
import { movesSentence, sideBySideSentence, spreadSentence, twoInputsSentence } from "../../src/study/sentences";
import { sideBySide } from "../../src/study/side-by-side";
import { sideBySideCsv } from "../../src/study/side-by-side-csv";
import { smallest } from "../../src/study/smallest";
import { solve } from "../../src/study/solve";
import { spread } from "../../src/study/spread/spread";
import { subjectOf } from "../../src/study/subject";
import { twoInputs } from "../../src/study/two-inputs";
import { openSheets } from "../figures/open-sheets";
import { contentOf, heard, textOf, Workplace } from "./desk";
import { cellAt } from "./worked";

const live = openSheets("three-hulls");
const { notebook } = live;
let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(async () => {
  live.close();
  await place.close();
});

/** What a study of Cruiser is made from, without a screen. */
function cruiser(names: string, withChecks = false) {
  const column = columnOf(notebook, "Cruiser");
  const closed = checkRows(notebook).filter((row) => live.value(positionOf(row, column)).kind === "number");
  const wanted = rowsNamed(notebook, names);
  const more = withChecks ? closed.filter(({ name }) => !wanted.some((one) => one.name === name)) : [];
  const subject = subjectOf(live, column, [...wanted, ...more]);
  const input = (name: string) => subject.inputs.findIndex((one) => one.name === name);
  return { subject, runner: runnerOf(subject.chain, notebook.pages), input };
}

const pick = (page: Page, name: string, value: string) =>
  page.getByRole("combobox", { name, exact: true }).selectOption(value);
const fill = (page: Page, name: string, text: string) => page.getByRole("textbox", { name, exact: true }).fill(text);
const press = (page: Page, name: string) => page.getByRole("button", { name, exact: true }).click();

/** The studies open on one of their parts. */
async function studies(part: string) {
  const desk = await place.desk();
  await press(desk.page, "Studies");
  await desk.page.getByRole("tab", { name: part, exact: true }).click();
  return desk;
}

/** The first line of the answer, when it is there. */
async function verdict(page: Page): Promise<string> {
  await page.waitForFunction(
    () =>
      !document.querySelector("dialog progress") &&
      !/^Calculating/.test(document.querySelector(".verdict-line")?.textContent ?? ""),
  );
  return (await page.textContent(".verdict-line")) ?? "";
}

async function saved(page: Page, button: string): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([page.waitForEvent("download"), press(page, button)]);
  return { name: download.suggestedFilename(), text: (await contentOf(download)).toString("utf8") };
}

/**
 * Numbers of a file to ten digits: the browser and the terminal's own engine raise to a power with other last bits.
 */
const digits = /-?\d+\.\d+(?:e-?\d+)?/g;
const ten = (number: string): string => String(Number(Number(number).toPrecision(10)));

/** Puts a file into the system's window that the page opens. */
async function choose(page: Page, name: string, text: string): Promise<void> {
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), press(page, "Choose a CSV file …")]);
  await chooser.setFiles({ name, mimeType: "text/csv", buffer: Buffer.from(text) });
}

describe("options side by side", () => {
  it("says who is best and who is ruled out, and hands the same table out as CSV and picture", async () => {
    const { page, complaints } = await studies("Side by side");
    await pick(page, "Compared with", "Cruiser");
    const table = sideBySide(live, {
      options: ["Sloop", "Cruiser", "Pilot"],
      rows: rowsNamed(notebook, "Compare.*"),
      base: "Cruiser",
      best: { name: "Compare.price_80", is: "least" },
    });
    await expect.poll(() => verdict(page)).toBe(sideBySideSentence(table));
    expect((await saved(page, "Save as CSV")).text.replace(digits, ten)).toBe(
      sideBySideCsv(table).replace(digits, ten),
    );
    const picture = await saved(page, "Save as picture");
    expect(picture.name).toBe("side-by-side.svg");
    expect(picture.text).toMatch(/^<svg [\s\S]*Voltage lost in the conductors[\s\S]*<\/svg>/);
    await press(page, "Copy as CSV");
    await page.waitForFunction(() => /Copied as CSV/.test(document.querySelector(".verdict-line")?.textContent ?? ""));
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied.replace(digits, ten)).toBe(sideBySideCsv(table).replace(digits, ten));
    await press(page, "Copy as picture");
    await page.waitForFunction(() => /as a picture/.test(document.querySelector(".verdict-line")?.textContent ?? ""));
    const size = await page.evaluate(async () => {
      const [item] = await navigator.clipboard.read();
      const { width, height } = await createImageBitmap((await item?.getType("image/png")) as Blob);
      return { width, height };
    });
    const [, width, height] = /width="([\d.]+)" height="([\d.]+)"/.exec(picture.text) ?? [];
    expect(size).toEqual({ width: 2 * Math.round(Number(width)), height: 2 * Math.round(Number(height)) });
    const rows = await page.locator(".study-table tbody tr").count();
    await page.getByLabel("Hide rows that are equal").check();
    await expect.poll(() => page.locator(".study-table tbody tr").count()).toBeLessThan(rows);
    expect(complaints).toEqual([]);
  });

  it("adds an option as a copy, as one step", async () => {
    const { page } = await studies("Side by side");
    await fill(page, "Name", "Cruiser, thicker cable");
    await pick(page, "as a copy of", "Cruiser");
    await press(page, "Add the copy");
    await expect.poll(() => verdict(page)).toContain("added as a copy of Cruiser");
    await expect
      .poll(() => page.locator(".study-table thead th").allTextContents())
      .toContain("Cruiser, thicker cable");
    await page.keyboard.press("Escape");
    await page.keyboard.press("Control+z");
    await heard(page, /Undone: option Cruiser, thicker cable added/);
  });
});

describe("solving back", () => {
  it("finds the input that the library finds and writes it as one step that undo takes back", async () => {
    const { page, complaints } = await studies("Solve back");
    await pick(page, "Option", "Cruiser");
    await pick(page, "Result", "Supply.drop");
    await pick(page, "by changing", "Supply.run");
    await fill(page, "is to be V", "0.5");
    await press(page, "Solve back");
    const { subject, runner, input } = cruiser("Supply.drop");
    const answer = finish(solve(subject, runner, { input: input("Supply.run"), result: 0, wanted: 0.5 }));
    expect(answer.solutions).toHaveLength(1);
    await expect.poll(() => verdict(page)).toBe(answer.sentence);
    await press(page, "Write it into the cell of Cruiser");
    await expect.poll(() => verdict(page)).toContain("Supply.run of Cruiser is now");
    await page.keyboard.press("Escape");
    const { cell, text } = cellAt("Supply", "run", "Cruiser");
    await expect.poll(() => textOf(page, "Supply", cell)).toBe(String(answer.solutions[0]?.input));
    await page.keyboard.press("Control+z");
    await heard(page, /Undone: Supply\.run solved back/);
    await expect.poll(() => textOf(page, "Supply", cell)).toBe(text);
    expect(complaints).toEqual([]);
  });

  it("finds the smallest with which all checks hold, and says what is missing in words", async () => {
    const { page } = await studies("Solve back");
    await pick(page, "Option", "Cruiser");
    await press(page, "Solve back");
    await expect.poll(() => verdict(page)).toMatch(/^The value that is wanted is blank/);
    await pick(page, "Find", "checks");
    await pick(page, "by changing", "Supply.area");
    await press(page, "Find the smallest");
    const column = columnOf(notebook, "Cruiser");
    const subject = subjectOf(live, column, checkRows(notebook));
    const input = subject.inputs.findIndex(({ name }) => name === "Supply.area");
    const runner = runnerOf(subject.chain, notebook.pages);
    await expect.poll(() => verdict(page)).toBe(finish(smallest(subject, runner, { input })).sentence);
  });
});

describe("what moves a result", () => {
  it("ranks the inputs as the library does, as a drawing and as rows", async () => {
    const { page } = await studies("What moves it");
    await pick(page, "Option", "Cruiser");
    await pick(page, "Result", "Supply.drop");
    await press(page, "Rank the inputs");
    const { subject, runner } = cruiser("Supply.drop");
    const answer = finish(moves(subject, runner, 0));
    await expect.poll(() => verdict(page)).toBe(movesSentence(answer));
    await expect.poll(() => page.locator(".study-table tbody tr").count()).toBe(answer.moves.length);
    await expect
      .poll(() => page.locator("#study-part svg[role=img]").getAttribute("aria-label"))
      .toContain("What moves Supply.drop");
    expect((await saved(page, "Save as CSV")).text.split("\n")[1]).toContain(answer.moves[0]?.name);
  });
});

describe("the spread of results", () => {
  it("gives the library's percentiles, and keeps what varies and the seed in the notebook", async () => {
    const { page, complaints } = await studies("Spread");
    await pick(page, "Option", "Cruiser");
    await pick(page, "Result", "Supply.drop");
    await pick(page, "Vary also", "Supply.run");
    await press(page, "Add the input");
    await fill(page, "Low of Supply.run", "15");
    await fill(page, "High of Supply.run", "22");
    await fill(page, "Common cause, 0 to 1", "0.3");
    await fill(page, "Seed", "7");
    await press(page, "Spread");
    const { subject, runner, input } = cruiser("Supply.drop", true);
    const shape = { kind: "three points", low: 15, likely: 17, high: 22 } as const;
    const varied = [{ input: input("Supply.run"), shape }];
    const answer = finish(spread(subject, runner, { varied, trials: 10_000, common: 0.3, seed: 7 }));
    await expect.poll(() => verdict(page)).toBe(spreadSentence(answer));
    await expect.poll(() => page.locator(".figures svg").count()).toBe(2);
    await page.keyboard.press("Escape");
    await press(page, "Studies");
    await expect.poll(() => page.getByRole("textbox", { name: "High of Supply.run" }).inputValue()).toBe("22");
    await expect.poll(() => page.getByRole("textbox", { name: "Seed", exact: true }).inputValue()).toBe("7");
    await expect.poll(() => page.textContent(".title-block")).not.toMatch(/spread|vary/i);
    await fill(page, "Seed", "seven");
    await press(page, "Spread");
    await expect.poll(() => verdict(page)).toBe('Seed: "seven" is not a number; write it alone, without a unit.');
    expect(complaints).toEqual([]);
  });

  it("is stopped by its own button", async () => {
    const { page } = await studies("Spread");
    await pick(page, "Vary also", "Supply.run");
    await press(page, "Add the input");
    await fill(page, "Trials", "1000000");
    await press(page, "Spread");
    await press(page, "Stop");
    await expect.poll(() => verdict(page)).toBe("The study was stopped.");
  });
});

describe("a result over two inputs", () => {
  it("shows the library's numbers and where all checks hold", async () => {
    const { page } = await studies("Two inputs");
    await pick(page, "Option", "Sloop");
    await pick(page, "Result", "Supply.drop");
    await fill(page, "Steps", "6");
    const across = page.getByRole("group", { name: "Across" });
    const upwards = page.getByRole("group", { name: "Upwards" });
    await across.getByRole("combobox").selectOption("Supply.run");
    await across.getByRole("textbox", { name: "from" }).fill("8");
    await across.getByRole("textbox", { name: "to" }).fill("20");
    await upwards.getByRole("combobox").selectOption("Supply.I_run");
    await upwards.getByRole("textbox", { name: "from" }).fill("200");
    await upwards.getByRole("textbox", { name: "to" }).fill("260");
    await press(page, "Calculate");
    const column = columnOf(notebook, "Sloop");
    const closed = checkRows(notebook).filter((row) => live.value(positionOf(row, column)).kind === "number");
    const subject = subjectOf(live, column, [...rowsNamed(notebook, "Supply.drop"), ...closed]);
    const input = (name: string) => subject.inputs.findIndex((one) => one.name === name);
    const answer = finish(
      twoInputs(subject, runnerOf(subject.chain, notebook.pages), {
        across: { input: input("Supply.run"), range: { low: 8, high: 20 }, parts: 6 },
        down: { input: input("Supply.I_run"), range: { low: 200, high: 260 }, parts: 6 },
        result: 0,
      }),
    );
    await expect.poll(() => verdict(page)).toBe(twoInputsSentence(answer));
    await expect.poll(() => page.locator(".map td").count()).toBe(49);
    await expect.poll(() => page.locator(".map td.inside").count()).toBe(answer.holds.flat().filter(Boolean).length);
  });
});

describe("options from a file", () => {
  const boats = "option,Supply.run [m],Supply.I_run\nTender,9.5,200\nKetch,21,330\n";

  it("refuses a wrong key in words and takes nothing", async () => {
    const { page } = await studies("Options from a file");
    await choose(page, "boats.csv", "option,Supply.rum\nTender,9\n");
    const refusal = page.getByRole("alert");
    await expect.poll(() => refusal.textContent()).toContain('there is no row "Supply.rum"; did you mean Supply.run');
    await choose(page, "boats.csv", "option,Supply.run [ft]\nTender,9\n");
    await page.waitForFunction(() =>
      /ft, the notebook m/.test(document.querySelector("[role=alert]")?.textContent ?? ""),
    );
    await expect.poll(() => page.getByRole("button", { name: "Calculate only" }).isDisabled()).toBe(true);
  });

  it("calculates them as the terminal does, and takes them in as columns", async () => {
    const { page, complaints } = await studies("Options from a file");
    await pick(page, "Option", "Cruiser");
    await choose(page, "boats.csv", boats);
    await page.waitForFunction(() =>
      /2 options, 2 inputs each/.test(document.querySelector(".verdict-line")?.textContent ?? ""),
    );
    await press(page, "Calculate only");
    await expect.poll(() => verdict(page)).toMatch(/^2 options calculated/);
    const column = columnOf(notebook, "Cruiser");
    const table = readOptions(
      notebook,
      "boats.csv",
      boats
        .trim()
        .split("\n")
        .map((line) => line.split(",")),
      column,
    );
    const run = runOptions(live, column, table, rowsNamed(notebook, "Compare.*"));
    expect((await saved(page, "Save the results as CSV")).text.replace(digits, ten)).toBe(
      [...printOptions(run)].join("").replace(digits, ten),
    );
    await press(page, "Take them in as option columns");
    await expect.poll(() => verdict(page)).toContain("2 options of boats.csv taken in as columns");
    await page.keyboard.press("Escape");
    await expect.poll(() => page.textContent(".left .options")).toBe("Sloop, Cruiser, Pilot, Tender, Ketch");
    await page.keyboard.press("Control+z");
    await heard(page, /Undone: options of boats\.csv/);
    await expect.poll(() => page.textContent(".left .options")).toBe("Sloop, Cruiser, Pilot");
    expect(complaints).toEqual([]);
  });
});

describe("the place for studies", () => {
  it("is worked by keys alone, gives the focus back, and passes the accessibility check on every part", async () => {
    const { page } = await place.desk({ viewport: { width: 820, height: 1180 } });
    await page.getByRole("button", { name: "Studies", exact: true }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("tab", { name: "Side by side" }).focus();
    for (const name of ["Solve back", "What moves it", "Spread", "Two inputs", "Options from a file", "Side by side"]) {
      await page.keyboard.press("ArrowRight");
      await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe(name);
      const { violations } = await new AxeBuilder({ page }).include("dialog").analyze();
      expect(
        violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.target}`),
        name,
      ).toEqual([]);
      const isCut = await page.evaluate(() => {
        const dialog = document.querySelector("dialog");
        return dialog !== null && dialog.scrollWidth > dialog.clientWidth;
      });
      expect(isCut, name).toBe(false);
    }
    await page.keyboard.press("Escape");
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("Studies");
  });
});
