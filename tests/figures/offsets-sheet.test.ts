import { describe, expect, it } from "vitest";
import { isDrawn } from "../../src/figures/figure";
import { offsetPageOf, readOffsets } from "../../src/figures/offset-page";
import { figureOf } from "../../src/figures/pages";
import { templatesOf } from "../../src/figures/template/templates-of";
import { LiveNotebook } from "../../src/notebook/live";
import { pageByName } from "../../src/notebook/model";
import { positionOf, readAddress } from "../../src/notebook/rows";
import { paperOf } from "../../src/paper/paper";
import { openSheets } from "./open-sheets";

/** The formula that the sheet's note gives; x ahead of the axis, z above it, mm. */
const skin = (x: number, z: number): number =>
  360 - 0.445 * x + 0.935 * z + 0.000025 * x * x - 0.00015 * z * z - 0.0006 * x * z;

/** Half of the last digit that the sheet holds; a reading between offsets errs by little more. */
const rounded = 0.05;
const reading = 0.1;

describe("the measured offsets of the cruiser", () => {
  const live = openSheets("three-hulls");
  const page = offsetPageOf(live, "Cruiser");
  if (!page) throw new Error("no sheet of offsets");
  const number = (row: number, column: number): number => {
    const value = live.value({ page: page.id, row, column });
    if (value.kind !== "number") throw new Error(`row ${row + 1}, column ${column + 1}: ${JSON.stringify(value)}`);
    return value.value;
  };
  const rowOf = (start: string): number => page.rows.findIndex(([first]) => first?.startsWith(start));
  const boat = (key: string): number => {
    const value = live.value(positionOf(live.notebook, readAddress(`Boat.${key}@Cruiser`)));
    return value.kind === "number" ? value.value : Number.NaN;
  };
  const R = 201 / 2;
  const around = (angle: number): number => {
    const turn = (angle * Math.PI) / 180;
    return skin(R * Math.sin(turn), R * Math.cos(turn));
  };

  it("follow the formula of the note, rounded to a tenth", () => {
    const read = readOffsets(live, page);
    if (typeof read === "string") throw new Error(read);
    expect([read.stations.length, read.heights.length]).toEqual([7, 7]);
    read.heights.forEach((z, row) => {
      read.stations.forEach((x, column) => {
        const offset = read.offsets[row * read.stations.length + column] ?? Number.NaN;
        expect(Math.abs(offset - skin(x, z))).toBeLessThanOrEqual(rounded + 1e-9);
      });
    });
  });

  it("are the hull of Boat: its five offsets, entrance, flare, and a stem where its rake puts it", () => {
    expect([skin(0, 0), skin(-200, 0), skin(200, 0), skin(0, 100), skin(0, -100)]).toEqual(
      [boat("half_breadth"), boat("off_aft"), boat("off_fore"), boat("off_above"), boat("off_below")].map((offset) =>
        expect.closeTo(offset, 9),
      ),
    );
    expect(number(rowOf("Entrance"), 2)).toBeCloseTo(boat("entrance"), 2);
    expect(number(rowOf("Flare"), 2)).toBeCloseTo(boat("flare"), 2);
    // Where the waterline 200 mm below the axis reaches the centreplane, against the measured stem.
    const stem = boat("behind_stem") - 200 * Math.tan((boat("rake_measured") * Math.PI) / 180);
    expect(Math.abs(skin(stem, -200))).toBeLessThan(12);
  });

  it("give the mean half-length of the closed form: b + R\u00b2/4\u00b7(fxx + fzz)", () => {
    const mean = 360 + ((R * R) / 4) * (2 * 0.000025 - 2 * 0.00015);
    expect(Math.abs(number(rowOf("Mean half length"), 2) - mean)).toBeLessThan(reading);
  });

  it("give half-lengths, stock and back face of the formula", () => {
    for (const [name, angle] of [
      ["Half length at the top", 0],
      ["Half length forward", 90],
      ["Half length at the bottom", 180],
      ["Half length aft", 270],
    ] as const) {
      expect(Math.abs(number(rowOf(name), 2) - around(angle))).toBeLessThan(reading);
    }
    const longest = Math.max(...Array.from({ length: 3600 }, (_, i) => around(i / 10)));
    expect(Math.abs(number(rowOf("Stock"), 2) - 2 * (longest + 30))).toBeLessThan(2 * reading);
    const strips = Array.from({ length: 1800 }, (_, i) => {
      const turn = (i * Math.PI) / 1800;
      const [x, z] = [92.5 * Math.sin(turn), 92.5 * Math.cos(turn)];
      return skin(-x, z) - skin(x, z);
    });
    expect(Math.abs(number(rowOf("Strip"), 2) - Math.max(...strips))).toBeLessThan(2 * reading);
  });

  it("put 24 points of the cut line beside the flat side's, and their difference", () => {
    const first = rowOf("Point 1,");
    const mean = 360 + ((R * R) / 4) * (2 * 0.000025 - 2 * 0.00015);
    for (let i = 0; i < 24; i++) {
      const angle = number(first + i, 1);
      expect(angle).toBe(i * 15);
      expect(Math.abs(number(first + i, 2) - (around(angle) - mean))).toBeLessThan(reading);
      const turn = (angle * Math.PI) / 180;
      // The plane through the offsets of Boat: 178 in 400 along, 187 in 200 up.
      expect(number(first + i, 3)).toBeCloseTo(R * (Math.cos(turn) * 0.935 - Math.sin(turn) * 0.445), 9);
      expect(number(first + i, 4)).toBeCloseTo(number(first + i, 2) - number(first + i, 3), 8);
    }
    // Twist and bend: most of the difference stands between the four offsets that Boat has.
    expect(number(rowOf("Greatest difference"), 2)).toBeGreaterThan(2.9);
  });

  it("shape the cruiser's figures and templates, and no other option's", () => {
    const templates = templatesOf(live, "Cruiser");
    if ("sentence" in templates) throw new Error(templates.sentence);
    const first = rowOf("Point 1,");
    const curve = templates[0]?.lines[0]?.points ?? [];
    for (let i = 0; i < 24; i++) expect(curve[i * 15]?.y).toBeCloseTo(number(first + i, 2), 9);
    const figure = figureOf(live, "cut lines", "Cruiser");
    expect(isDrawn(figure) && figure.says).toContain("errs by up to 3.8 mm");
    expect(templatesOf(live, "Pilot")).toMatchObject([{ note: expect.stringContaining("flat side") }, {}, {}, {}]);
    expect(figureOf(live, "cut lines", "Pilot")).toMatchObject({ sentence: expect.stringContaining("Offsets Pilot") });
  });

  it("stand on paper: the job sheet draws the measured cut line, the templates say which sheet they follow", () => {
    expect(paperOf(live, "job-sheet", "Cruiser", "A4")).toContain("Cut line on the curved side");
    expect(paperOf(live, "job-sheet", "Pilot", "A4")).not.toContain("Cut line on the curved side");
    expect(paperOf(live, "templates", "Cruiser", "A4")).toContain("as measured on sheet &quot;Offsets Cruiser&quot;");
    expect(paperOf(live, "templates", "Pilot", "A4")).not.toContain("as measured on sheet");
  });

  it("are refused where the grid runs off the hull, in figure, template and on paper, with the place", () => {
    const { notebook } = live;
    const pages = notebook.pages.map((one) =>
      one.name === page.name
        ? // No hull at the lowest line ahead of the axis: the stem, or the keel.
          { ...one, rows: one.rows.map((cells, row) => (row < 3 && row > 0 ? cells.with(6, "0").with(7, "0") : cells)) }
        : one,
    );
    const cut = new LiveNotebook({ ...notebook, pages });
    const place = /offsets: 0 at station 100 mm, height -150 mm: the grid runs off the hull under the tunnel there/;
    expect(figureOf(cut, "cut lines", "Cruiser")).toMatchObject({ sentence: expect.stringMatching(place) });
    expect(templatesOf(cut, "Cruiser")).toMatchObject({ sentence: expect.stringMatching(place) });
    expect(paperOf(cut, "templates", "Cruiser", "A4")).toMatch(place);
    expect(pageByName(cut.notebook, "Tunnel")).toBeDefined();
    cut.close();
  });
});
