import DxfParser from "dxf-parser";
import { describe, expect, it } from "vitest";
import { holePoint } from "../../src/figures/hole-square";
import { holeTemplate } from "../../src/figures/template/hole-template";
import { overlap, papers } from "../../src/figures/template/paper";
import type { Template } from "../../src/figures/template/template";
import { templateDxf } from "../../src/figures/template/template-dxf";
import { templateSheets } from "../../src/figures/template/template-sheets";
import { templateSvg } from "../../src/figures/template/template-svg";
import { templatesOf } from "../../src/figures/template/templates-of";
import { tile } from "../../src/figures/template/tiles";
import { curvedWrapTemplate, wrapTemplate } from "../../src/figures/template/wrap-template";
import { callFunction, inOrder } from "../../src/formula/call";
import { hullHalfLength } from "../../src/functions/hull/half-length";
import { hullMeanLength } from "../../src/functions/hull/mean-length";
import { tunnelTrim } from "../../src/functions/tunnel/trim";
import { curved, end } from "./cases";
import { openSheets } from "./open-sheets";

const wrapInput = { ...end, halfBreadth: 360 };
const port = wrapTemplate(wrapInput, "port");
const starboard = wrapTemplate(wrapInput, "starboard");
const all: readonly (readonly [string, Template])[] = [
  ["wrap-port", port],
  ["wrap-starboard", starboard],
  ["hole-port", holeTemplate(end, "port")],
  ["hole-starboard", holeTemplate(end, "starboard")],
];
const paperNames = Object.keys(papers) as (keyof typeof papers)[];
const trimAt = (angle: number): number =>
  Number(callFunction(tunnelTrim, [end.outside, end.entrance, end.flare, angle]));
const girth = Math.PI * end.outside;

/** Points of a path in mm, as a file holds them. */
const pointsOf = (d: string): { x: number; y: number }[] =>
  [...d.matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));

describe("the wrap template", () => {
  const curve = port.lines[0]?.points ?? [];

  it("is cut along TUNNEL.TRIM, degree by degree", () => {
    expect(curve).toHaveLength(361);
    curve.forEach(({ x, y }, angle) => {
      expect(y).toBeCloseTo(trimAt(angle), 9);
      expect(x).toBeCloseTo((girth * angle) / 360, 9);
    });
  });

  it("is as long as the tube's outside is round: pi times the outside diameter", () => {
    expect(port.right - port.left).toBeCloseTo(Math.PI * 201, 9);
  });

  it("marks every 15 degrees and names top, forward, bottom and aft", () => {
    const says = port.texts.map((text) => text.says);
    expect(says.filter((text) => text.endsWith("°"))).toEqual(Array.from({ length: 25 }, (_, i) => `${i * 15}°`));
    for (const name of ["top", "forward", "bottom", "aft"]) expect(says).toContain(name);
    const upright = port.lines.filter(({ points }) => points.length === 2 && points[0]?.x === points[1]?.x);
    expect(upright.map(({ points }) => points[0]?.x)).toEqual(
      Array.from({ length: 23 }, (_, i) => expect.closeTo((girth * (i + 1)) / 24, 9)),
    );
  });

  it("has forward right of the top to port and left of it to starboard, as its mirror image", () => {
    const forward = (template: Template) => template.texts.find(({ says }) => says === "forward")?.at.x ?? 0;
    const top = (template: Template) => template.texts.find(({ says }) => says === "top")?.at.x ?? 0;
    expect(forward(port)).toBeGreaterThan(top(port));
    expect(forward(starboard)).toBeLessThan(top(starboard));
    expect(starboard.lines.map(({ points }) => points)).toEqual(
      port.lines.map(({ points }) => points.map(({ x, y }) => ({ x: -x, y }))),
    );
  });
});

describe("the wrap template of a curved side", () => {
  it("is cut along HULL.HALFLENGTH against its mean, and says where the mean lies", () => {
    const template = curvedWrapTemplate(curved, "port");
    const curve = template.lines[0]?.points ?? [];
    expect(curve).toHaveLength(361);
    const { outside, ...grid } = curved;
    const mean = callFunction(hullMeanLength, inOrder(hullMeanLength, { ...grid, diameter: outside }));
    for (const angle of [0, 90, 180, 275]) {
      const l = callFunction(hullHalfLength, inOrder(hullHalfLength, { ...grid, diameter: outside, angle }));
      expect(curve[angle]?.y).toBeCloseTo(Number(l) - Number(mean), 9);
    }
    expect(template.right).toBeCloseTo(Math.PI * 185, 9);
    expect(template.says).toContain(`${Math.round(Number(mean))}\u00a0mm from the centreplane`);
  });
});

describe("the hole outline", () => {
  it("is the ellipse seen square, forward right to starboard", () => {
    const outline = holeTemplate(end, "starboard").lines[0];
    expect(outline?.closed).toBe(true);
    outline?.points.forEach((point, angle) => {
      expect(point).toEqual(holePoint(end, angle));
    });
  });
});

