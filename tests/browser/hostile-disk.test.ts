import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { writeNotebook } from "../../src/notebook/files";
import { leadColumns, type Notebook } from "../../src/notebook/model";
import { packNotebook } from "../../src/notebook/zip";
import { Workplace } from "./desk";
import { give } from "./files-given";
import { names } from "./hostile-notebook";
import { hostileDesk, sizes } from "./hostile-watch";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

/** A small notebook of which the title is hostile. */
const titled = (title: string): Notebook => ({
  about: { version: 1, title, pages: [{ name: "Cells", file: "cells.csv" }] },
  pages: [{ id: "cells", name: "Cells", file: "cells.csv", rows: [[...leadColumns, "Only"]] }],
});

/** Puts a notebook into a folder of the browser's own disk, which the program is given whenever it asks for one. */
const putFolder = (page: Page, folder: string, notebook: Notebook): Promise<void> =>
  page.evaluate(
    async ([name, files]) => {
      const disk = await navigator.storage.getDirectory();
      const part = await disk.getDirectoryHandle(name, { create: true });
      for (const [file, text] of files) {
        const stream = await (await part.getFileHandle(file, { create: true })).createWritable();
        await stream.write(text);
        await stream.close();
      }
      Object.assign(window, { showDirectoryPicker: async () => part });
    },
    [folder, [...writeNotebook(notebook)]] as const,
  );

async function saveToFolder(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Notebooks …" }).click();
  await page.locator("dialog").getByRole("button", { name: "Save to a folder …" }).click();
  await page.getByRole("button", { name: "Leave them as they are" }).waitFor();
}

/** What a disk takes as the name of a folder. */
const folderName = (text: string): string => text.replace(/[/\\\p{Cc}\p{Cs}]/gu, "_").slice(0, 60);

describe.each(sizes)("at %i × %i hostile titles and folders", { timeout: 400_000 }, (...size) => {
  it("are text where a notebook is saved to a folder, and where another's files would be replaced", async () => {
    const desk = await hostileDesk(place, size);
    const { page } = desk;
    const step = size[0] > 1000 ? 4 : 9;
    for (let i = 0; i < names.length; i += step) {
      const [title = "", other = ""] = [names[i], names[(i + 1) % names.length]];
      const where = `${i}: ${title.slice(0, 60)}`;
      await give(page, "Open …", "titled.zip", packNotebook(titled(title)));
      await page.waitForFunction((wanted) => document.querySelector(".job")?.textContent === wanted, title);
      await putFolder(page, `yard ${folderName(other)}`, titled(other));
      await saveToFolder(page);
      await expect.poll(() => page.locator("dialog").last().textContent()).toContain("Its files are replaced.");
      await desk.expectWell(`${where}: asked`);
      await page.getByRole("button", { name: "Leave them as they are" }).click();
      await page.keyboard.press("Escape");
      await saveToFolder(page);
      await page.getByRole("button", { name: "Replace them" }).click();
      await page.waitForFunction(() => document.querySelector(".said")?.textContent?.includes("Saved to the folder"));
      await page.keyboard.press("Escape");
      await desk.expectWell(`${where}: saved`);
    }
  });
});
