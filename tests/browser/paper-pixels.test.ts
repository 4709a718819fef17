import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { papers } from "../../src/figures/template/paper";
import { layoutNames } from "../../src/paper/layout-names";
import { paperOf } from "../../src/paper/paper";
import { sheetSizes } from "../../src/paper/sheet-size";
import { openSheets } from "../figures/open-sheets";
import { openBrowser } from "./open-browser";
import { inkOf, type Part } from "./pdf-pixels";

const live = openSheets("three-hulls");
const cases = layoutNames.flatMap((layout) => sheetSizes.map((size) => ({ layout, size })));
let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  live.close();
  await browser.close();
});

const pagesOf = (pdf: Uint8Array): number =>
  [
    ...Buffer.from(pdf)
      .toString("latin1")
      .matchAll(/\/Type\s*\/Page\b(?!s)/g),
  ].length;

/** Margins of a sheet, mm. */
const [marginTop, marginRight, marginBottom, marginLeft] = [20, 14, 18, 16];

describe("sheets as pixels", () => {
  it.each(cases.filter(({ layout }) => layout !== "templates"))(
    "$layout on $size: margins are clean, head and foot stand clear of the text, every page has all three",
    async ({ layout, size }) => {
      const { width, height } = papers[size];
      const page = await browser.newPage();
      await page.setContent(paperOf(live, layout, "Cruiser", size));
      const pdf = await page.pdf({ preferCSSPageSize: true });
      await page.close();
      const foot = height - marginBottom;
      const empty: readonly Part[] = [
        [0.5, 0.5, marginLeft - 0.5, height - 0.5],
        [width - marginRight + 0.5, 0.5, width - 0.5, height - 0.5],
        [1, 0.5, width - 1, 8],
        [1, height - 8, width - 1, height - 0.5],
        // Between head and text, and between text and foot.
        [1, marginTop - 2.7, width - 1, marginTop - 0.3],
        [1, foot + 0.6, width - 1, foot + 2.7],
      ];
      const filled: readonly Part[] = [
        [marginLeft, 8, width / 2, marginTop - 2.7],
        [width / 2, 8, width - marginRight, marginTop - 2.7],
        [marginLeft, marginTop, width - marginRight, marginTop + 20],
        [marginLeft, foot + 2.5, width / 2, height - 8],
        [width - 40, foot + 2.5, width - marginRight, height - 8],
      ];
      const heights = Array.from({ length: pagesOf(pdf) }, () => height);
      const pages = await inkOf(browser, pdf, width, heights, () => [...empty, ...filled]);
      expect(pages.map(({ inked }) => inked)).toEqual(
        heights.map(() => [...empty.map(() => false), ...filled.map(() => true)]),
      );
    },
  );

  it.each(cases)("$layout on $size: no words lie over other words", async ({ layout, size }) => {
    const { width } = papers[size];
    const page = await browser.newPage({
      viewport: { width: Math.floor(((width - marginLeft - marginRight) * 96) / 25.4), height: 900 },
    });
    await page.emulateMedia({ media: "print" });
    await page.setContent(paperOf(live, layout, "Cruiser", size));
    const over = await page.evaluate(() => {
      const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      const boxes: { says: string; left: number; right: number; top: number; bottom: number }[] = [];
      for (let node = walker.nextNode(); node; node = walker.nextNode()) {
        const says = node.textContent?.trim() ?? "";
        // Neighbouring sheets of a template show the same places twice, cut by the sheet's edge.
        if (says === "" || node.parentElement?.closest("title, desc, .template svg")) continue;
        const range = document.createRange();
        range.selectNodeContents(node);
        for (const { left, right, top, bottom } of range.getClientRects()) {
          // A line's box is higher than its letters.
          const spare = (bottom - top) * 0.2;
          boxes.push({ says, left: left + 1, right: right - 1, top: top + spare, bottom: bottom - spare });
        }
      }
      return boxes.flatMap((one, i) =>
        boxes
          .slice(i + 1)
          .filter((two) => one.left < two.right && two.left < one.right && one.top < two.bottom && two.top < one.bottom)
          .map((two) => `${one.says} | ${two.says}`),
      );
    });
    await page.close();
    expect(over).toEqual([]);
  });
});

describe("templates as pixels", () => {
  it.each(sheetSizes)("on %s: an inked sheet each, nothing in the printer's rim", async (size) => {
    const html = paperOf(live, "templates", "Pilot", size);
    const isLying = html.includes('class="template lying"') && !html.includes('class="template upright"');
    const { width, height } = isLying ? { width: papers[size].height, height: papers[size].width } : papers[size];
    const page = await browser.newPage();
    await page.setContent(html);
    const pdf = await page.pdf({ preferCSSPageSize: true, pageRanges: "2-4" });
    await page.close();
    const rim: readonly Part[] = [
      [0.5, 0.5, width - 0.5, 4],
      [0.5, height - 4, width - 0.5, height - 0.5],
      [0.5, 0.5, 4, height - 0.5],
      [width - 4, 0.5, width - 0.5, height - 0.5],
    ];
    const filled: readonly Part[] = [
      [10, 10, width - 10, height - 30],
      // Check bar with the job beside it, and the page's number below.
      [8, height - 16, 112, height - 8],
      [114, height - 16, width - 60, height - 8],
      [width - 40, height - 8.2, width - 9, height - 4],
    ];
    const heights = Array.from({ length: pagesOf(pdf) }, () => height);
    expect(heights).toHaveLength(3);
    const pages = await inkOf(browser, pdf, width, heights, () => [...rim, ...filled]);
    expect(pages.map(({ inked }) => inked)).toEqual(
      heights.map(() => [...rim.map(() => false), ...filled.map(() => true)]),
    );
  });
});