describe.each(all)("the files of %s", (name, template) => {
  it("are drawn as reviewed", async () => {
    await expect(`${templateSvg(template)}\n`).toMatchFileSnapshot(`snapshots/templates/${name}.svg`);
    await expect(templateDxf(template)).toMatchFileSnapshot(`snapshots/templates/${name}.dxf`);
    const sheets = templateSheets(template, "A4");
    for (const [i, sheet] of sheets.entries()) {
      await expect(`${sheet}\n`).toMatchFileSnapshot(`snapshots/templates/${name}-a4-${i + 1}.svg`);
    }
  });

  it("are in mm: one unit of the drawing is one mm of its size", () => {
    for (const svg of [templateSvg(template), ...paperNames.flatMap((paper) => templateSheets(template, paper))]) {
      const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? [];
      expect(svg).toContain(`viewBox="0 0 ${width} ${height}"`);
    }
  });

  it("carry a check bar of 100.0 mm on every sheet", () => {
    for (const svg of [templateSvg(template), ...paperNames.flatMap((paper) => templateSheets(template, paper))]) {
      const bars = [...svg.matchAll(/<path d="M([\d.]+) [^"]*H([\d.]+)M[^"]*"[^>]* data-bar/g)];
      expect(bars).toHaveLength(1);
      expect(Number(bars[0]?.[2]) - Number(bars[0]?.[1])).toBeCloseTo(100, 9);
    }
  });

  it("hold the cut line in SVG to a thousandth of a mm", () => {
    const [, d = ""] = /<path d="([^"]+)"[^>]*data-purpose="cut"/.exec(templateSvg(template)) ?? [];
    const drawn = pointsOf(d);
    const points = template.lines[0]?.points ?? [];
    expect(drawn).toHaveLength(points.length);
    drawn.forEach(({ x, y }, i) => {
      expect(Math.abs(x - 10 - ((points[i]?.x ?? 0) - template.left))).toBeLessThanOrEqual(0.00051);
      expect(Math.abs(y - 10 - (template.top - (points[i]?.y ?? 0)))).toBeLessThanOrEqual(0.00051);
    });
  });

  it("hold the same lines in DXF, in mm, as another program reads it", () => {
    const drawing = new DxfParser().parseSync(templateDxf(template));
    expect(drawing?.header.$INSUNITS).toBe(4);
    const lines = (drawing?.entities ?? []).filter(({ type }) => type === "LWPOLYLINE") as unknown as {
      layer: string;
      vertices: { x: number; y: number }[];
      shape: boolean;
    }[];
    expect(lines.map(({ layer }) => layer)).toEqual(template.lines.map(({ purpose }) => purpose.toUpperCase()));
    lines.forEach(({ vertices, shape }, i) => {
      const { points, closed } = template.lines[i] ?? { points: [] };
      expect(shape === true).toBe(closed === true);
      expect(vertices.map(({ x, y }) => ({ x, y }))).toEqual(
        points.map(({ x, y }) => ({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) })),
      );
    });
    const bar = (drawing?.entities ?? []).find(({ type }) => type === "LINE") as unknown as {
      vertices: { x: number }[];
    };
    expect((bar.vertices[1]?.x ?? 0) - (bar.vertices[0]?.x ?? 0)).toBeCloseTo(100, 9);
  });

  it.each(paperNames)("cover the template on %s, neighbours lying over one another", (paper) => {
    const tiling = tile(template, paper);
    const { tiles, shownWidth, shownHeight, columns, rows } = tiling;
    expect(tiles).toHaveLength(columns * rows);
    const last = tiles.at(-1);
    const first = tiles[0];
    expect(first?.left).toBeLessThanOrEqual(template.left);
    expect(first?.top).toBeGreaterThanOrEqual(template.top);
    expect((last?.left ?? 0) + shownWidth).toBeGreaterThanOrEqual(template.right);
    expect((last?.top ?? 0) - shownHeight).toBeLessThanOrEqual(template.bottom);
    if (columns > 1) expect((first?.left ?? 0) + shownWidth - (tiles[1]?.left ?? 0)).toBeCloseTo(overlap, 9);
  });

  it("mark the same places on neighbouring sheets", () => {
    const { tiles, columns } = tile(template, "A4");
    const sheets = templateSheets(template, "A4");
    const crosses = (i: number) =>
      [...(sheets[i] ?? "").matchAll(/<path d="M([-\d.]+) ([-\d.]+)H[^"]*" [^>]*data-cross/g)].map(([, x, y]) =>
        [(Number(x) + 4 + (tiles[i]?.left ?? 0)).toFixed(2), ((tiles[i]?.top ?? 0) - Number(y)).toFixed(2)].join(" "),
      );
    if (tiles.length === 1) expect(crosses(0)).toEqual([]);
    for (let i = 0; i + 1 < columns; i++) {
      expect(crosses(i).filter((cross) => crosses(i + 1).includes(cross))).toHaveLength(2);
    }
  });
});

describe("templates of a notebook", () => {
  const live = openSheets("three-hulls");

  it("are two of each kind for every option of the worked notebook", () => {
    for (const option of ["Sloop", "Cruiser", "Pilot"]) {
      expect(templatesOf(live, option)).toMatchObject([
        { title: "Wrap template, port" },
        { title: "Wrap template, starboard" },
        { title: "Hole outline, port" },
        { title: "Hole outline, starboard" },
      ]);
    }
  });
});
