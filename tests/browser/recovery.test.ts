import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { unpackNotebook } from "../../src/notebook/zip";
import { findings } from "./accessibility";
import { contentOf, select, textOf, typeInto, Workplace } from "./desk";
import { cellAt, worked } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

const input = cellAt("Supply", "I_run", "Cruiser");
const fault = (page: Page) => page.locator("dialog.fault");

async function changed(text: string): Promise<Page> {
  const { page } = await place.desk();
  await select(page, "Supply", input.cell);
  await typeInto(page, text);
  return page;
}

async function savedText(page: Page): Promise<string | undefined> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    fault(page).getByRole("button", { name: "Save the notebook to a file" }).click(),
  ]);
  const { pages } = unpackNotebook(new Uint8Array(await contentOf(download)));
  return pages.find(({ name }) => name === "Supply")?.rows[input.row - 1]?.[5];
}

describe("an error that nobody expected", () => {
  it("in a callback: says what happened and that the work is kept, which it is after loading again", async () => {
    const page = await changed("301");
    await page.evaluate(() => {
      setTimeout(() => {
        throw new RangeError("a fault put in by the test");
      });
    });
    await fault(page).waitFor();
    const words = (await fault(page).textContent()) ?? "";
    expect(words).toContain("RangeError: a fault put in by the test");
    expect(words).toContain("kept in this browser");
    expect(await findings(page, false)).toEqual([]);
    await Promise.all([
      page.waitForEvent("load"),
      fault(page).getByRole("button", { name: "Load the page again" }).click(),
    ]);
    await page.waitForSelector("html[data-ready]");
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe("301");
  });

  it("in a promise: offers the notebook as a file, and a report to read that holds nothing of the notebook", async () => {
    const page = await changed("302");
    await page.evaluate('(Promise.reject(new Error("a promise broken by the test")), 0)');
    await fault(page).waitFor();
    await expect.poll(() => savedText(page)).toBe("302");
    await fault(page).locator("summary").click();
    const report = (await fault(page).locator(".report").textContent()) ?? "";
    expect(report).toContain("a promise broken by the test");
    expect(report).toContain(`${worked.pages.length} pages`);
    for (const { name, rows } of worked.pages) {
      expect(report).not.toContain(name);
      for (const cell of rows.flat().filter((text) => text.length > 5)) expect(report).not.toContain(cell);
    }
    expect(report).not.toContain(new URL(place.address).host);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      fault(page).getByRole("button", { name: "Save the report" }).click(),
    ]);
    expect((await contentOf(download)).toString()).toBe(report);
    await fault(page).getByRole("button", { name: "Go on" }).click();
    await select(page, "Supply", input.cell);
    await typeInto(page, "303");
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe("303");
  });

  it("in loading a part of the program: says that the network or a newer version may be the reason", async () => {
    const page = await changed("306");
    await page.route(/\/assets\/options-/, (route) => route.abort());
    await page.getByRole("button", { name: "Options", exact: true }).click();
    await fault(page).waitFor();
    await expect.poll(() => fault(page).textContent()).toMatch(/part of the program could not be loaded.*no network/);
    await expect.poll(() => savedText(page)).toBe("306");
  });

  it("in the drawing of the page, every time: said once, and the notebook is still handed out whole", async () => {
    const page = await changed("304");
    await page.evaluate(() => {
      Object.defineProperty(document, "title", {
        set: () => {
          throw new TypeError("the page cannot be drawn");
        },
      });
    });
    await page.evaluate(() => {
      location.hash = "#Boat!E5";
    });
    await fault(page).waitFor();
    await expect.poll(() => fault(page).textContent()).toContain("TypeError: the page cannot be drawn");
    await expect.poll(() => fault(page).count()).toBe(1);
    await expect.poll(() => savedText(page)).toBe("304");
  });

  it("in what was kept: another notebook is opened, and the damaged one stays in the list", async () => {
    const page = await changed("305");
    await page.waitForFunction(() => document.querySelector(".safety")?.textContent === "Kept in this browser");
    await page.evaluate(
      () =>
        new Promise<void>((done) => {
          const opening = indexedDB.open("athwart");
          opening.onsuccess = () => {
            const change = opening.result.transaction("snapshots", "readwrite");
            const store = change.objectStore("snapshots");
            store.openCursor().onsuccess = ({ target }) => {
              const cursor = (target as IDBRequest<IDBCursorWithValue | null>).result;
              if (!cursor) return;
              cursor.update({ ...cursor.value, state: { about: "{", pages: null } });
              cursor.continue();
            };
            change.oncomplete = () => {
              opening.result.close();
              done();
            };
          };
        }),
    );
    await page.reload();
    await page.waitForSelector("html[data-ready]");
    await fault(page).getByRole("button", { name: "Go on" }).click();
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe(input.text);
    await page.getByRole("button", { name: "Notebooks …" }).click();
    const listed = page.locator("dialog li", { hasText: "Three hulls" });
    await expect.poll(() => listed.count()).toBe(2);
  });
});
