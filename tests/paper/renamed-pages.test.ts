import { describe, expect, it } from "vitest";
import { isDrawn } from "../../src/figures/figure";
import { figuresOf } from "../../src/figures/pages";
import { addPage, renamePage } from "../../src/notebook/edit-pages";
import { LiveNotebook } from "../../src/notebook/live";
import { type Notebook, optionsOf, pageByName } from "../../src/notebook/model";
import { usualPage } from "../../src/notebook/usual-page";
import { layoutNames } from "../../src/paper/layout-names";
import { paperOf } from "../../src/paper/paper";
import { worked } from "../notebook/worked";

const start = worked("sheets/three-hulls");
const isOffsets = (name: string) => name.startsWith("Offsets");
const other = (name: string) => (isOffsets(name) ? name : `Sheet of ${name}`);

/** All pages under other names, but for the sheet of offsets, which is called by its option. */
const renamed = (): Notebook =>
  start.pages.reduce((notebook, { id, name }) => renamePage(notebook, id, other(name)), start);

describe("pages under other names", { timeout: 60_000 }, () => {
  const [before, after] = [new LiveNotebook(start), new LiveNotebook(renamed())];
  const options = optionsOf(start);

  it("have the same drawings beside them", () => {
    let drawn = 0;
    for (const { name } of start.pages) {
      for (const option of options) {
        const figures = figuresOf(before, name, option);
        expect(figuresOf(after, other(name), option), `${name}, ${option}`).toEqual(figures);
        drawn += figures.filter(isDrawn).length;
      }
    }
    expect(drawn).toBeGreaterThan(30);
  });

  it.each(layoutNames)("give the same sheet on paper: %s", (layout) => {
    for (const option of options)
      expect(paperOf(after, layout, option, "A4")).toBe(paperOf(before, layout, option, "A4"));
  });

  it("are called by the name they have where a row cannot be read", () => {
    const live = new LiveNotebook(renamed());
    live.apply("emptied", (notebook) => ({
      ...notebook,
      pages: notebook.pages.map((page) =>
        page.file === "tunnel.csv"
          ? {
              ...page,
              rows: page.rows.map((row) => (row[1] === "diameter" ? row.map((text, i) => (i > 3 ? "" : text)) : row)),
            }
          : page,
      ),
    }));
    const [figure] = figuresOf(live, "Sheet of Tunnel", options[0] ?? "");
    expect(figure && !isDrawn(figure) && figure.sentence).toContain("Sheet of Tunnel.diameter is blank");
    live.close();
  });

  it("give way to a page that has the name itself", () => {
    const notebook = addPage(renamePage(start, pageByName(start, "Supply")?.id ?? "", "Battery"), "Supply");
    expect(usualPage(notebook.pages, "supply")?.file).toBe("supply-2.csv");
    expect(usualPage(notebook.pages, "Tunnel")?.name).toBe("Tunnel");
    expect(usualPage(notebook.pages, "Hull")).toBeUndefined();
  });
});
