import { element, escaped, group, pathOf } from "../draw/mark";
import { overlap, type Paper, rim, strip } from "./paper";
import type { Purpose, Template } from "./template";
import { type Tile, type Tiling, tile } from "./tiles";

// Templates are always black on white: they are paper.
const black = "#000000";
const white = "#ffffff";
const pens: Readonly<Record<Purpose, Readonly<Record<string, string | number | undefined>>>> = {
  cut: { stroke: black, "stroke-width": 0.35 },
  mark: { stroke: black, "stroke-width": 0.2, "stroke-dasharray": "6 1.5 1.5 1.5" },
  note: { stroke: black, "stroke-width": 0.12 },
};
const letters = "'IBM Plex Sans', 'Helvetica Neue', Arial, sans-serif";

/** Length of the bar that is measured before a template is used, mm. */
export const checkBar = 100;

/** A thousandth of a mm is finer than any printer; `element` would round to hundredths. */
const exact = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);

/** The template's lines and words with y down, in mm; `left` and `top` come to lie at 0. */
function content(template: Template, left: number, top: number): string[] {
  const lines = template.lines.map(({ purpose, points, closed }) => {
    const d = `M${points.map(({ x, y }) => `${exact(x - left)} ${exact(top - y)}`).join("L")}${closed ? "Z" : ""}`;
    return element("path", { d, fill: "none", ...pens[purpose], "data-purpose": purpose });
  });
  const texts = template.texts.map(({ at, says, size, anchor }) =>
    element(
      "text",
      {
        x: exact(at.x - left),
        y: exact(top - at.y),
        "font-size": size,
        fill: black,
        "text-anchor": anchor === "start" ? undefined : anchor,
      },
      escaped(says),
    ),
  );
  return [...lines, ...texts];
}

/** The bar of 100 mm with its ends, its left end at (`x`, `y`). */
function bar(x: number, y: number): string {
  const d = `M${x} ${y - 2}V${y + 2}M${x} ${y}H${x + checkBar}M${x + checkBar} ${y - 2}V${y + 2}`;
  return (
    element("path", { d, fill: "none", stroke: black, "stroke-width": 0.25, "data-bar": checkBar }) +
    element(
      "text",
      { x: x + checkBar / 2, y: y - 1.5, "font-size": 3.2, fill: black, "text-anchor": "middle" },
      "check bar: 100 mm",
    )
  );
}

function root(width: number, height: number, title: string, says: string, parts: readonly string[]): string {
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      width: `${exact(width)}mm`,
      height: `${exact(height)}mm`,
      viewBox: `0 0 ${exact(width)} ${exact(height)}`,
      role: "img",
      "aria-label": `${title}. ${says}`,
      "font-family": letters,
    },
    ["", `<title>${escaped(title)}</title>`, `<desc>${escaped(says)}</desc>`, ...parts, ""].join("\n"),
  );
}

/** The whole template on one drawing of its own size, for a plotter, in mm. */
export function templateSvg(template: Template): string {
  const width = Math.max(template.right - template.left, checkBar + 80) + 2 * rim;
  const height = template.top - template.bottom + strip + 2 * rim;
  const words = element(
    "text",
    { x: rim + checkBar + 6, y: height - rim, "font-size": 3.2, fill: black },
    escaped(template.note),
  );
  return root(width, height, template.title, template.says, [
    element("rect", { x: 0, y: 0, width, height, fill: white }),
    ...content(template, template.left - rim, template.top + rim),
    bar(rim, height - rim),
    words,
  ]);
}

/** Crosses that lie on both of two neighbouring sheets, and lines along the edges that are laid over. */
function joins({ columns, rows, shownWidth: w, shownHeight: h }: Tiling, { column, row }: Tile): string[] {
  const edges = [
    ...(column > 1 ? [{ x: overlap, upright: true }] : []),
    ...(column < columns ? [{ x: w - overlap, upright: true }] : []),
    ...(row > 1 ? [{ x: overlap, upright: false }] : []),
    ...(row < rows ? [{ x: h - overlap, upright: false }] : []),
  ];
  return edges.flatMap(({ x, upright }) => {
    const length = upright ? h : w;
    // The middle of the overlap; the same place of the template on both sheets.
    const middle = x === overlap ? overlap / 2 : x + overlap / 2;
    const point = (along: number, across: number) => (upright ? { x: across, y: along } : { x: along, y: across });
    const thin = { fill: "none", stroke: black, "stroke-width": 0.15 };
    const crosses = [0.15, 0.85].map((share) => {
      const { x: cx, y: cy } = point(length * share, middle);
      return element("path", {
        d: `M${exact(cx - 4)} ${exact(cy)}H${exact(cx + 4)}M${exact(cx)} ${exact(cy - 4)}V${exact(cy + 4)}`,
        ...thin,
        "data-cross": "",
      });
    });
    const edge = pathOf([point(0, x), point(length, x)]);
    return [element("path", { d: edge, ...thin, "stroke-dasharray": "2 2" }), ...crosses];
  });
}

/** Sheets of paper that together make the template at full size, each in mm with the check bar. */
export function templateSheets(template: Template, paper: Paper): string[] {
  const tiling = tile(template, paper);
  const { width, height, shownWidth, shownHeight, columns, rows, tiles } = tiling;
  return tiles.map((one, i) => {
    const place = tiles.length === 1 ? "" : `, row ${one.row} of ${rows}, column ${one.column} of ${columns}`;
    const sheet = `sheet ${i + 1} of ${tiles.length}${place}`;
    const lines = [`${template.title}: ${sheet}`, `${template.note}; print at 100 %, then measure the bar`];
    const inner = element(
      "svg",
      {
        x: rim,
        y: rim,
        width: exact(shownWidth),
        height: exact(shownHeight),
        viewBox: `0 0 ${exact(shownWidth)} ${exact(shownHeight)}`,
      },
      [...content(template, one.left, one.top), ...joins(tiling, one)].join("\n"),
    );
    const words = lines.map((says, k) =>
      element("text", { x: rim, y: exact(height - rim - 12 + k * 4.2), "font-size": 3.2, fill: black }, escaped(says)),
    );
    return root(width, height, `${template.title}, ${sheet}`, template.says, [
      element("rect", { x: 0, y: 0, width: exact(width), height: exact(height), fill: white }),
      inner,
      element("rect", {
        x: rim,
        y: rim,
        width: exact(shownWidth),
        height: exact(shownHeight),
        fill: "none",
        stroke: black,
        "stroke-width": 0.1,
      }),
      group({}, bar(rim, height - rim - 2), ...words),
    ]);
  });
}
