import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { printPdf } from "../../src/cli/print-pdf";
import { papers } from "../../src/figures/template/paper";
import { layoutNames, layoutTitles } from "../../src/paper/layout-names";
import { paperOf } from "../../src/paper/paper";
import { sheetSizes, sizesOf } from "../../src/paper/sheet-size";
import { openSheets } from "../figures/open-sheets";
import { contentOf, heard, type OpenDesk, Workplace } from "./desk";
import { findBrowser } from "./find-browser.mjs";
import { openBrowser } from "./open-browser";
import { pdfLines } from "./pdf-lines";

const live = openSheets("three-hulls");
const other = openSheets("one-hull-three-layouts");
const cases = layoutNames.flatMap((layout) => sheetSizes.map((size) => ({ layout, size })));
let browser: Browser;
let place: Workplace;
beforeAll(async () => {
  [browser, place] = await Promise.all([openBrowser(), Workplace.open()]);
});
afterAll(async () => {
  live.close();
  other.close();
  await Promise.all([browser.close(), place.close()]);
});

/** Sizes of a PDF's pages in mm, from their boxes. */
const pagesOf = (pdf: Uint8Array) =>
  [
    ...Buffer.from(pdf)
      .toString("latin1")
      .matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g),
  ].map(([, w, h]) => [Number(w), Number(h)].map((points) => (points * 25.4) / 72));

