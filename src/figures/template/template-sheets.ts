import { say } from "../../words/say";
import { element, escaped, group, pathOf } from "../draw/mark";
import { overlap, type Paper, rim } from "./paper";
import { bar, black, content, exact, root, white } from "./paper-drawing";
import type { Template } from "./template";
import { type Tile, type Tiling, tile } from "./tiles";

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
    const place = tiles.length === 1 ? "" : say`, row ${one.row} of ${rows}, column ${one.column} of ${columns}`;
    const sheet = say`sheet ${i + 1} of ${tiles.length}${place}`;
    const lines = [`${template.title}: ${sheet}`, say`${template.note}; print at 100 %, then measure the bar`];
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
