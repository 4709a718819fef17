import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import type { Browser } from "playwright-core";

/** One page of a PDF as it was drawn: where on it there is ink, in mm from its upper left corner. */
export interface InkedPage {
  readonly width: number;
  readonly height: number;
  /** Whether anything is drawn in a part of the page. */
  readonly inked: readonly boolean[];
}

/** Part of a page, mm from its upper left corner. */
export type Part = readonly [left: number, top: number, right: number, bottom: number];

const across = 794;
const wait = 30_000;

/**
 * Draws a PDF with the browser's own viewer, all pages under one another, and looks for ink.
 *
 * @param heights of the pages in mm, all of one width.
 * @param parts looked at on every page.
 * @throws Error when the viewer does not draw that many pages.
 */
export async function inkOf(
  browser: Browser,
  pdf: Uint8Array,
  width: number,
  heights: readonly number[],
  parts: (height: number) => readonly Part[],
): Promise<readonly InkedPage[]> {
  const server = createServer((request, response) => {
    const isPdf = request.url?.startsWith("/sheets.pdf");
    response.setHeader("content-type", isPdf ? "application/pdf" : "text/html");
    const view = '<embed src="/sheets.pdf#toolbar=0&navpanes=0&view=FitH" type="application/pdf">';
    response.end(isPdf ? pdf : `<style>body{margin:0}embed{width:100vw;height:100vh}</style>${view}`);
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const tall = Math.ceil(heights.reduce((sum, height) => sum + (height / width) * across + 16, 60));
  const page = await browser.newPage({ viewport: { width: across, height: tall } });
  try {
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    const end = Date.now() + wait;
    let before = "";
    for (;;) {
      const picture = (await page.screenshot()).toString("base64");
      const sheets = picture === before ? await page.evaluate(paperIn, picture) : [];
      before = picture;
      if (sheets.length === heights.length) {
        return await page.evaluate(inkIn, {
          picture,
          sheets,
          parts: heights.map((height) => parts(height)),
          sizes: heights.map((height) => ({ width, height })),
        });
      }
      if (Date.now() > end) throw new Error(`the viewer shows ${sheets.length} pages for ${heights.length}`);
      await page.waitForTimeout(300);
    }
  } finally {
    await page.close();
    server.close();
  }
}

interface Sheet {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The white sheets on the viewer's dark ground, in pixels. Runs in the browser. */
async function paperIn(picture: string): Promise<Sheet[]> {
  const image = new Image();
  image.src = `data:image/png;base64,${picture}`;
  await image.decode();
  const canvas = new OffscreenCanvas(image.width, image.height);
  const context = canvas.getContext("2d");
  if (!context) return [];
  context.drawImage(image, 0, 0);
  const { data, width, height } = context.getImageData(0, 0, image.width, image.height);
  const isWhite = (x: number, y: number): boolean => (data[(y * width + x) * 4] ?? 0) > 250;
  const middle = Math.floor(height / 2);
  let [left, right] = [0, width - 1];
  // Every row has the same sides; a row in a gap between two sheets is dark from end to end.
  const row = [middle, middle + 40].find((y) => isWhite(20, y)) ?? middle;
  while (left < width && !isWhite(left, row)) left++;
  while (right > 0 && !isWhite(right, row)) right--;
  const found: { left: number; top: number; right: number; bottom: number }[] = [];
  for (let y = 0, top = -1; y <= height; y++) {
    const white = y < height && isWhite(left + 3, y);
    if (white && top < 0) top = y;
    if (!white && top >= 0) {
      if (y - top > 100) found.push({ left, top, right: right + 1, bottom: y });
      top = -1;
    }
  }
  return found;
}

interface Question {
  readonly picture: string;
  readonly sheets: readonly Sheet[];
  readonly parts: readonly (readonly Part[])[];
  readonly sizes: readonly { readonly width: number; readonly height: number }[];
}

/** Whether there is ink in each part of each sheet. Runs in the browser. */
async function inkIn({ picture, sheets, parts, sizes }: Question): Promise<InkedPage[]> {
  const image = new Image();
  image.src = `data:image/png;base64,${picture}`;
  await image.decode();
  const canvas = new OffscreenCanvas(image.width, image.height);
  const context = canvas.getContext("2d");
  if (!context) return [];
  context.drawImage(image, 0, 0);
  return sheets.map((sheet, i) => {
    const { width, height } = sizes[i] ?? { width: 1, height: 1 };
    const [across, down] = [(sheet.right - sheet.left) / width, (sheet.bottom - sheet.top) / height];
    const inked = (parts[i] ?? []).map(([left, top, right, bottom]) => {
      const [x, y] = [Math.ceil(sheet.left + left * across), Math.ceil(sheet.top + top * down)];
      const [w, h] = [Math.floor((right - left) * across) - 1, Math.floor((bottom - top) * down) - 1];
      const { data } = context.getImageData(x, y, Math.max(1, w), Math.max(1, h));
      return data.some((value, at) => at % 4 === 0 && value < 200);
    });
    return { width: (sheet.right - sheet.left) / across, height: (sheet.bottom - sheet.top) / down, inked };
  });
}