describe("sheets in a browser", () => {
  it.each(cases)("$layout on $size prints whole pages and cuts nothing off", async ({ layout, size }) => {
    const { width, height } = papers[size];
    for (const [book, option] of [
      [live, "Cruiser"],
      [other, "Larger tunnel"],
    ] as const) {
      // As wide as the paper between its margins of 16 and 14 mm.
      const page = await browser.newPage({ viewport: { width: Math.floor(((width - 30) * 96) / 25.4), height: 900 } });
      await page.emulateMedia({ media: "print" });
      await page.setContent(paperOf(book, layout, option, size));
      const faults = await page.evaluate(() => {
        const right = document.documentElement.clientWidth;
        return [...document.querySelectorAll("body *")].flatMap((element) => {
          if (element.closest(".template svg, figure svg") || element.closest(".template")) return [];
          const box = element.getBoundingClientRect();
          const isCut = element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 0;
          return box.right > right + 1 || box.left < -1 || isCut
            ? [`${element.className || element.tagName}: ${element.textContent?.slice(0, 60)}`]
            : [];
        });
      });
      expect(faults).toEqual([]);
      // What is kept whole must be shorter than a page, or it would be cut by its edge.
      const tallest = await page.evaluate(() =>
        Math.max(
          0,
          ...[...document.querySelectorAll(".hold, .caution, .step, .figures, .keep, tr")].map(
            (element) => element.getBoundingClientRect().height,
          ),
        ),
      );
      expect(tallest).toBeLessThan(((height - 38) * 96) / 25.4);
      const pdf = await page.pdf({ preferCSSPageSize: true });
      await page.close();
      const sizes = pagesOf(pdf);
      expect(sizes.length).toBeGreaterThan(0);
      for (const [w = 0, h = 0] of sizes) {
        expect(Math.abs(Math.min(w, h) - Math.min(width, height))).toBeLessThan(0.3);
        expect(Math.abs(Math.max(w, h) - Math.max(width, height))).toBeLessThan(0.3);
      }
    }
  });

  it.each(sizesOf("templates"))(
    "templates on %s have one page a sheet and a check bar of 100.0 mm on each",
    async (size) => {
      const html = paperOf(live, "templates", "Cruiser", size);
      const sheets = html.split('class="template ').length - 1;
      const page = await browser.newPage();
      await page.setContent(html);
      const pdf = await page.pdf({ preferCSSPageSize: true });
      await page.close();
      expect(sheets).toBeGreaterThan(3);
      expect(pagesOf(pdf)).toHaveLength(sheets + 1);
      const bars = pdfLines(pdf)
        .filter(({ from, to }) => Math.abs(from[1] - to[1]) < 0.01 && Math.abs(from[0] - 10) < 0.05)
        .map(({ from, to }) => to[0] - from[0])
        .filter((length) => length > 95 && length < 105);
      expect(bars).toHaveLength(sheets);
      for (const bar of bars) expect(bar).toBeCloseTo(100, 1);
    },
  );

  it("prints through the terminal's own browser call as well", () => {
    const folder = mkdtempSync(join(tmpdir(), "athwart-paper-"));
    try {
      const file = join(folder, "job.pdf");
      printPdf(findBrowser(), paperOf(live, "job-sheet", "Cruiser", "Letter"), file);
      const pages = pagesOf(readFileSync(file));
      expect(pages.length).toBeGreaterThan(2);
      expect(pages[0]?.[0]).toBeCloseTo(papers.Letter.width, 0);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});

describe("the dialog", () => {
  const open = async (): Promise<OpenDesk> => {
    const desk = await place.desk();
    await desk.page.getByRole("button", { name: "Paper", exact: true }).click();
    return desk;
  };

  it("prints the chosen layout, option and paper through a frame, without a complaint", async () => {
    const { page, complaints, strayed } = await open();
    await page.evaluate(() => {
      // The frame's own print would open the system's window.
      const told = window as unknown as { printed: string[] };
      told.printed = [];
      new MutationObserver(() => {
        const frame = document.querySelector<HTMLIFrameElement>("iframe.to-print");
        if (frame?.contentWindow) {
          frame.addEventListener(
            "load",
            () => {
              const inner = frame.contentWindow as Window;
              inner.print = () => told.printed.push(inner.document.title);
            },
            { capture: true },
          );
        }
      }).observe(document.body, { childList: true });
    });
    for (const [label, choice] of [
      ["Layout", layoutTitles.materials],
      ["Option", "Pilot"],
      ["Paper", "Letter"],
    ] as const) {
      await page.getByRole("combobox", { name: label, exact: true }).selectOption(choice);
    }
    await page.getByRole("button", { name: "Print", exact: true }).click();
    const frame = page.frameLocator("iframe.to-print");
    await expect.poll(() => frame.locator("h1").textContent()).toBe("Materials list");
    await expect.poll(() => frame.locator("title").textContent()).toContain("Pilot");
    await expect.poll(() => frame.locator("style").textContent()).toContain("size: Letter");
    const printed = await page.waitForFunction(() => (window as unknown as { printed: string[] }).printed[0]);
    await expect.poll(() => printed.jsonValue()).toContain("Pilot, materials list");
    // The frame's styles count: its content policy lets them through.
    await expect
      .poll(() => frame.locator("body").evaluate((body) => getComputedStyle(body).backgroundColor))
      .toBe("rgb(255, 255, 255)");
    expect([...complaints, ...strayed]).toEqual([]);
  });

  it("saves HTML, and templates as SVG and DXF", async () => {
    const { page, complaints } = await open();
    const saved = async (button: string) => {
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: button, exact: true }).first().click(),
      ]);
      return { name: download.suggestedFilename(), text: (await contentOf(download)).toString("utf8") };
    };
    const job = await saved("Save as HTML");
    expect(job.name).toBe("job-sheet-sloop.html");
    expect(job.text).toContain("<h1>Job sheet</h1>");
    await heard(page, /saved as job-sheet-sloop\.html/);
    await page.getByRole("combobox", { name: "Layout", exact: true }).selectOption(layoutTitles.templates);
    const svg = await saved("Save SVG: Wrap template, port");
    expect(svg.name).toBe("wrap-template-port-sloop.svg");
    expect(svg.text).toMatch(/^<svg [^>]*width="[\d.]+mm"/);
    const dxf = await saved("Save DXF: Wrap template, port");
    expect(dxf.name).toBe("wrap-template-port-sloop.dxf");
    // Group code 70 after $INSUNITS: 4 is millimetres (DXF reference, HEADER section).
    expect(dxf.text).toMatch(/\$INSUNITS\s+70\s+4\s/);
    expect(complaints).toEqual([]);
  });
});
