import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isDrawn } from "../../src/figures/figure";
import { figuresOf } from "../../src/figures/pages";
import { templateSheets } from "../../src/figures/template/template-sheets";
import { wrapTemplate } from "../../src/figures/template/wrap-template";
import { optionsOf } from "../../src/notebook/model";
import { cases, end } from "../figures/cases";
import { openSheets } from "../figures/open-sheets";
import { openBrowser } from "./open-browser";
import { pdfLines } from "./pdf-lines";

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const drawings: readonly string[] = [
  ...Object.values(cases).map((draw) => draw()),
  ...["three-hulls", "one-hull-three-layouts"].flatMap((name) => {
    const live = openSheets(name);
    const options = optionsOf(live.notebook);
    return live.notebook.pages.flatMap((page) => options.flatMap((option) => figuresOf(live, page.name, option)));
  }),
].flatMap((figure) => (isDrawn(figure) ? [figure.svg] : []));

const require = createRequire(import.meta.url);
const font = (weight: number): string => {
  const file = require.resolve(`@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-${weight}-normal.woff2`);
  const data = readFileSync(file).toString("base64");
  return `@font-face{font-family:"IBM Plex Sans";font-weight:${weight};src:url(data:font/woff2;base64,${data})}`;
};
const plex = [400, 600].map(font).join("");

async function pageWith(styles: string, parts: readonly string[]) {
  const page = await browser.newPage({ viewport: { width: 1200, height: 800 } });
  await page.setContent(
    `<!doctype html><html lang="en"><title>Drawings</title><style>:root{color-scheme:light dark}${styles}</style><main>${parts.join("")}</main></html>`,
  );
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  return page;
}

describe("drawings", () => {
  it.each([
    ["the page's own letters", plex],
    ["letters that every machine has", "main{--letters:sans-serif}"],
  ])("keep their words apart and inside, with %s", async (_name, styles) => {
    const page = await pageWith(styles, drawings);
    const faults = await page.evaluate(() =>
      [...document.querySelectorAll("main > svg")].flatMap((svg) => {
        const name = svg.getAttribute("aria-label")?.slice(0, 60);
        const frame = svg.getBoundingClientRect();
        const texts = [...svg.querySelectorAll("text")].map((text) => ({
          says: text.textContent,
          box: text.getBoundingClientRect(),
        }));
        return texts.flatMap(({ says, box }, i) => {
          const outside =
            box.left < frame.left - 0.5 ||
            box.right > frame.right + 0.5 ||
            box.top < frame.top - 0.5 ||
            box.bottom > frame.bottom + 0.5;
          // The boxes of letters hold the room for accents and tails as well, which may meet.
          const covered = texts.slice(0, i).filter((other) => {
            const wide = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
            const high = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
            return wide > 0.5 && high > 3.5;
          });
          return [
            ...(outside ? [`${name}: "${says}" is outside`] : []),
            ...covered.map((other) => `${name}: "${says}" on "${other.says}"`),
          ];
        });
      }),
    );
    expect(faults).toEqual([]);
    await page.close();
  });

  it("have no finding of the accessibility checker, in light and in dark", async () => {
    for (const colorScheme of ["light", "dark"] as const) {
      const page = await pageWith(
        "body{background:light-dark(#fdfbf5,#171c21)}",
        drawings.filter((_, i) => i < 40 && i % 3 === 0),
      );
      await page.emulateMedia({ colorScheme });
      await page.addScriptTag({ path: require.resolve("axe-core/axe.min.js") });
      const findings = await page.evaluate(async () => {
        const { axe } = window as unknown as { axe: { run: () => Promise<{ violations: { id: string }[] }> } };
        return (await axe.run()).violations.map(({ id }) => id);
      });
      // One page of drawings alone has no heading; everything else counts.
      expect(findings.filter((id) => id !== "page-has-heading-one")).toEqual([]);
      await page.close();
    }
  });
});

describe("full-size templates on paper", () => {
  const template = wrapTemplate({ ...end, halfBreadth: 360 }, "port");

  it.each(["A4", "A3", "Letter"] as const)(
    "have a check bar of 100.0 mm on every sheet of a PDF on %s",
    async (paper) => {
      const sheets = templateSheets(template, paper);
      const [, width, height] = /width="([\d.]+mm)" height="([\d.]+mm)"/.exec(sheets[0] ?? "") ?? [];
      const page = await pageWith(
        `@page{size:${width} ${height};margin:0}body{margin:0}svg{display:block;break-after:page}`,
        sheets,
      );
      const lines = pdfLines(await page.pdf({ preferCSSPageSize: true }));
      await page.close();
      const bars = lines
        .filter(({ from, to }) => Math.abs(from[1] - to[1]) < 0.01 && Math.abs(from[0] - 10) < 0.05)
        .map(({ from, to }) => to[0] - from[0])
        .filter((length) => length > 95 && length < 105);
      expect(bars).toHaveLength(sheets.length);
      for (const bar of bars) expect(bar).toBeCloseTo(100, 1);
    },
  );
});
