import { afterAll, describe, expect, it } from "vitest";
import { LiveNotebook } from "../../src/notebook/live";
import { firstOption, lead, optionsOf, pageByName } from "../../src/notebook/model";
import { positionOf } from "../../src/notebook/rows";
import { layoutNames } from "../../src/paper/layout-names";
import { paperOf } from "../../src/paper/paper";
import { sheetSizes } from "../../src/paper/sheet-size";
import { openSheets } from "../figures/open-sheets";

const books = ["three-hulls", "one-hull-three-layouts"].map((name) => ({ name, live: openSheets(name) }));
const every = books.flatMap(({ name, live }) =>
  optionsOf(live.notebook).flatMap((option) => layoutNames.map((layout) => ({ name, live, option, layout }))),
);
afterAll(() => {
  for (const { live } of books) live.close();
});

/** Markup as a reader sees it. */
const read = (html: string): string =>
  html
    .replace(/<style>[\s\S]*?<\/style>/g, "")
    .replace(/<[^>]*>/g, " ")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&")
    .replace(/\s+/g, " ");

/** The words of a style sheet's strings, with its escapes read as CSS Syntax Module Level 3, 4.3.7 says. */
const styleStrings = (html: string): string =>
  html.replace(/\\([0-9a-f]{1,6}) /g, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16)));

const rowsOf = (live: LiveNotebook, page: string, option: string) => {
  const { rows = [], id = "" } = pageByName(live.notebook, page) ?? {};
  const column = firstOption + optionsOf(live.notebook).indexOf(option);
  return rows
    .map((cells, row) => ({ cells, value: live.value({ page: id, row, column }) }))
    .filter(({ cells }, row) => row > 0 && cells[lead.key] !== "");
};

