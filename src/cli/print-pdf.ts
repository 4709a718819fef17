import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { say } from "../words/say";
import { Misuse } from "./output";

const longest = 120_000;

/**
 * Prints a document to a PDF through a browser without a window, with an empty profile of its own.
 *
 * @param file where the PDF goes, absolute.
 * @throws Misuse when the browser prints nothing.
 */
export function printPdf(browser: string, html: string, file: string): void {
  const folder = mkdtempSync(join(tmpdir(), "athwart-print-"));
  try {
    const page = join(folder, "page.html");
    writeFileSync(page, html);
    rmSync(file, { force: true });
    const flags = [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--no-first-run",
      "--disable-background-networking",
      `--user-data-dir=${join(folder, "profile")}`,
      "--no-pdf-header-footer",
      `--print-to-pdf=${file}`,
    ];
    const { error } = spawnSync(browser, [...flags, pathToFileURL(page).href], { stdio: "ignore", timeout: longest });
    if (error !== undefined || !existsSync(file)) {
      throw new Misuse(
        say`${browser} printed no ${file}${error ? ` (${error.message})` : ""}; save it with --html and print that.`,
      );
    }
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
}
