// Past 150 lines: one course, worked and marked, from both sides of the page.
import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { asAsked } from "../../src/course/allowance";
import { questionOf } from "../../src/course/asked";
import { numbersFor, scalarOf } from "../../src/course/numbers";
import { mistakesOf, type Task } from "../../src/course/task";
import { markTraineeFile, printTraineeFile } from "../../src/course/trainee-file";
import { pageByName } from "../../src/notebook/model";
import { parsePage } from "../../src/notebook/page-csv";
import { taskOf, worked } from "../course/course";
import { hiddenFirst } from "../course/secrets";
import { readWorked } from "../sheets/worked";
import { contentOf, heard, textOf, turnTo, typeInto, Workplace } from "./desk";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

const drop = taskOf(worked, "drop.csv");
const own = numbersFor(worked, drop, "T07");

/** An answer or a mistake of T07 as a person writes it. */
const rounded = (value: unknown): string => String(Number(Number(value).toPrecision(5)));
const right = (name: string): string => {
  const answer = drop.answers.find((one) => one.name === name);
  return answer ? asAsked(answer.allowance, scalarOf(own.worked.values.get(name)) ?? "") : "";
};
const mistaken = (of: string, title: string): string => {
  const mistake = mistakesOf(drop).find((one) => one.of === of && one.title === title);
  const value = mistake && own.worked.mistakes.get(mistake);
  return rounded(value?.kind === "number" ? value.value : Number.NaN);
};
const oneWay = "one-way length instead of out and back";

async function openCourse(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Notebooks …" }).click();
  await page.getByRole("button", { name: "Course at Tern Quay" }).click();
  await page.waitForFunction(() => document.title.endsWith("Course at Tern Quay"));
}

async function beTrainee(page: Page, trainee: string, task = drop.title): Promise<void> {
  await turnTo(page, task);
  await page.getByLabel("Your trainee number").fill(trainee);
  await page.keyboard.press("Enter");
  await page.waitForSelector(".question");
}

async function answer(page: Page, answers: { resistance: string; drop: string; verdict: string }): Promise<void> {
  await page.getByLabel("Resistance out and back, warm").fill(answers.resistance);
  await page.getByLabel("Volts lost in the conductors").fill(answers.drop);
  await page.getByLabel(answers.verdict, { exact: true }).check();
}

async function beTrainer(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Trainer's side …" }).click();
  await page.getByRole("button", { name: "Show the trainer's side" }).click();
  await page.waitForSelector("#cells .ht_master td");
}

const marksOn = (page: Page): Promise<string[]> =>
  page.$$eval(".mark-line", (lines) => lines.map((line) => (line.textContent ?? "").replace(/\s+/g, " ").trim()));

const press = (page: Page, name: string) => page.getByRole("button", { name, exact: true }).click();

/** The file that a button hands out. */
async function handedOut(page: Page, button: string): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([page.waitForEvent("download"), press(page, button)]);
  return { name: download.suggestedFilename(), text: (await contentOf(download)).toString("utf8") };
}

/** Gives a file to the button that asks for one. */
async function give(page: Page, button: string, files: readonly { name: string; text: string }[]): Promise<void> {
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), press(page, button)]);
  await chooser.setFiles(
    files.map(({ name, text }) => ({ name, mimeType: "text/csv", buffer: Buffer.from(text, "utf8") })),
  );
}

/** What a person or a search reads in the fields. */
const fieldsOf = (page: Page): Promise<string> =>
  page.$$eval("input, textarea, select", (fields) => fields.map((one) => (one as HTMLInputElement).value).join("\n"));

/** The whole document as it is written now, attributes included, with what its fields hold. */
async function sourceOf(page: Page): Promise<string> {
  const source = await page.evaluate(() => document.documentElement.outerHTML);
  const signs = [
    ["&lt;", "<"],
    ["&gt;", ">"],
    ["&quot;", '"'],
    ["&#39;", "'"],
    ["&nbsp;", "\u00a0"],
    ["&amp;", "&"],
  ] as const;
  return `${signs.reduce((text, [written, sign]) => text.replaceAll(written, sign), source)}\n${await fieldsOf(page)}`;
}

