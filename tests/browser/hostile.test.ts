import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { leadColumns } from "../../src/notebook/model";
import { packNotebook } from "../../src/notebook/zip";
import { heard, select, Workplace } from "./desk";
import { give } from "./files-given";
import { hostileCourse } from "./hostile-course";
import { hostileNotebook, hostileZip, names } from "./hostile-notebook";
import { type HostileDesk, hostileDesk, sizes } from "./hostile-watch";
import { outOfPlace } from "./layout";
import { outOfOrder } from "./text-order";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

/** Opens a notebook that stands in a file, over the open one. */
async function take(page: Page, zip: Uint8Array, pages: number): Promise<void> {
  await give(page, "Open …", "</script><img src=x onerror=hurt=1>.zip", zip);
  await page.waitForFunction((count) => document.querySelectorAll(".pages button[data-page]").length === count, pages);
}

const opened = async (desk: HostileDesk, which: number): Promise<Page> => {
  await take(desk.page, hostileZip(which), names.length + 3);
  return desk.page;
};

const turn = async (page: Page, i: number): Promise<void> => {
  await page.locator(".pages button[data-page]").nth(i).click();
  await page.waitForFunction((n) => document.querySelector("h1 .number")?.textContent === String(n + 1), i);
};

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });

/** Closes the dialog in front. */
async function leave(page: Page): Promise<void> {
  await page
    .locator("dialog")
    .getByRole("button", { name: /^(Close|Go back)$/ })
    .first()
    .click();
  await page.waitForFunction(() => !document.querySelector("dialog"));
}

/** What stands in front of the cells or beside them, and shows what stands in the file. */
const windows = ["Options", "Units", "Paper", "Functions", "Notebooks …", "For others …", "Language …"] as const;

describe.each(sizes)("at %i × %i a notebook full of hostile texts", { timeout: 240_000 }, (...size) => {
  it("is text on every page: quantities, keys, units, bases, values, results, options, pages, notes, title block", async () => {
    const desk = await hostileDesk(place, size);
    const page = await opened(desk, 0);
    await desk.expectWell("opened");
    for (let i = 0; i < names.length + 3; i++) {
      await turn(page, i);
      await desk.expectWell(`page ${i + 1}`);
    }
    const shown = await page.$$eval(".pages button[data-page]", (all) =>
      all.map((one) => (one as HTMLElement).dataset.page),
    );
    expect(shown.slice(3)).toEqual(names);
  });

  it("is text in title, revision and date, whichever it is", async () => {
    const desk = await hostileDesk(place, size);
    for (let which = 1; which < names.length; which += size[0] > 1000 ? 3 : 9) {
      const page = await opened(desk, which);
      await page.waitForFunction(
        (title) => document.querySelector(".job")?.textContent === title,
        hostileNotebook(which).about.title,
      );
      await desk.expectWell(`title ${which}`);
    }
  });

  it("is text in every dialog, study and panel", async () => {
    const desk = await hostileDesk(place, size);
    const page = await opened(desk, 49);
    for (const name of windows) {
      await button(page, name).first().click();
      await page.locator("dialog[open]").waitFor();
      await desk.expectWell(name);
      await leave(page);
    }
    await button(page, "Functions").click();
    for (const name of await page.locator(".function-list button", { hasText: "YARD.HURT" }).all()) {
      await name.click();
      await desk.expectWell(`function ${await name.textContent()}`);
    }
    await leave(page);
    await button(page, "Studies").click();
    for (const tab of await page.getByRole("tab").all()) {
      await tab.click();
      await desk.expectWell(`study ${await tab.textContent()}`);
    }
    await leave(page);
    await button(page, "Audit").click();
    await page.waitForSelector(".audit .sum");
    await desk.expectWell("audit");
    await button(page, "Rows and cells").click();
    await page.waitForSelector("[role=menu]");
    await desk.expectWell("menu");
  });

  it("is text in a course: tasks, answers, hints, class and marks", async () => {
    const desk = await hostileDesk(place, size);
    const { page } = desk;
    await take(page, packNotebook(hostileCourse), hostileCourse.pages.length);
    await turn(page, 0);
    await page.getByLabel("Your trainee number").fill("T07");
    await page.keyboard.press("Enter");
    for (const i of hostileCourse.pages.keys()) {
      await turn(page, i);
      await page.waitForSelector(".question");
      await desk.expectWell(`task ${i + 1}`);
    }
    await button(page, "Trainer's side …").click();
    await button(page, "Show the trainer's side").click();
    await page.waitForSelector("#cells .ht_master td");
    await desk.expectWell("task as cells");
    await button(page, "Class and marks …").click();
    const list = `Trainee,Group\n${names.map((name) => [name, name].map((one) => `"${one.replaceAll('"', '""')}"`).join(",")).join("\n")}\n`;
    await give(page, "Take a class list (CSV) …", "class.csv", list);
    await page.waitForFunction(() =>
      /trainee/.test(document.querySelector("dialog [role=status], dialog [role=alert]")?.textContent ?? ""),
    );
    await desk.expectWell("class");
  });
});

describe.each(sizes)("at %i × %i a cell of a file", { timeout: 120_000 }, (...size) => {
  const fileWith = (text: string) =>
    packNotebook({
      about: { version: 1, title: "Large", pages: [{ name: "Cells", file: "cells.csv" }] },
      pages: [
        {
          id: "cells",
          name: "Cells",
          file: "cells.csv",
          rows: [
            [...leadColumns, "Only"],
            [text, "key", "m", text, text],
            ["Result", "result", "", "", "=E2"],
          ],
        },
      ],
    });

  it("of 1 MB is refused in one sentence, one of 100,000 letters is shown", async () => {
    const desk = await hostileDesk(place, size);
    const { page } = desk;
    const before = await page.locator(".pages button[data-page]").count();
    await give(page, "Open …", "large.zip", fileWith("W".repeat(1_000_000)));
    expect(await heard(page, /large\.zip/)).toMatch(
      /^large\.zip: cells\.csv, row 2, column 1: [^.]+ 1000000 \(allowed 100000\); shorten it\. The open notebook is unchanged\.$/,
    );
    await expect.poll(() => page.locator(".pages button[data-page]").count()).toBe(before);
    await desk.expectWell("1 MB");
    for (const text of ["W".repeat(100_000), "word ".repeat(20_000)]) {
      await take(page, fileWith(text), 1);
      await desk.expectWell("100,000 letters");
      // The field over the cell, closed and open, breaks nothing into lines: with one long word that takes seconds.
      const field = page.locator("#cells textarea").first();
      const breaks = () => field.evaluate((one) => getComputedStyle(one).whiteSpace);
      await select(page, "Cells", "E2");
      await expect.poll(breaks).toBe("pre");
      await page.keyboard.press("F2");
      await expect.poll(() => field.inputValue()).toBe(text);
      await expect.poll(breaks).toBe("pre");
      await page.keyboard.press("Escape");
    }
  });
});

it("the tests would see what leaves its place or its order", async () => {
  const desk = await hostileDesk(place, sizes[0]);
  const { page } = desk;
  await desk.expectWell("as it opens");
  await page.evaluate(() => {
    const line = document.createElement("p");
    line.textContent = "first \u202Elive second third";
    document.querySelector(".left .job")?.append(line);
  });
  expect(await outOfOrder(page)).not.toEqual([]);
  await page.evaluate(() =>
    document.querySelector(".title-block")?.setAttribute("style", "width: 3000px; height: 700px"),
  );
  expect(await outOfPlace(page)).not.toEqual([]);
});
