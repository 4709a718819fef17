import { resolve } from "node:path";
import type { Browser, CDPSession, Page } from "playwright-core";
import { build, type InlineConfig, preview } from "vite";
import type { Notebook } from "../../src/notebook/model";
import { packNotebook } from "../../src/notebook/zip";
import { openBrowser } from "../browser/open-browser";
import { median, short, table } from "./measure";
import type { StudyFigures } from "./page/study";

const top = process.cwd();
const folder = resolve(top, "dist/bench-page");
const [rows, options] = [150, 50];

/** A page of the size that the grid is judged by: ten inputs, everything below hangs on them. */
function largeNotebook(): Notebook {
  const letter = (column: number): string =>
    column < 26 ? String.fromCharCode(65 + column) : `${letter(Math.floor(column / 26) - 1)}${letter(column % 26)}`;
  const columns = Array.from({ length: options }, (_, i) => letter(4 + i));
  const lines = Array.from({ length: rows }, (_, i) => {
    const row = i + 2;
    const cells = columns.map((name, k) =>
      i < 10 ? String(row + k / 10) : `=(${name}${row - 1}+${name}2)/2+${name}${2 + (i % 10)}/10`,
    );
    return [`Quantity ${row}`, `k${row}`, "m", "made up", ...cells];
  });
  const header = ["Quantity", "Key", "Unit", "Basis", ...columns.map((name) => `Option ${name}`)];
  const page = { id: "large", name: "Large", file: "large.csv", rows: [header, ...lines] };
  return { about: { version: 1, title: "Large", pages: [{ name: "Large", file: "large.csv" }] }, pages: [page] };
}

async function served(outDir: string): Promise<{ address: string; close: () => Promise<void> }> {
  const server = await preview({
    configFile: resolve(top, "vite.config.ts"),
    logLevel: "error",
    build: { outDir },
    preview: { port: 0, open: false },
  });
  return { address: server.resolvedUrls?.local[0] ?? "", close: () => server.close() };
}

async function buildPages(): Promise<void> {
  const place = resolve(top, "tests/bench/page");
  const pages: InlineConfig = {
    configFile: resolve(top, "vite.config.ts"),
    logLevel: "warn",
    root: place,
    build: {
      outDir: folder,
      rolldownOptions: { input: [resolve(place, "bare.html"), resolve(place, "study.html")] },
    },
  };
  await build(pages);
  await build({ configFile: resolve(top, "vite.config.ts"), logLevel: "warn" });
}

/** In the page: the time from each Enter to the paint that follows the last change among the cells. */
function watchEdits(): void {
  const record: number[] = [];
  Object.assign(window, { edits: record });
  let pressed = 0;
  let painted = 0;
  document.addEventListener(
    "keydown",
    (event) => {
      if (event.key === "Enter") pressed = event.timeStamp;
    },
    true,
  );
  const cells = document.querySelector("#cells") as HTMLElement;
  new MutationObserver(() => {
    if (pressed === 0) return;
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => {
        painted = performance.now();
      };
      channel.port2.postMessage(0);
    });
  }).observe(cells, { subtree: true, childList: true, characterData: true });
  Object.assign(window, {
    takeEdit: () => {
      if (pressed > 0 && painted > pressed) record.push(painted - pressed);
      pressed = 0;
      painted = 0;
    },
  });
}

interface EditTimes {
  readonly painted: readonly number[];
  readonly script: readonly number[];
}

const scriptSeconds = async (session: CDPSession): Promise<number> => {
  const { metrics } = await session.send("Performance.getMetrics");
  return metrics.find(({ name }) => name === "ScriptDuration")?.value ?? 0;
};

/** Types numbers into the selected cell again and again, as a person would, and waits for the screen each time. */
async function edit(page: Page, session: CDPSession, times: number): Promise<number[]> {
  const script: number[] = [];
  for (let i = 0; i < times; i++) {
    await page.keyboard.type(String(20 + (i % 60)));
    const before = await scriptSeconds(session);
    await page.keyboard.press("Enter");
    await page.waitForTimeout(120);
    script.push((await scriptSeconds(session)) - before);
    await page.evaluate(() => (window as unknown as { takeEdit: () => void }).takeEdit());
    await page.keyboard.press("ArrowUp");
    await page.waitForTimeout(30);
  }
  return script.map((seconds) => seconds * 1000);
}

