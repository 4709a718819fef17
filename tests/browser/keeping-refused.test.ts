import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { unpackNotebook } from "../../src/notebook/zip";
import { contentOf, select, textOf, typeInto, Workplace } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

const input = cellAt("Supply", "I_run", "Cruiser");
const alarm = (page: Page) => page.locator(".alarm[role=alert]");
const kept = (page: Page) =>
  page.waitForFunction(() => document.querySelector(".safety")?.textContent === "Kept in this browser");

/** Types a current and waits until the page says why it is not kept. */
async function typeUnkept(page: Page, text: string, sentence: RegExp): Promise<void> {
  await select(page, "Supply", input.cell);
  await typeInto(page, text);
  await expect.poll(() => alarm(page).textContent()).toMatch(sentence);
  await expect.poll(() => textOf(page, "Supply", input.cell)).toBe(text);
  await expect.poll(() => page.textContent(".safety")).toBe("In this window only");
}

/** What is typed in the cell in the file that the alarm's button hands out. */
async function savedText(page: Page): Promise<string | undefined> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    alarm(page).getByRole("button", { name: "Save to a file" }).click(),
  ]);
  const { pages } = unpackNotebook(new Uint8Array(await contentOf(download)));
  return pages.find(({ name }) => name === "Supply")?.rows[input.row - 1]?.[5];
}

