import type { Browser, BrowserContext, BrowserContextOptions, Download, Page } from "playwright-core";
import { openBrowser } from "./open-browser";
import { type ServedPage, servePage } from "./serve-page";

/** A page of the program in a real browser, and what must not have happened in it. */
export interface OpenDesk {
  readonly page: Page;
  /** Errors and warnings of the console, and errors that nobody caught. */
  readonly complaints: readonly string[];
  /** Addresses of requests that left this machine. */
  readonly strayed: readonly string[];
}

/** What is done to a window before the program is opened in it. */
type Prepare = (context: BrowserContext, address: string) => Promise<unknown>;

/** The program as if the browser could not store it: storing fetches every file of it, for every test anew. */
const withoutStoring: Prepare = (context) =>
  context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, "serviceWorker"));

/** The program served and a browser beside it, for the tests of one file. */
export class Workplace {
  private constructor(
    private readonly served: ServedPage,
    private readonly browser: Browser,
  ) {}

  /** @param folder holds the built page, where it is not the usual one. */
  static async open(folder?: string): Promise<Workplace> {
    const [served, browser] = await Promise.all([servePage(folder), openBrowser()]);
    return new Workplace(served, browser);
  }

  /** Where the program is served. */
  get address(): string {
    return this.served.address;
  }

  /** A fresh page, calculated, in a window of its own. */
  async desk(options: BrowserContextOptions = {}, prepare: Prepare = withoutStoring): Promise<OpenDesk> {
    const context = await this.browser.newContext({ viewport: { width: 1440, height: 900 }, ...options });
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    await prepare(context, this.served.address);
    const page = await context.newPage();
    const complaints: string[] = [];
    const strayed: string[] = [];
    page.on("console", (message) => {
      if (message.type() === "error" || message.type() === "warning")
        complaints.push(`${message.text()} ${message.location().url}`.trim());
    });
    page.on("pageerror", (error) => complaints.push(String(error)));
    page.on("request", (request) => {
      const isHere = request.url().startsWith(this.served.address) || /^(data|blob):/.test(request.url());
      if (!isHere) strayed.push(request.url());
    });
    await page.goto(this.served.address);
    await page.waitForSelector("html[data-ready]");
    return { page, complaints, strayed };
  }

  async close(): Promise<void> {
    await this.browser.close();
    await this.served.close();
  }
}

/** Turns to a page of the notebook by its button. */
export async function turnTo(page: Page, name: string): Promise<void> {
  await page.click(`.pages button[data-page="${name}"]`);
  await page.waitForFunction((wanted) => document.querySelector("h1")?.textContent?.endsWith(wanted), name);
}

/** Selects a cell and puts the keyboard into the cells, as a link to it does. */
export async function select(page: Page, name: string, cell: string): Promise<void> {
  const hash = `#${encodeURIComponent(name)}!${cell}`;
  await page.evaluate((wanted) => {
    window.location.hash = "";
    window.location.hash = wanted;
  }, hash);
  await page.waitForFunction(
    ([wanted, at]) =>
      document.querySelector("h1")?.textContent?.endsWith(wanted as string) &&
      document.querySelector(".cell-line .where b")?.textContent === at &&
      document.activeElement?.closest("#cells") !== null,
    [name, cell],
  );
  // The grid takes the keyboard over from the cell to its text field a moment later.
  await page.waitForTimeout(60);
}

/** What was typed in the selected cell. */
export const typedText = (page: Page): Promise<string> => page.inputValue(".cell-line textarea");

/** The value of the selected cell with its unit. */
export const worth = async (page: Page): Promise<string> => (await page.textContent(".cell-line .worth"))?.trim() ?? "";

export const where = async (page: Page): Promise<string> =>
  (await page.textContent(".cell-line .where b"))?.trim() ?? "";

/** What was said last. */
export const said = async (page: Page): Promise<string> =>
  ((await page.textContent(".said")) ?? "").replace(/\s+/g, " ").trim();

/** Waits until something is said that matches. */
export async function heard(page: Page, pattern: RegExp): Promise<string> {
  await page.waitForFunction(
    ([source, flags]) => new RegExp(source as string, flags).test(document.querySelector(".said")?.textContent ?? ""),
    [pattern.source, pattern.flags],
  );
  return said(page);
}

/** What was typed in a cell, looked up by selecting it. */
export async function textOf(page: Page, name: string, cell: string): Promise<string> {
  await select(page, name, cell);
  return typedText(page);
}

/** Types into the selected cell and goes on to the next. */
export async function typeInto(page: Page, text: string): Promise<void> {
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
}

/** The middle of a cell that is in sight, by its row number and column letter. */
export async function middleOf(page: Page, cell: string): Promise<{ x: number; y: number }> {
  const found = await page.evaluate((wanted) => {
    const [, letter, row] = /^([A-Z]+)(\d+)$/.exec(wanted) ?? [];
    const host = document.querySelector("#cells")?.getBoundingClientRect();
    const heads = [...document.querySelectorAll("#cells thead th")].filter(
      (th) => th.querySelector(".letter")?.textContent === letter && th.getBoundingClientRect().width > 0,
    );
    const rows = [...document.querySelectorAll("#cells .ht_clone_inline_start tbody th")].filter(
      (th) => th.textContent === row,
    );
    // Frozen columns are drawn twice; the one on top is what the mouse meets.
    const boxes = heads.flatMap((th) =>
      rows.map((side) => {
        const [a, b] = [th.getBoundingClientRect(), side.getBoundingClientRect()];
        return { x: a.x + a.width / 2, y: b.y + b.height / 2 };
      }),
    );
    return boxes.findLast(({ x, y }) => host && x > host.left && x < host.right && y > host.top && y < host.bottom);
  }, cell);
  if (!found) throw new Error(`${cell} is not in sight.`);
  return found;
}

/** Clicks a cell that is in sight. */
export async function press(page: Page, cell: string): Promise<void> {
  const { x, y } = await middleOf(page, cell);
  await page.mouse.click(x, y);
}

/** The text of a file that the page handed out. */
export async function contentOf(download: Download): Promise<Buffer> {
  const stream = await download.createReadStream();
  const parts: Buffer[] = [];
  for await (const part of stream) parts.push(part as Buffer);
  return Buffer.concat(parts);
}
