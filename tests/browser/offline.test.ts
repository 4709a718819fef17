import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { select, textOf, turnTo, typedText, typeInto, Workplace } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
let folder: string;
const built = resolve(import.meta.dirname, "../../dist/page");
const input = cellAt("Supply", "I_run", "Cruiser");

/** The page as it was built, in a folder of its own, so that a newer version can be put in its place. */
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "athwart-offline-"));
  cpSync(built, folder, { recursive: true });
  place = await Workplace.open(folder);
});
afterAll(async () => {
  await place.close();
  rmSync(folder, { recursive: true, force: true });
});

const withStoring = async () => undefined;
const isStored = (page: Page) =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
const ready = (page: Page) => page.waitForSelector("html[data-ready]");
const kept = (page: Page) =>
  page.waitForFunction(() => document.querySelector(".safety")?.textContent === "Kept in this browser");

/** Changes the page and what stores it, as a newer build does. */
function publishNewer(words: string): void {
  const page = join(folder, "index.html");
  writeFileSync(page, readFileSync(page, "utf8").replace(/<title>[^<]*/, `<title>${words}`));
  const worker = join(folder, "service-worker.js");
  const text = readFileSync(worker, "utf8");
  writeFileSync(worker, text.replace(/("index\.html","revision":")[^"]*/, `$1${words}`));
}

const lookForNewer = (page: Page) =>
  page.evaluate(async () => {
    await (await navigator.serviceWorker.getRegistration())?.update();
  });
const builtTitle = async (context: BrowserContext) => {
  const page = await context.newPage();
  const response = await page.goto(place.address);
  const title = /<title>([^<]*)/.exec((await response?.text()) ?? "")?.[1];
  await page.close();
  return title;
};

describe("the program stored in the browser", () => {
  it("opens, calculates and keeps without a network after it was loaded once, parts not used before too", async () => {
    const { page, complaints, strayed } = await place.desk({}, withStoring);
    await isStored(page);
    await page.context().setOffline(true);
    await page.reload();
    await ready(page);
    await select(page, "Supply", input.cell);
    await typeInto(page, "277");
    await page.getByRole("button", { name: "Functions" }).click();
    await page.locator("dialog").waitFor();
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: "Paper" }).click();
    await page.locator("dialog").waitFor();
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: "Audit" }).click();
    await page.waitForSelector(".audit .sum");
    await turnTo(page, "Tunnel");
    await kept(page);
    await page.reload();
    await ready(page);
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe("277");
    // With every loading the browser looks for a newer version by itself, and says that there is no network.
    const looks = /^Failed to load resource: net::ERR_INTERNET_DISCONNECTED \S*\/service-worker\.js$/;
    expect(complaints.filter((complaint) => !looks.test(complaint))).toEqual([]);
    expect(strayed).toEqual([]);
    await page.context().close();
  });

  it("can be installed: the browser finds nothing missing, and what it says of itself is there", async () => {
    const { page } = await place.desk({}, withStoring);
    const devtools = await page.context().newCDPSession(page);
    const { errors, data } = await devtools.send("Page.getAppManifest");
    expect(errors).toEqual([]);
    const { icons, start_url, display } = JSON.parse(data ?? "{}");
    expect([start_url, display]).toEqual(["./", "standalone"]);
    for (const { src } of icons) expect((await page.request.get(new URL(src, place.address).href)).ok()).toBe(true);
    // Windows without a profile, as tests have them, install nothing; that is the one thing in the way.
    const { installabilityErrors } = await devtools.send("Page.getInstallabilityErrors");
    expect(installabilityErrors.map(({ errorId }) => errorId)).toEqual(["in-incognito"]);
    await page.context().close();
  });

  it("waits with a newer version until it is taken, and loses nothing then", async () => {
    const { page, complaints } = await place.desk({}, withStoring);
    const context = page.context();
    await isStored(page);
    publishNewer("newer");
    await lookForNewer(page);
    const news = page.locator(".alarms [role=status]");
    await expect.poll(() => news.textContent(), { timeout: 20_000 }).toMatch(/newer version of this program is ready/);
    // It waits: a page that is opened now is still the old version.
    expect(await builtTitle(context)).toBe("Athwart");

    await select(page, "Supply", input.cell);
    await page.keyboard.type("278");
    await Promise.all([
      page.waitForEvent("load"),
      news.getByRole("button", { name: "Take the newer version" }).click(),
    ]);
    await ready(page);
    expect(await builtTitle(context)).toBe("newer");
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe("278");
    await page.keyboard.press("Control+z");
    await expect.poll(() => typedText(page)).toBe(input.text);
    expect(complaints).toEqual([]);
    await context.close();
  });

  it("does not let a newer version take the place of work that only this window has", async () => {
    const { page } = await place.desk({}, (context) =>
      context.addInitScript(() => Reflect.deleteProperty(globalThis, "indexedDB")),
    );
    await isStored(page);
    publishNewer("newest");
    await lookForNewer(page);
    await select(page, "Supply", input.cell);
    await typeInto(page, "279");
    const take = page.getByRole("button", { name: "Take the newer version" });
    await take.click();
    await expect
      .poll(() => page.textContent(".said"))
      .toMatch(/has to wait: the latest changes are in this window only/);
    await expect.poll(() => textOf(page, "Supply", input.cell)).toBe("279");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.locator(".alarm[role=alert]").getByRole("button", { name: "Save to a file" }).click(),
    ]);
    await download.path();
    await Promise.all([page.waitForEvent("load"), take.click()]);
    await page.context().close();
  });

  it("tells other windows when one has taken a newer version", async () => {
    const { page } = await place.desk({}, withStoring);
    await isStored(page);
    const second = await page.context().newPage();
    await second.goto(page.url());
    await ready(second);
    publishNewer("again");
    await lookForNewer(second);
    await Promise.all([
      second.waitForEvent("load"),
      second.getByRole("button", { name: "Take the newer version" }).click(),
    ]);
    const news = page.locator(".alarms [role=status]");
    await expect.poll(() => news.textContent()).toMatch(/Another window has taken a newer version/);
    await Promise.all([page.waitForEvent("load"), news.getByRole("button", { name: "Load the page again" }).click()]);
    await page.context().close();
  });
});