async function editTimes(page: Page, times: number): Promise<EditTimes> {
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable");
  await page.evaluate(watchEdits);
  await edit(page, session, 5);
  await page.evaluate(() => {
    (window as unknown as { edits: number[] }).edits.length = 0;
  });
  const script = await edit(page, session, times);
  const painted = await page.evaluate(() => (window as unknown as { edits: number[] }).edits);
  return { painted, script };
}

const share = (values: readonly number[], part: number): number =>
  [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(part * values.length))] ?? Number.NaN;

async function openLarge(browser: Browser, address: string): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(address);
  await page.waitForSelector("html[data-ready]");
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.click('.files >> text="Open …"')]);
  const zip = packNotebook(largeNotebook());
  await chooser.setFiles({ name: "large.zip", mimeType: "application/zip", buffer: Buffer.from(zip) });
  await page.waitForFunction(() => document.querySelector("h1")?.textContent?.endsWith("Large"));
  await page.evaluate(() => {
    window.location.hash = "#Large!E2";
  });
  await page.waitForFunction(() => document.activeElement?.closest("#cells") !== null);
  await page.waitForTimeout(100);
  return page;
}

async function paintBench(browser: Browser, page: string, bare: string, rounds: number): Promise<string> {
  const own: EditTimes[] = [];
  const plain: EditTimes[] = [];
  for (let round = 0; round < rounds; round++) {
    const large = await openLarge(browser, page);
    own.push(await editTimes(large, 20));
    await large.close();
    const grid = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await grid.goto(`${bare}bare.html`);
    await grid.waitForSelector("html[data-ready]");
    plain.push(await editTimes(grid, 20));
    await grid.close();
  }
  const row = (name: string, times: readonly EditTimes[]) => {
    const of = (key: keyof EditTimes, part: number) => short(median(times.map((one) => share(one[key], part))));
    return [
      name,
      `${of("painted", 0.5)} ms`,
      `${of("painted", 0.95)} ms`,
      `${of("script", 0.5)} ms`,
      `${of("script", 0.95)} ms`,
    ];
  };
  const ratio = (part: number) =>
    short(median(own.map((one, i) => share(one.painted, part) / share(plain[i]?.painted ?? [], part))));
  return [
    table([
      ["", "edit to paint p50", "p95", "script p50", "p95"],
      row(`notebook, ${rows} × ${options}, 140 cells follow`, own),
      row("bare grid of the same size", plain),
    ]),
    `Notebook over bare grid: ${ratio(0.5)} × at p50, ${ratio(0.95)} × at p95 (medians of ${rounds} rounds of 20 edits, in turns)`,
  ].join("\n");
}

async function studyBench(browser: Browser, address: string, rounds: number): Promise<string> {
  const figures: StudyFigures[] = [];
  for (let round = 0; round < rounds; round++) {
    const page = await browser.newPage();
    await page.goto(`${address}study.html`);
    await page.waitForSelector("html[data-ready]");
    await page.focus("#typed");
    const answer = page.evaluate(() => window.studyFigures?.());
    let over = false;
    answer.then(
      () => {
        over = true;
      },
      () => {
        over = true;
      },
    );
    while (!over) {
      await page.keyboard.press("x");
      await page.waitForTimeout(20);
    }
    const found = await answer;
    if (found) figures.push(found);
    await page.close();
  }
  const keys = figures.flatMap((one) => one.keys);
  return [
    `Worker under the page's content policy: calculates by ${figures[0]?.ready.by ?? "nothing"}`,
    `10 000 trials over a whole option: ${short(median(figures.map(({ spread }) => spread)) / 1000)} s (median of ${figures.length})`,
    `Keys pressed meanwhile: ${keys.length}; taken after ${short(share(keys, 0.5))} ms p50, ${short(Math.max(...keys))} ms at most`,
  ].join("\n");
}

/** What only a browser can show: edits on the screen, and a study in its worker beside key presses. */
export async function browserBench(rounds: number): Promise<string> {
  await buildPages();
  const [page, bench] = [await served(resolve(top, "dist/page")), await served(folder)];
  const browser = await openBrowser();
  try {
    return [
      await studyBench(browser, bench.address, rounds),
      await paintBench(browser, page.address, bench.address, rounds),
    ].join("\n\n");
  } finally {
    await browser.close();
    await Promise.all([page.close(), bench.close()]);
  }
}
