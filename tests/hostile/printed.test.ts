import { afterAll, describe, expect, it } from "vitest";
import { contentOf } from "../../src/engine/content";
import { escaped } from "../../src/figures/draw/mark";
import { isDrawn } from "../../src/figures/figure";
import { figuresOf } from "../../src/figures/pages";
import { templateDxf } from "../../src/figures/template/template-dxf";
import { templateSvg } from "../../src/figures/template/template-svg";
import { templatesOf } from "../../src/figures/template/templates-of";
import { LiveNotebook } from "../../src/notebook/live";
import { isOptionPage, lead, type Notebook, optionsOf } from "../../src/notebook/model";
import { exportRows } from "../../src/notebook/table-out";
import { layoutNames } from "../../src/paper/layout-names";
import { paperOf } from "../../src/paper/paper";
import { openSheets } from "../figures/open-sheets";
import { hostile } from "./strings";

const tag = /<\/?([a-zA-Z][\w:-]*)((?:\s+[\w:-]+(?:="[^"<]*")?)*)\s*\/?>|<!doctype html>/gi;

/** The tags of a document with the names of their attributes; what is left over must hold no mark of a tag. */
function skeleton(markup: string): string[] {
  const found: string[] = [];
  const rest = markup.replace(tag, (whole, name?: string, attributes = "") => {
    found.push(`${name ?? whole} ${[...attributes.matchAll(/\s([\w:-]+)="[^"]*"/g)].map(([, one]) => one).join(" ")}`);
    return "";
  });
  expect(rest.match(/.{0,40}<.{0,40}/)?.[0]).toBe(undefined);
  return found;
}

/** The worked notebook with every word of its pages, and its title, revision and date, put in another's mouth. */
function spokenBy(notebook: Notebook, words: (n: number) => string): Notebook {
  let n = 0;
  const pages = notebook.pages.map((page) =>
    isOptionPage(page)
      ? {
          ...page,
          rows: page.rows.map((cells, row) =>
            row === 0
              ? cells
              : cells.map((text, column) =>
                  (column === lead.quantity || column === lead.basis) && text !== "" ? words(n++) : text,
                ),
          ),
        }
      : page,
  );
  const about = { ...notebook.about, title: words(n++), revision: words(n++), date: words(n++) };
  return { ...notebook, about, pages };
}

const live = openSheets("three-hulls");
const start = live.notebook;
const option = optionsOf(start)[0] ?? "";
afterAll(() => live.close());

const speak = (words: (n: number) => string) => live.follow(spokenBy(start, words));
const printed = () => layoutNames.map((layout) => paperOf(live, layout, option, "A4"));
const drawn = () => start.pages.flatMap(({ name }) => figuresOf(live, name, option)).filter(isDrawn);

describe("at least forty hostile texts", () => {
  it("are at hand", () => {
    expect(new Set(hostile).size).toBeGreaterThanOrEqual(40);
  });

  it("on sheets of paper are text: the same tags stand there as with plain words", () => {
    speak(() => "plain words");
    const plain = printed().map(skeleton);
    for (const by of [0, 19, 37]) {
      speak((n) => hostile[(n + by) % hostile.length] as string);
      expect(printed().map(skeleton)).toEqual(plain);
    }
  });

  it("in title, revision and date of a sheet are text, each of them", () => {
    speak(() => "plain words");
    const plain = skeleton(paperOf(live, "job-sheet", option, "A4"));
    for (const text of hostile) {
      const { about } = live.notebook;
      live.follow({ ...live.notebook, about: { ...about, title: text, revision: text, date: text } });
      expect(skeleton(paperOf(live, "job-sheet", option, "A4")), text).toEqual(plain);
    }
  });

  it("in the name of an option are text on sheets, drawings and templates", () => {
    const named = (name: string): Notebook => ({
      ...start,
      pages: start.pages.map((page) => ({
        ...page,
        rows: page.rows.map((cells, row) =>
          row === 0 && isOptionPage(page) ? cells.with(lead.basis + 1, name) : cells,
        ),
      })),
    });
    const all = (name: string) => {
      live.follow(named(name));
      const templates = templatesOf(live, name);
      if ("sentence" in templates) throw new Error(templates.sentence);
      return {
        sheet: skeleton(paperOf(live, "templates", name, "A4")),
        drawings: start.pages
          .flatMap((page) => figuresOf(live, page.name, name))
          .filter(isDrawn)
          .map(({ svg }) => skeleton(svg)),
        templates: templates.map((template) => skeleton(templateSvg(template))),
        lines: templates.map((template) => templateDxf(template).split(/\r\n|\r|\n/).length),
      };
    };
    const plain = all("Plain");
    expect(plain.drawings.length).toBeGreaterThan(5);
    for (const text of hostile.filter((one) => one.length < 100)) {
      const found = all(text);
      expect(found.templates, text).toEqual(plain.templates);
      expect(found.lines, text).toEqual(plain.lines);
      expect(
        found.sheet.filter((one) => !plain.sheet.includes(one)),
        text,
      ).toEqual([]);
      expect(
        found.drawings.flat().filter((one) => !plain.drawings.flat().includes(one)),
        text,
      ).toEqual([]);
    }
    live.follow(start);
  }, 60_000);

  it("on drawings are text", () => {
    speak(() => "plain words");
    const plain = drawn().map(({ svg }) => skeleton(svg));
    speak((n) => hostile[n % hostile.length] as string);
    expect(drawn().map(({ svg }) => skeleton(svg))).toEqual(plain);
  });

  it("are written so that no mark of a tag, an attribute or an entity is left", () => {
    for (const text of hostile) expect(escaped(text)).not.toMatch(/[<>"]|&(?!(?:amp|lt|gt|quot|#39|#x27);)/);
  });

  it("as values in a table for another program run nowhere: none begins as a formula does", () => {
    const rows = hostile.flatMap((text) => [[text], [`'${text}`]]);
    const sheet = new LiveNotebook({
      about: { version: 1, title: "a", pages: [{ name: "A", file: "a.csv" }] },
      pages: [{ id: "a", name: "A", file: "a.csv", rows }],
    });
    const page = sheet.notebook.pages[0];
    if (!page) throw new Error("no page");
    const cells = exportRows(sheet, page, { holds: "values", decimal: "," }).flat();
    expect(cells.filter((cell) => /^[=+\-@\t\r]/.test(cell))).toEqual([]);
    // What was text says the same when it comes back.
    expect(cells.filter((_, i) => i % 2 === 1).map(contentOf)).toEqual(hostile.map((text) => ({ kind: "text", text })));
    sheet.close();
  });
});
