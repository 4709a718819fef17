import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { unpackNotebook } from "../../src/notebook/zip";
import { contentOf, heard, select, textOf, typeInto, Workplace } from "./desk";
import { cellAt, worked, workedFile } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

const input = cellAt("Supply", "I_run", "Cruiser");

/** A desk whose browser, asked for a place, always gives the same one: a part of its own private disk. */
const withDisk = () =>
  place.desk({}, (context) =>
    context.addInitScript(() => {
      const part = async () => (await navigator.storage.getDirectory()).getDirectoryHandle("yard", { create: true });
      Object.assign(window, {
        showDirectoryPicker: part,
        showSaveFilePicker: async ({ suggestedName }: { suggestedName: string }) =>
          (await part()).getFileHandle(suggestedName, { create: true }),
      });
    }),
  );

const onDisk = (page: Page, name: string): Promise<string> =>
  page.evaluate(async (file) => {
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle("yard");
    return (await (await folder.getFileHandle(file)).getFile()).text();
  }, name);

const put = (page: Page, name: string, text: string): Promise<void> =>
  page.evaluate(
    async ([file, content]) => {
      const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle("yard");
      const stream = await (await folder.getFileHandle(file as string, { create: true })).createWritable();
      await stream.write(content as string);
      await stream.close();
    },
    [name, text],
  );

async function choose(page: Page, label: string): Promise<void> {
  await page.getByRole("button", { name: "Notebooks …" }).click();
  await page.locator("dialog").getByRole("button", { name: label }).click();
}

describe("folders and files on the disk", () => {
  it("a folder takes the notebook byte for byte, then only what has changed, and asks before it overwrites another's work", async () => {
    const { page, complaints } = await withDisk();
    await choose(page, "Save to a folder …");
    await heard(page, /Saved to the folder yard/);
    await expect.poll(() => onDisk(page, "supply.csv")).toBe(workedFile("supply.csv"));
    await expect.poll(() => onDisk(page, "notebook.json")).toBe(workedFile("notebook.json"));

    await select(page, "Supply", input.cell);
    await typeInto(page, "311");
    await page.keyboard.press("Control+s");
    await heard(page, /1 file of \d+ had changed/);
    await expect.poll(() => onDisk(page, "supply.csv")).toContain(",240,311,420");

    await put(page, "joint.csv", `${workedFile("joint.csv")}Added by somebody else,,,,,,\n`);
    await select(page, "Supply", input.cell);
    await typeInto(page, "312");
    await page.keyboard.press("Control+s");
    await page.getByText(/somebody else has changed joint.csv since/).waitFor();
    await page.getByRole("button", { name: "Leave them as they are" }).click();
    await expect.poll(() => onDisk(page, "supply.csv")).toContain(",240,311,420");
    await expect.poll(() => onDisk(page, "joint.csv")).toContain("Added by somebody else");

    await choose(page, "Open a folder …");
    await heard(page, /is open; Save writes to the folder yard/);
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe("311");
    expect(complaints).toEqual([]);
  });

  it("a folder that holds no notebook, or a damaged one, leaves the open notebook as it is", async () => {
    const { page } = await withDisk();
    await choose(page, "Open a folder …");
    await heard(page, /yard: notebook.json is missing.*unchanged/);
    await put(page, "notebook.json", "{");
    await choose(page, "Open a folder …");
    await heard(page, /yard: .*unchanged/);
    await choose(page, "Save to a folder …");
    await page.getByText(/holds a notebook that cannot be read/).waitFor();
    await page.getByRole("button", { name: "Leave them as they are" }).click();
    await expect.poll(() => onDisk(page, "notebook.json")).toBe("{");
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe(input.text);
  });

  it("a file takes the notebook as a zip; where the browser cannot write, Save hands out a download", async () => {
    const { page } = await withDisk();
    await choose(page, "Save to a file …");
    await heard(page, /Saved to .*\.zip/);
    const bytes = await page.evaluate(async () => {
      const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle("yard");
      const names: string[] = [];
      for await (const name of folder.keys()) names.push(name);
      const [name = ""] = names;
      return [...new Uint8Array(await (await (await folder.getFileHandle(name)).getFile()).arrayBuffer())];
    });
    expect(unpackNotebook(new Uint8Array(bytes)).pages).toHaveLength(worked.pages.length);

    const { page: plain } = await place.desk({}, (context) =>
      context.addInitScript(() => Reflect.deleteProperty(window, "showDirectoryPicker")),
    );
    await plain.getByRole("button", { name: "Notebooks …" }).click();
    await plain.getByText(/writes no files by itself/).waitFor();
    await plain.keyboard.press("Escape");
    const [download] = await Promise.all([
      plain.waitForEvent("download"),
      plain.getByRole("button", { name: "Save", exact: true }).click(),
    ]);
    expect(unpackNotebook(new Uint8Array(await contentOf(download))).pages).toHaveLength(worked.pages.length);
  });
});
