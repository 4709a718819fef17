import { readFileSync } from "node:fs";
import { join } from "node:path";
import { brotliCompressSync, gzipSync } from "node:zlib";
import { median, short, table } from "../measure";
import type { Benched } from "./served";

interface Opened {
  /** Milliseconds from the navigation until the cells take keys. */
  readonly usable: number;
  /** Names of the scripts that were fetched until then. */
  readonly scripts: readonly string[];
}

async function open({ browser }: Benched, address: string): Promise<Opened> {
  // A context of its own has nothing in its cache.
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  const scripts: string[] = [];
  page.on("request", (request) => {
    const { pathname } = new URL(request.url());
    if (pathname.endsWith(".js")) scripts.push(pathname.slice(1));
  });
  await page.addInitScript(() => {
    new MutationObserver((_, observer) => {
      if (!("ready" in document.documentElement.dataset)) return;
      observer.disconnect();
      requestAnimationFrame(() => performance.mark("usable"));
    }).observe(document, { attributes: true, subtree: true, childList: true });
  });
  await page.goto(address);
  await page.waitForFunction(() => performance.getEntriesByName("usable").length > 0);
  const usable = await page.evaluate(() => performance.getEntriesByName("usable")[0]?.startTime ?? Number.NaN);
  await context.close();
  return { usable, scripts };
}

/** First usable grid after navigation against a page with the bare grid alone, and the scripts that it takes. */
export async function openingBench(benched: Benched, rounds: number): Promise<string> {
  const own: Opened[] = [];
  const bare: Opened[] = [];
  for (let round = 0; round <= rounds; round++) {
    const [one, other] = [await open(benched, benched.program), await open(benched, `${benched.pages}bare.html`)];
    // The first round warms the servers up and does not count.
    if (round > 0) own.push(one);
    if (round > 0) bare.push(other);
  }
  const time = (all: readonly Opened[]) => `${short(median(all.map(({ usable }) => usable)))} ms`;
  const times = short(median(own.map(({ usable }, i) => usable / (bare[i]?.usable ?? 1))));
  const files = [...new Set(own[0]?.scripts ?? [])].map((name) => readFileSync(join(benched.built, name)));
  const size = (squeeze: (file: Buffer) => Buffer) => files.reduce((sum, file) => sum + squeeze(file).length, 0);
  return [
    table([
      ["", "first usable grid"],
      ["worked notebook, calculated", time(own)],
      ["page with the bare grid alone", time(bare)],
    ]),
    `Notebook over bare grid: ${times} × (median of ${rounds} rounds, in turns)`,
    `Scripts until then: ${files.length} files, ${(size((file) => file) / 1e6).toFixed(2)} MB, ${(size((file) => gzipSync(file)) / 1e3).toFixed(0)} kB gzip, ${(size((file) => brotliCompressSync(file)) / 1e3).toFixed(0)} kB brotli`,
  ].join("\n");
}