const accessible = async (page: Page): Promise<string[]> => {
  const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
  const { violations } = await new AxeBuilder({ page }).withTags(rules).exclude("#cells").analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target}`));
};

describe("a course on the page", () => {
  it("is worked from a trainee's file and marked by the trainer", { timeout: 180_000 }, async () => {
    const [trainer, trainee] = await Promise.all([place.desk(), place.desk()]);
    await openCourse(trainer.page);
    await turnTo(trainer.page, "Drop");
    await beTrainer(trainer.page);
    await press(trainer.page, "Class and marks …");
    await give(trainer.page, "Take a class list (CSV) …", [
      { name: "class.csv", text: "Trainee,Group\nT07,A\nT08,A\n" },
    ]);
    await trainer.page.getByText("2 trainees: T07, T08").waitFor();
    const table = await handedOut(trainer.page, "Save numbers and answers (CSV)");
    const rows = parsePage(table.name, table.text);
    expect(rows[0]?.slice(0, 4)).toEqual(["Trainee", "Group", "Task", "Title"]);
    expect(rows.find((row) => row[0] === "T07" && row[5] === "drop")?.[7]).toBe(right("drop"));

    // The trainee is given a file and nothing else.
    const { page } = trainee;
    await give(page, "Open …", [{ name: "T07.csv", text: printTraineeFile(worked, "T07", { tasks: [drop] }) }]);
    await page.waitForSelector(".question");
    await expect
      .poll(() => page.$$eval(".question p", (all) => all.map((one) => one.textContent)))
      .toEqual(questionOf(own));
    await press(page, "Show a hint (1 of 3)");
    await expect.poll(() => page.locator(".hints li").allTextContents()).toEqual(drop.texts.hint.slice(0, 1));
    await answer(page, { resistance: "about 3", drop: mistaken("drop", oneWay), verdict: right("verdict") });
    await heard(page, /Answer verdict/);
    // Marked is nothing here, but what is no number can be said.
    await expect.poll(() => marksOn(page)).toEqual(['Cannot be read: "about 3" is no number.', "", ""]);
    await page.getByLabel("Resistance out and back, warm").fill(right("resistance"));
    await page.keyboard.press("Tab");
    await page.getByText("Every answer of this task is filled in.").waitFor();
    const answers = await handedOut(page, "Save my answers");
    expect(answers.name).toBe("T07.csv");
    expect(
      markTraineeFile(worked, answers.name, Buffer.from(answers.text)).tasks[0]?.marks.map(({ mark }) => mark.kind),
    ).toEqual(["right", "mistake", "right"]);

    await give(trainer.page, "Take answer files …", [answers]);
    await trainer.page.getByText("1 file marked.").waitFor();
    const cells = (n: number) =>
      trainer.page.$$eval(`dialog .results >> nth=${n} >> tbody tr`, (lines) =>
        lines.map((line) => [...line.children].map((cell) => cell.textContent?.trim() ?? "")),
      );
    await expect.poll(() => cells(0)).toEqual([["T07", "2 of 3", ""]]);
    await expect.poll(() => cells(1)).toContainEqual(["8 Drop", "drop", oneWay, "1", "T07"]);
    await expect.poll(() => trainer.page.textContent("dialog")).toContain("No file came from T08.");
    const marks = await handedOut(trainer.page, "Save marks (CSV)");
    expect(parsePage(marks.name, marks.text).map((row) => row[8])).toContain(oneWay);
    expect([...trainer.complaints, ...trainer.strayed, ...trainee.complaints, ...trainee.strayed]).toEqual([]);
  });

  it("says right, or which mistake was made, and opens the working once all is right", {
    timeout: 120_000,
  }, async () => {
    const { page, complaints } = await place.desk();
    await openCourse(page);
    await beTrainee(page, "t07");
    await answer(page, { resistance: mistaken("resistance", oneWay), drop: "1,460", verdict: right("verdict") });
    await press(page, "Mark my answers");
    const marks = await marksOn(page);
    expect(marks[0]).toBe(`Not right: ${oneWay}. The current goes out and comes back: take twice the way.`);
    expect(marks[2]).toBe("Right.");
    await expect.poll(() => page.textContent(".score")).toBe("1 of 3 right.");
    // A mark belongs to what was typed; typing takes it away.
    await page.getByLabel("Resistance out and back, warm").fill(right("resistance"));
    await page.keyboard.press("Tab");
    await expect.poll(async () => (await marksOn(page))[0]).toBe("");
    await expect.poll(() => page.locator(".rule-at-work").count()).toBe(0);
    await page.getByLabel("Volts lost in the conductors").fill(`${right("drop")} V`);
    await page.keyboard.press("Enter");
    await page.getByText("All right.", { exact: true }).waitFor();

    const steps = page.locator(".way > li");
    await expect.poll(() => steps.count()).toBe(0);
    await press(page, "Show the first step");
    await expect.poll(() => steps.allTextContents()).toHaveLength(1);
    await expect.poll(() => steps.first().textContent()).toMatch(/run = 2\*way\s*$/);
    await press(page, "Show what it comes to");
    await expect.poll(() => steps.first().textContent()).toContain(`= ${2 * Number(own.drawn.get("way"))} m`);
    await press(page, "Show the next step");
    await expect.poll(() => sourceOf(page)).not.toContain("CONDUCTOR.DROP");

    // A slider by the keyboard: the figure and the working follow, the task stays.
    const question = await page.textContent(".question");
    const drawing = () => page.locator(".follows svg").first().innerHTML();
    const before = await drawing();
    const current = Number(own.drawn.get("current"));
    await page.getByLabel("current while running, A", { exact: true }).press("ArrowRight");
    await expect.poll(() => page.getByLabel("current while running, A, typed").inputValue()).toBe(String(current + 10));
    await expect.poll(() => drawing()).not.toBe(before);
    await expect
      .poll(() => page.textContent(".rule-at-work .working h2"))
      .toBe("Working, with the numbers of the sliders");
    const follows = page.locator(".follows tr", { hasText: "Volts lost in the conductors" }).locator("td");
    const drops = Number(scalarOf(own.worked.values.get("drop")));
    await expect
      .poll(async () => Number.parseFloat((await follows.textContent()) ?? ""))
      .toBeCloseTo((drops * (current + 10)) / current, 3);
    await page.getByLabel("current while running, A, typed").fill("200");
    await page.keyboard.press("Tab");
    await expect
      .poll(async () => Number.parseFloat((await follows.textContent()) ?? ""))
      .toBeCloseTo((drops * 200) / current, 3);
    await expect.poll(() => page.textContent(".question")).toBe(question);
    await press(page, "Back to my numbers");
    await expect.poll(() => drawing()).toBe(before);
    expect(complaints).toEqual([]);
  });

  it("shows no solution in the page's source while a trainee works, on any task", { timeout: 240_000 }, async () => {
    const { page } = await place.desk();
    await openCourse(page);
    await beTrainee(page, "T07", worked.tasks[0]?.title);
    const leaks = async (task: Task): Promise<readonly string[]> => {
      const numbers = numbersFor(worked, task, "T07");
      const source = await sourceOf(page);
      const harmless = printTraineeFile(worked, "T07", { tasks: [task], hints: 0 });
      const values = [
        ...task.way.map(({ name }) => numbers.worked.values.get(name)),
        ...numbers.worked.mistakes.values(),
      ];
      const digits = values.flatMap((value) => (value?.kind === "number" ? [String(value.value)] : []));
      // Short numbers stand anywhere in a page by chance; those are looked for among what is read and typed.
      const written = `${await page.locator("main").innerHTML()} ${await page.locator("aside").innerHTML()}`;
      const read = `${written.replace(/<[^>]*>/g, " ")} ${await fieldsOf(page)}`;
      const inWords = new Set(read.match(/\d+(?:\.\d+)?/g));
      const asked = task.answers.map(({ name, allowance }) =>
        asAsked(allowance, scalarOf(numbers.worked.values.get(name)) ?? ""),
      );
      return [
        ...hiddenFirst(task).filter((secret) => source.includes(secret)),
        ...digits.filter((value) => value.length > 6 && source.includes(value)),
        ...asked.filter((value) => inWords.has(value) && !harmless.includes(value)),
      ];
    };
    for (const task of worked.tasks) {
      await turnTo(page, task.title);
      await page.waitForFunction(
        (words) => document.querySelector(".question p")?.textContent === words,
        questionOf(numbersFor(worked, task, "T07"))[0],
      );
      // The side is drawn a moment later than the task.
      await page.waitForFunction(
        (words) => document.querySelector("aside")?.textContent?.includes(words),
        task.texts.rule[0] ?? "",
      );
      expect(await leaks(task), task.title).toEqual([]);
    }
    // The test would see a solution: on the trainer's side it is there.
    await beTrainer(page);
    expect((await leaks(worked.tasks.at(-1) as Task)).length).toBeGreaterThan(5);
  });

  it("keeps what looks over the whole notebook off the trainee's side, and formulas off the tasks", {
    timeout: 120_000,
  }, async () => {
    const { page } = await place.desk();
    await openCourse(page);
    const titles = worked.tasks.flatMap((task) => hiddenFirst(task)).filter((secret) => !secret.includes("("));
    const found = async () => {
      const source = await sourceOf(page);
      return titles.filter((secret) => source.includes(secret));
    };
    const buttons = () =>
      page.$$eval("nav button, main button", (all) => all.map((one) => one.textContent?.trim() ?? ""));
    await turnTo(page, "Start");
    await page.waitForSelector("#cells .ht_master td");
    await expect
      .poll(async () => (await buttons()).filter((name) => /^(Audit|Studies|Paper|Options|Save)/.test(name)))
      .toEqual([]);
    // No task goes from the list of pages either, by mouse or by key.
    const more = page.getByRole("button", { name: /^What can be done with page/ });
    await expect.poll(() => more.count()).toBe(0);
    await page.locator('.pages button[data-page="Drop"]').press("Delete");
    await page.locator('.pages button[data-page="Drop"]').press("Shift+F10");
    await expect.poll(() => page.locator("dialog, [role=menu]").count()).toBe(0);
    await page.keyboard.press("Control+s");
    await heard(page, /The course is saved from the trainer's side/);
    await textOf(page, "Start", "B7");
    await typeInto(page, "=Drop!E17");
    await heard(page, /Drop holds a task: on the trainee's side no formula reads its cells/);
    await press(page, "Functions");
    await page.waitForSelector("dialog[open]");
    expect(await found()).toEqual([]);
    await page.keyboard.press("Escape");
    // What the trainer left open beside the cells is gone when the side is turned, and would have told.
    await turnTo(page, "Drop");
    await beTrainer(page);
    await turnTo(page, "Start");
    await more.waitFor();
    await press(page, "Audit");
    await page.waitForSelector("aside[aria-label=Audit]");
    await press(page, "Back to the trainee's side");
    await page.waitForSelector("aside:not([aria-label=Audit])");
    await expect.poll(() => buttons()).not.toContain("Audit");
    await page.waitForTimeout(300);
    expect(await found()).toEqual([]);
  });

  it("gives hints one at a time, and keeps trainee and answers over a reload", async () => {
    const { page } = await place.desk();
    await openCourse(page);
    await beTrainee(page, "T07");
    const hints = page.locator(".hints li");
    await expect.poll(() => hints.count()).toBe(0);
    await press(page, "Show a hint (1 of 3)");
    await expect.poll(() => hints.allTextContents()).toEqual(drop.texts.hint.slice(0, 1));
    await press(page, "Show the next hint (2 of 3)");
    await expect.poll(() => hints.allTextContents()).toEqual(drop.texts.hint.slice(0, 2));
    await page.getByLabel("Volts lost in the conductors").fill("1.25");
    await page.keyboard.press("Tab");
    await page.waitForTimeout(300);
    await page.reload();
    await page.waitForSelector("html[data-ready]");
    await page.waitForSelector(".question");
    await expect.poll(() => page.getByLabel("Volts lost in the conductors").inputValue()).toBe("1.25");
    await expect.poll(() => page.textContent(".whose")).toContain("trainee T07");
    const saved = await handedOut(page, "Save my answers");
    expect(parsePage(saved.name, saved.text).find((row) => row[0] === "8" && row[2] === "drop")?.[5]).toBe("1.25");
  });

  it("shows the tasks as cells to the trainer, who changes them, releases and prints", {
    timeout: 120_000,
  }, async () => {
    const { page, complaints } = await place.desk();
    await openCourse(page);
    await beTrainee(page, "T07");
    await page.getByRole("button", { name: "Trainer's side …" }).click();
    await page.waitForSelector("dialog[open]");
    await page.keyboard.press("Escape");
    await page.waitForFunction(() => !document.querySelector("dialog"));
    await expect.poll(() => page.locator(".question").count()).toBe(1);
    await beTrainer(page);
    const row = pageByName(readWorked("course"), "Drop")?.rows.findIndex(([part]) => part === "hint") ?? -1;
    await expect.poll(() => textOf(page, "Drop", `D${row + 1}`)).toBe(drop.texts.hint[0]);
    await typeInto(page, "Draw the circuit first.");
    await press(page, "Class and marks …");
    await page.getByLabel("or one trainee").fill("T07");
    await press(page, "Add");
    await page.evaluate(() => {
      new MutationObserver(() => {
        const frame = document.querySelector<HTMLIFrameElement>("iframe.to-print");
        frame?.addEventListener(
          "load",
          () => {
            // The frame's own print would open the system's window.
            if (frame.contentWindow) frame.contentWindow.print = () => undefined;
          },
          { capture: true },
        );
      }).observe(document.body, { childList: true });
    });
    const frame = page.frameLocator("iframe.to-print");
    await press(page, "Print task sheets");
    await page.getByText("1 sheet sent to the printer.").waitFor();
    await expect.poll(() => frame.locator("h1").textContent()).toBe("Task 8: Drop");
    await expect.poll(() => frame.locator("body").textContent()).not.toContain("CONDUCTOR.DROP");
    await press(page, "Print solution sheets");
    await frame.getByText("Solution for T07").waitFor({ state: "attached" });
    await expect.poll(() => frame.locator("body").textContent()).toContain("CONDUCTOR.DROP");
    await page.getByLabel("8 Drop").check();
    await press(page, "Close");
    await press(page, "Back to the trainee's side");
    await press(page, "Show a hint (1 of 3)");
    await expect.poll(() => page.locator(".hints li").allTextContents()).toEqual(["Draw the circuit first."]);
    await expect.poll(() => page.locator(".rule-at-work").count()).toBe(1);
    // The cells come back as they were left, with the keyboard in them.
    await turnTo(page, "Start");
    await expect.poll(() => textOf(page, "Start", "A1")).toBe("For whom");
    expect(complaints).toEqual([]);
  });
});

describe("a task for everybody", () => {
  for (const colorScheme of ["light", "dark"] as const) {
    it(`has nothing that the accessibility check finds, ${colorScheme}`, { timeout: 180_000 }, async () => {
      const { page } = await place.desk({ colorScheme });
      await openCourse(page);
      await turnTo(page, "Drop");
      await page.waitForSelector("#trainee");
      expect(await accessible(page)).toEqual([]);
      await beTrainee(page, "T07");
      await press(page, "Show a hint (1 of 3)");
      await answer(page, { resistance: "7", drop: "x", verdict: right("verdict") });
      await press(page, "Mark my answers");
      expect(await accessible(page)).toEqual([]);
      await answer(page, { resistance: right("resistance"), drop: right("drop"), verdict: right("verdict") });
      await press(page, "Mark my answers");
      for (const name of [
        "Show the first step",
        "Show what it comes to",
        "Show the next step",
        "Show what it comes to",
        "Show the next step",
        "Show what it comes to",
      ])
        await press(page, name);
      await page.locator(".way summary").last().click();
      expect(await accessible(page)).toEqual([]);
      await beTrainer(page);
      await press(page, "Class and marks …");
      await give(page, "Take answer files …", [{ name: "T07.csv", text: printTraineeFile(worked, "T07") }]);
      await page.getByText("1 file marked.").waitFor();
      expect(await accessible(page)).toEqual([]);
    });
  }

  it.each([820, 320])("fits %i pixels without being pushed sideways", async (width) => {
    const { page } = await place.desk({ viewport: { width, height: 900 } });
    await openCourse(page);
    await beTrainee(page, "T07");
    await answer(page, { resistance: right("resistance"), drop: right("drop"), verdict: right("verdict") });
    await press(page, "Mark my answers");
    await page.waitForSelector(".rule-at-work");
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
});
