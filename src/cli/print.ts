import { writeFileSync } from "node:fs";
import { LiveNotebook } from "../notebook/live";
import { optionsOf } from "../notebook/model";
import { isLayoutName, layoutNames } from "../paper/layout-names";
import { paperOf } from "../paper/paper";
import { sizesOf } from "../paper/sheet-size";
import { say } from "../words/say";
import { findBrowser } from "./find-browser";
import { readFolder } from "./folder";
import { Misuse, type Output } from "./output";
import { printPdf } from "./print-pdf";

export interface PrintWishes {
  readonly layout: string | undefined;
  readonly option: string | undefined;
  readonly paper: string | undefined;
  readonly out: string | undefined;
  readonly html: boolean;
}

/** `Larger tunnel` -> `larger-tunnel`. */
const fileWord = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "") || "option";

/**
 * Prints one layout of a notebook for one option: as PDF through a browser where one is installed, as HTML otherwise.
 *
 * @param find tests put their own in its place.
 * @throws Misuse, Refusal
 */
export function printPaper(output: Output, folder: string, wishes: PrintWishes, find = findBrowser): void {
  const { layout = "", paper = "A4", out } = wishes;
  if (!isLayoutName(layout)) {
    throw new Misuse(say`--layout "${layout}" is not a layout; choose one of ${layoutNames.join(", ")}.`);
  }
  const sizes = sizesOf(layout);
  const size = sizes.find((one) => one === paper);
  if (!size) throw new Misuse(say`--paper "${paper}" is not a paper for ${layout}; choose ${sizes.join(say` or `)}.`);
  const live = new LiveNotebook(readFolder(output.path(folder)));
  try {
    const option = wishes.option ?? "";
    if (option === "") {
      throw new Misuse(say`print needs --option; this notebook has ${optionsOf(live.notebook).join(", ")}.`);
    }
    const html = paperOf(live, layout, option, size);
    const wanted = out === undefined ? undefined : output.path(out);
    const isHtml = wishes.html || (wanted !== undefined && /\.html?$/i.test(wanted));
    const browser = isHtml ? undefined : find();
    const name = wanted ?? output.path(`${layout}-${fileWord(option)}.${browser ? "pdf" : "html"}`);
    if (browser !== undefined) {
      printPdf(browser, html, name);
      output.write(`${say`${name}: printed on ${size}.`}\n`);
      return;
    }
    const file = isHtml ? name : name.replace(/\.pdf$/i, ".html");
    writeFileSync(file, html);
    const why = say`No Chromium or Chrome was found, so this is HTML and not PDF: open it in a browser and print it there.`;
    output.write(`${say`${file}: written for ${size}.`} ${isHtml ? "" : why}`.trimEnd());
    output.write("\n");
  } finally {
    live.close();
  }
}
