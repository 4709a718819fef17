import { resolve } from "node:path";
import type { Browser } from "playwright-core";
import { build, preview } from "vite";
import { openBrowser } from "../../browser/open-browser";

const top = process.cwd();
const configFile = resolve(top, "vite.config.ts");

/** The program and the bench's own pages, built and served, and a browser beside them. */
export interface Benched {
  readonly browser: Browser;
  /** Address of the program. */
  readonly program: string;
  /** Address of the bench's pages: `bare.html`, `study.html`. */
  readonly pages: string;
  /** Folder of the built program. */
  readonly built: string;
}

/** A part of the bench that needs a browser. */
export type BrowserBench = (benched: Benched, rounds: number) => Promise<string>;

async function serve(outDir: string): Promise<{ address: string; close: () => Promise<void> }> {
  const server = await preview({
    configFile,
    logLevel: "error",
    build: { outDir },
    preview: { port: 0, open: false },
  });
  return { address: server.resolvedUrls?.local[0] ?? "", close: () => server.close() };
}

/** Builds both, opens a browser, and puts everything away at the end. */
export async function inBrowser<T>(use: (benched: Benched) => Promise<T>): Promise<T> {
  const place = resolve(top, "tests/bench/page");
  const [built, ownBuilt] = [resolve(top, "dist/page"), resolve(top, "dist/bench-page")];
  const input = [resolve(place, "bare.html"), resolve(place, "study.html")];
  await build({
    configFile,
    logLevel: "error",
    root: place,
    build: { outDir: ownBuilt, rolldownOptions: { input } },
  });
  await build({ configFile, logLevel: "error" });
  const [program, own] = [await serve(built), await serve(ownBuilt)];
  const browser = await openBrowser();
  try {
    return await use({ browser, program: program.address, pages: own.address, built });
  } finally {
    await browser.close();
    await Promise.all([program.close(), own.close()]);
  }
}