describe("every sheet", () => {
  it.each(every)("$name, $option: $layout carries job, option, revision, date and page number", (one) => {
    const { title, revision, date } = one.live.notebook.about;
    for (const size of sheetSizes) {
      const html = paperOf(one.live, one.layout, one.option, size);
      const style = styleStrings(html.slice(html.indexOf("@page"), html.indexOf("</style>")));
      expect(style).toContain(`size: ${size};`);
      expect(style).toContain(`content: "${title}: ${one.option}"`);
      expect(style).toContain(`revision ${revision}, ${date}"`);
      expect(style).toContain('content: "page " counter(page) " of " counter(pages)');
      expect(style).toContain("Planning aid.");
      expect(html).toContain("<h1>");
      expect(html).not.toMatch(/<script|<link|<img|https?:\/\/(?!www\.w3\.org\/2000\/svg)/);
      expect(read(html)).not.toMatch(/undefined|NaN|\[object/);
      expect(read(html)).not.toContain("This sheet is not complete");
    }
  });

  it("refuses an option that is not there", () => {
    const { live } = books[0] as (typeof books)[0];
    expect(() => paperOf(live, "job-sheet", "Ketch", "A4")).toThrow(
      'There is no option "Ketch" (there are Sloop, Cruiser, Pilot).',
    );
  });
});

describe("job sheet", () => {
  const jobs = every.filter(({ layout }) => layout === "job-sheet");

  it.each(jobs)("$name, $option: holds every row, its words, and boxes at every hold and sign-off", (one) => {
    const html = paperOf(one.live, "job-sheet", one.option, "A4");
    const words = read(html);
    const rows = rowsOf(one.live, "Job sheet", one.option);
    for (const { cells, value } of rows) {
      expect(html.split(`data-key="${cells[lead.key]}"`)).toHaveLength(2);
      if (value.kind === "text") expect(words).toContain(value.text.replace(/\s+/g, " "));
    }
    const starts = (start: string) => rows.filter(({ cells }) => cells[lead.quantity]?.startsWith(start)).length;
    const steps = rows.filter(({ cells }) => /^\d+ /.test(cells[lead.quantity] ?? "")).length;
    expect(steps).toBeGreaterThan(20);
    expect(html.split('class="tick"')).toHaveLength(steps + 1);
    expect(html.split('class="hold"')).toHaveLength(starts("HOLD") + 1);
    expect(html.split('class="caution"')).toHaveLength(starts("CAUTION") + 1);
    expect(html.split('class="pen"')).toHaveLength(3 * starts("Sign: ") + 1);
    expect(html.split("<svg")).toHaveLength(9);
  });

  it("says STOP in a heavy frame where a check falls short, and go where all hold", () => {
    const { live } = books[0] as (typeof books)[0];
    expect(paperOf(live, "job-sheet", "Cruiser", "A4")).toMatch(/class="stop" data-key="go">STOP: /);
    expect(paperOf(live, "job-sheet", "Sloop", "A4")).toContain('class="go" data-key="go">go: all checks hold');
  });
});

describe("estimate for the customer", () => {
  it.each(every.filter(({ layout }) => layout === "estimate"))("$name, $option: its lines add up", (one) => {
    const html = paperOf(one.live, "estimate", one.option, "A4");
    const amounts = [...html.matchAll(/<td class="number">([^<]*)<\/td>/g)].map(([, text = ""]) =>
      Math.round(Number(text.replaceAll("\u202f", "").replace("\u2212", "-")) * 100),
    );
    const [before = 0, tax = 0, total = 0, limit] = amounts.slice(6);
    const number = (key: string) => {
      const value = one.live.value(positionOf(one.live.notebook, { page: "Estimate", key, option: one.option }));
      return value.kind === "number" ? Math.round(value.value * 100) : Number.NaN;
    };
    expect(amounts.slice(0, 6).reduce((sum, line) => sum + line, 0)).toBe(before);
    expect(before + tax).toBe(total);
    expect([before, total, limit]).toEqual([number("price_80"), number("price_taxed"), number("limit")]);
    // The contingency takes up rounding only: its own amount is the notebook's contingency with the mark-up.
    const markup = 1 + number("markup") / 100;
    expect(Math.abs((amounts[5] ?? 0) - number("contingency") * markup)).toBeLessThan(5);
  });

  it("shows the customer no hour, cost or mark-up of the yard", () => {
    const { live } = books[0] as (typeof books)[0];
    expect(read(paperOf(live, "estimate", "Cruiser", "A4"))).not.toMatch(/mark-up|one hour of labour|PERT|P50/i);
  });
});

describe("records", () => {
  it.each([
    ["hand-over", "Hand-over"],
    ["service", "Service"],
  ] as const)("%s holds every row, with a box for every reading that is still empty", (layout, page) => {
    for (const { live } of books) {
      for (const option of optionsOf(live.notebook)) {
        const html = paperOf(live, layout, option, "Letter");
        const rows = rowsOf(live, page, option);
        for (const { cells } of rows) expect(html).toContain(`data-key="${cells[lead.key]}"`);
        const empty = rows.filter(({ value }) => value.kind === "blank").length;
        expect(html.split('class="pen"').length - 1).toBeGreaterThanOrEqual(empty);
      }
    }
  });

  it("never shows a check without a reading as passed", () => {
    const { live } = books[0] as (typeof books)[0];
    const html = paperOf(live, "hand-over", "Cruiser", "A4");
    expect(html).toMatch(/data-key="thin_ok"[\s\S]*?<td>open: not measured yet<\/td>/);
  });
});

describe("words of the notebook", { timeout: 60_000 }, () => {
  const markup = '</style><script>alert("x")</script><b>&';
  /** Written past the checks of what may be typed, as a file can be. */
  const typed = (live: LiveNotebook) => {
    const { about, pages } = live.notebook;
    const keys = ["hold_wash", "cured", "oil", "scope_haul", "insulation_least"];
    const changed = pages.map((page) => ({
      ...page,
      rows: page.rows.map((cells) =>
        keys.includes(cells[lead.key] ?? "")
          ? cells.map((text, column) => (column === lead.key || column === lead.unit ? text : markup))
          : cells,
      ),
    }));
    return new LiveNotebook({ pages: changed, about: { ...about, title: markup, revision: markup, date: markup } });
  };

  it.each(layoutNames)("stay words on the %s", (layout) => {
    const live = typed((books[0] as (typeof books)[0]).live);
    const html = paperOf(live, layout, "Sloop", "A4");
    live.close();
    expect(html).not.toMatch(/<script|<b>&(?!lt;)/);
    expect(html.split("</style>")).toHaveLength(2);
    expect(read(html)).toContain(markup);
  });
});

describe("a notebook without the rows", { timeout: 60_000 }, () => {
  it.each(layoutNames)("still gives the %s, with a sentence that names what is missing", (layout) => {
    const { live } = books[0] as (typeof books)[0];
    const { notebook } = live;
    const bare = new LiveNotebook({ ...notebook, pages: notebook.pages.filter(({ name }) => name === "Boat") });
    const words = read(paperOf(bare, layout, "Sloop", "A4"));
    bare.close();
    expect(words).toMatch(/This sheet is not complete: the notebook has no page [A-Z]/);
    if (layout === "templates") expect(words).toContain("there is no row Tunnel.outside");
    if (layout === "estimate") expect(words).toContain("No price");
  });

  it("names a single row that is missing", () => {
    const { live } = books[0] as (typeof books)[0];
    const { notebook } = live;
    const pages = notebook.pages.map((page) =>
      page.name === "Joint" ? { ...page, rows: page.rows.filter((cells) => cells[lead.key] !== "filler") } : page,
    );
    const less = new LiveNotebook({ ...notebook, pages });
    const words = read(paperOf(less, "materials", "Sloop", "A4"));
    less.close();
    expect(words).toContain("the notebook has no Joint.filler; add what is missing");
  });
});