/** Another page of the same origin, which is not the program and can get into its way. */
async function stranger(context: BrowserContext, address: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${address}icon.svg`);
  return page;
}

/** Writes into another database of the same origin until the browser takes no more, not even ten bytes. */
async function fillUp(): Promise<void> {
  const database = await new Promise<IDBDatabase>((done) => {
    const opening = indexedDB.open("filler", 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore("all", { autoIncrement: true });
    opening.onsuccess = () => done(opening.result);
  });
  const put = (size: number) =>
    new Promise<boolean>((done) => {
      const change = database.transaction("all", "readwrite");
      change.oncomplete = () => done(true);
      change.onabort = () => done(false);
      change.objectStore("all").add(crypto.getRandomValues(new Uint8Array(Math.min(size, 65_536))));
    });
  for (let size = 65_536; size >= 10; size /= 2) while (await put(size));
  database.close();
}

describe("a database that does not keep the work", () => {
  it("is full: said at once with the way to a file, and kept as soon as there is room", async () => {
    const { origin } = new URL(place.address);
    let other: Page | undefined;
    const { page, complaints } = await place.desk({}, async (context, address) => {
      other = await stranger(context, address);
      const devtools = await context.newCDPSession(other);
      await devtools.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 3_000_000 });
    });
    await kept(page);
    await other?.evaluate(fillUp);
    await typeUnkept(page, "275", /no room left.*save to a file/);
    await typeUnkept(page, "276", /no room left/);
    await expect.poll(() => savedText(page)).toBe("276");
    const devtools = await page.context().newCDPSession(page);
    await devtools.send("Storage.overrideQuotaForOrigin", { origin });
    await alarm(page).getByRole("button", { name: "Try again" }).click();
    await kept(page);
    await expect.poll(() => alarm(page).count()).toBe(0);
    await page.reload();
    await page.waitForSelector("html[data-ready]");
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe("276");
    expect(complaints).toEqual([]);
  });

  it("is refused by the browser: the notebook opens all the same, calculates, and goes to a file", async () => {
    const { page, complaints } = await place.desk({}, (context) =>
      context.addInitScript(() => {
        IDBFactory.prototype.open = () => {
          throw new DOMException("The user denied permission to access the database.", "SecurityError");
        };
      }),
    );
    await typeUnkept(page, "281", /does not open its database.*denied permission.*save to a file/);
    await expect.poll(() => savedText(page)).toBe("281");
    expect(complaints).toEqual([]);
  });

  it("is not there at all, as in some private windows", async () => {
    const { page } = await place.desk({}, (context) =>
      context.addInitScript(() => Reflect.deleteProperty(globalThis, "indexedDB")),
    );
    await typeUnkept(page, "282", /keeps no notebooks here.*save to a file/);
    await expect.poll(() => savedText(page)).toBe("282");
  });

  it("is held by another window: said after some seconds, and kept once that window lets go", async () => {
    let other: Page | undefined;
    const { page } = await place.desk({}, async (context, address) => {
      other = await stranger(context, address);
      // An upgrade that does not come to its end, as when a window hangs in the middle of it.
      await other.evaluate(
        () =>
          new Promise<void>((started) => {
            const opening = indexedDB.open("athwart", 1);
            opening.onupgradeneeded = () => {
              const store = opening.result.createObjectStore("held");
              const again = () => {
                store.get(0).onsuccess = again;
              };
              again();
              started();
            };
          }),
      );
    });
    await typeUnkept(page, "283", /does not answer.*close other windows.*save to a file/);
    await other?.close();
    await alarm(page).getByRole("button", { name: "Try again" }).click();
    await kept(page);
    await page.reload();
    await page.waitForSelector("html[data-ready]");
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe("283");
  });

  it("was written by a newer version of the program: refused with a sentence, and left as it is", async () => {
    let other: Page | undefined;
    const newerData = (page: Page | undefined) =>
      page?.evaluate(
        () =>
          new Promise((done, fail) => {
            const opening = indexedDB.open("athwart", 99);
            opening.onupgradeneeded = () => opening.result.createObjectStore("later").put("kept by the newer one", 1);
            opening.onerror = () => fail(opening.error);
            opening.onsuccess = () => {
              const reading = opening.result.transaction("later").objectStore("later").getAll();
              reading.onsuccess = () => {
                opening.result.close();
                done(reading.result);
              };
            };
          }),
      );
    const { page } = await place.desk({}, async (context, address) => {
      other = await stranger(context, address);
      await newerData(other);
    });
    await typeUnkept(page, "284", /newer version of this program.*save to a file/);
    await expect.poll(() => savedText(page)).toBe("284");
    expect(await newerData(other)).toEqual(["kept by the newer one"]);
  });

  it("is wanted by a newer version in another window: it lets go and says so", async () => {
    const { page } = await place.desk();
    await kept(page);
    const other = await stranger(page.context(), place.address);
    const isOpened = other.evaluate(
      () =>
        new Promise<boolean>((done) => {
          const opening = indexedDB.open("athwart", 2);
          opening.onsuccess = () => {
            opening.result.close();
            done(true);
          };
          opening.onblocked = () => done(false);
        }),
    );
    expect(await isOpened).toBe(true);
    await typeUnkept(page, "285", /has closed its database.*save to a file/);
    await expect.poll(() => savedText(page)).toBe("285");
  });
});

describe("a second window on the same notebook", () => {
  it("reads, is told what was changed in the first one, and takes it over knowingly", async () => {
    const { page } = await place.desk();
    await kept(page);
    const second = await page.context().newPage();
    await second.goto(page.url());
    await second.waitForSelector("html[data-ready]");
    await expect.poll(() => alarm(second).textContent()).toMatch(/open in another window/);
    await select(page, "Supply", input.cell);
    await typeInto(page, "291");
    await kept(page);
    await alarm(second).getByRole("button", { name: "Show what was changed" }).click();
    await expect.poll(() => textOf(second, "Supply", input.cell)).toBe("291");
    await alarm(second).getByRole("button", { name: "Take it over" }).click();
    await kept(second);
    await expect.poll(() => alarm(page).textContent()).toMatch(/taken this notebook over.*save to a file/);
    await select(second, "Supply", input.cell);
    await typeInto(second, "292");
    await kept(second);
    await select(page, "Supply", input.cell);
    await typeInto(page, "293");
    await expect.poll(() => savedText(page)).toBe("293");
    await second.reload();
    await second.waitForSelector("html[data-ready]");
    await expect.poll(() => textOf(second, "Supply", input.cell)).toBe("292");
  });
});
