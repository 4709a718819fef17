import { describe, expect, it } from "vitest";
import { isDrawn } from "../../src/figures/figure";
import { offsetPageOf } from "../../src/figures/offset-page";
import { figureNames, figureOf, figuresOf } from "../../src/figures/pages";
import { templatesOf } from "../../src/figures/template/templates-of";
import { setCells } from "../../src/notebook/edit-cells";
import { addPage, replacePage } from "../../src/notebook/edit-pages";
import { firstOption, optionsOf, pageByName } from "../../src/notebook/model";
import { rowOfKey } from "../../src/notebook/rows";
import { openSheets } from "./open-sheets";

// Drawn anew with `npx vitest run tests/figures -u` after a notebook has changed; look at the files then.
describe.each(["three-hulls", "one-hull-three-layouts"])("the worked notebook %s", (name) => {
  const live = openSheets(name);
  const figures = live.notebook.pages.flatMap((page) =>
    optionsOf(live.notebook).flatMap((option) =>
      figuresOf(live, page.name, option).map((figure, i) => ({ figure, file: `${page.name}-${option}-${i + 1}` })),
    ),
  );

  it("has the figures of eight pages for each option", () => {
    const withFigures = live.notebook.pages.filter((page) => figureNames(live.notebook, page.name).length > 0);
    expect(withFigures).toHaveLength(8);
    const curved = optionsOf(live.notebook).filter((option) => offsetPageOf(live, option));
    expect(curved).toEqual(name === "three-hulls" ? ["Cruiser"] : []);
    expect(figures).toHaveLength(16 * optionsOf(live.notebook).length + curved.length);
  });

  it.each(figures)("draws $file", async ({ figure, file }) => {
    if (!isDrawn(figure)) throw new Error(figure.sentence);
    const place = `snapshots/${name}/${file.toLowerCase().replaceAll(/[^a-z0-9]+/g, "-")}.svg`;
    await expect(`${figure.svg}\n`).toMatchFileSnapshot(place);
  });
});

const places = [-200, -100, 0, 100, 200];

describe("a figure of an open notebook", () => {
  const page = (live: ReturnType<typeof openSheets>, name: string) => {
    const found = pageByName(live.notebook, name);
    if (!found) throw new Error(`no page ${name}`);
    return found;
  };
  const set = (live: ReturnType<typeof openSheets>, name: string, key: string, text: string) => {
    const { id } = page(live, name);
    const row = rowOfKey(page(live, name), key);
    live.apply("edit", (notebook) => setCells(notebook, [{ page: id, row, column: firstOption, text }]));
  };

  it("follows an edit", () => {
    const live = openSheets("three-hulls");
    set(live, "Boat", "half_breadth", "333");
    const figure = figureOf(live, "hull section", "Sloop");
    expect(isDrawn(figure) && figure.says).toContain("half-breadth at the axis 333\u00a0mm");
  });

  it("names the rows that are blank instead of drawing", () => {
    const live = openSheets("three-hulls");
    set(live, "Boat", "half_breadth", "");
    const figure = figureOf(live, "hull section", "Sloop");
    expect(figure).toMatchObject({ sentence: "Not drawn for Sloop. Boat.half_breadth is blank." });
  });

  it("hands on what a named function refuses", () => {
    const live = openSheets("three-hulls");
    set(live, "Boat", "off_aft", "150");
    const figure = figureOf(live, "hole square", "Sloop");
    expect(figure).toMatchObject({ sentence: expect.stringMatching(/entrance: -10.*allowed 0 to 70 deg/) });
  });

  it("draws the cut line on a curved side once a sheet of offsets is there", () => {
    const live = openSheets("three-hulls");
    const before = figuresOf(live, "Tunnel", "Sloop").length;
    live.apply("sheet", (notebook) => addPage(notebook, "Offsets Sloop", "free"));
    const rows = [["", ...places], ...places.map((z) => [z, ...places.map((x) => 300 - 0.3 * x + 0.4 * z)])];
    const { id } = page(live, "Offsets Sloop");
    live.apply("offsets", (notebook) =>
      replacePage(
        notebook,
        id,
        rows.map((row) => row.map(String)),
      ),
    );
    const drawn = figuresOf(live, "Tunnel", "Sloop");
    expect(drawn).toHaveLength(before + 1);
    expect(figuresOf(live, "Tunnel", "Pilot")).toHaveLength(before);
    // A flat side: nothing to err by.
    expect(templatesOf(live, "Sloop")).toMatchObject([{ note: expect.stringContaining("curved side") }, {}, {}, {}]);
    const last = drawn.at(-1);
    expect(last && isDrawn(last) && last.says).toContain("errs by up to 0.0 mm");
  });

  it("names the options that there are", () => {
    const live = openSheets("three-hulls");
    expect(figureOf(live, "hole square", "Barge")).toMatchObject({
      sentence: 'Not drawn. There is no option "Barge" (there are Sloop, Cruiser, Pilot).',
    });
  });
});
