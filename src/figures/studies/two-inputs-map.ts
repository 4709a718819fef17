// Past 150 lines: axes, region, lines and their labels share one grid of places.

import { scaleLinear } from "d3-scale";
import type { Plain } from "../../study/kernel/plain";
import type { TwoInputsAnswer } from "../../study/two-inputs";
import { valueWords } from "../../study/words";
import { say } from "../../words/say";
import { cut, holds, rule, soft } from "../draw/ink";
import { text } from "../draw/letters";
import { circle, line, type Point, path, round, shape } from "../draw/mark";
import { sheet } from "../draw/sheet";
import { type Figure, figure } from "../figure";
import { need } from "../need";
import { brief, withUnitOf } from "./brief";
import { contour, type Piece } from "./contour";

const width = 560;
const frame = { left: 70, right: 540, top: 34, bottom: 330 };
const mostLines = 8;

const place = (from: number, to: number, count: number) => (i: number) =>
  count < 2 ? (from + to) / 2 : from + ((to - from) * i) / (count - 1);

const label = (value: Plain): string => (typeof value === "number" ? brief(value) : valueWords(value, ""));

/** At most about six of the values, the ends among them. */
function some(values: readonly Plain[]): { readonly value: Plain; readonly i: number }[] {
  const step = Math.max(1, Math.ceil((values.length - 1) / 6));
  return values
    .flatMap((value, i) => (i % step === 0 || i === values.length - 1 ? [{ value, i }] : []))
    .filter(({ i }, k, all) => k === all.length - 1 || k === 0 || values.length - 1 - i >= step / 2);
}

/** Outline of the places where something is so: every side between a place inside and one outside. */
function outline(inside: readonly (readonly boolean[])[], at: (x: number, y: number) => Point): string {
  const isIn = (x: number, y: number) => inside[y]?.[x] ?? false;
  const sides: string[] = [];
  const side = (x1: number, y1: number, x2: number, y2: number) => {
    const [from, to] = [at(x1, y1), at(x2, y2)];
    sides.push(`M${round(from.x)} ${round(from.y)}L${round(to.x)} ${round(to.y)}`);
  };
  inside.forEach((row, y) => {
    row.forEach((_, x) => {
      if (!isIn(x, y)) return;
      if (!isIn(x - 1, y)) side(x - 0.5, y - 0.5, x - 0.5, y + 0.5);
      if (!isIn(x + 1, y)) side(x + 0.5, y - 0.5, x + 0.5, y + 0.5);
      if (!isIn(x, y - 1)) side(x - 0.5, y - 0.5, x + 0.5, y - 0.5);
      if (!isIn(x, y + 1)) side(x - 0.5, y + 0.5, x + 0.5, y + 0.5);
    });
  });
  return sides.join("");
}

/** Where a line's number stands: on the piece nearest to the way from one corner to the other. */
function labelled(pieces: readonly Piece[], columns: number, rows: number): Point | undefined {
  const off = ([{ x, y }]: Piece) => Math.abs(x / Math.max(1, columns - 1) - y / Math.max(1, rows - 1));
  const [first] = [...pieces].sort((a, b) => off(a) - off(b));
  return first?.[0];
}

/** A result over two inputs as lines of equal value, and the region in which all checks hold. */
export function twoInputsMap(answer: TwoInputsAnswer): Figure {
  const { across, down, result, results, holds: held } = answer;
  const title = say`${result.name} over ${across.name} and ${down.name}`;
  return figure(title, () => {
    const known = results.flat().filter((value) => !Number.isNaN(value));
    need(
      { places: results.flat().length, places_with_a_number: known.length },
      { places: [4, 1e6], places_with_a_number: [1, 1e6] },
    );
    const [columns, rows] = [across.values.length, down.values.length];
    const half = {
      x: (frame.right - frame.left) / (2 * columns),
      y: (frame.bottom - frame.top) / (2 * rows),
    };
    const px = place(frame.left + half.x, frame.right - half.x, columns);
    // The low value stands at the bottom.
    const py = place(frame.bottom - half.y, frame.top + half.y, rows);
    const at = (x: number, y: number): Point => ({
      x: px(0) + (x * (px(columns - 1) - px(0))) / Math.max(1, columns - 1),
      y: py(0) + (y * (py(rows - 1) - py(0))) / Math.max(1, rows - 1),
    });
    const region = held.flatMap((row, y) =>
      row.flatMap((does, x) => {
        if (!does) return [];
        const { x: cx, y: cy } = at(x, y);
        return [
          `M${round(cx - half.x)} ${round(cy - half.y)}H${round(cx + half.x)}V${round(cy + half.y)}H${round(cx - half.x)}Z`,
        ];
      }),
    );
    const lost = results.flatMap((row, y) =>
      row.flatMap((value, x) => (Number.isNaN(value) ? [circle(at(x, y), 1.4, { width: 0.8, stroke: soft })] : [])),
    );
    const levels = scaleLinear([Math.min(...known), Math.max(...known)], [0, 1]).ticks(mostLines);
    const lines = levels.flatMap((level) => {
      const pieces = contour(results, level);
      const d = pieces.map(([from, to]) => {
        const [a, b] = [at(from.x, from.y), at(to.x, to.y)];
        return `M${round(a.x)} ${round(a.y)}L${round(b.x)} ${round(b.y)}`;
      });
      const where = labelled(pieces, columns, rows);
      if (!where) return [];
      return [
        path(d.join(""), { width: 1.2 }),
        text({ x: at(where.x, where.y).x, y: at(where.x, where.y).y + 4 }, brief(level), {
          anchor: "middle",
          rim: true,
          strong: true,
        }),
      ];
    });
    const ticks = [
      ...some(across.values).map(
        ({ value, i }) =>
          line({ x: px(i), y: frame.bottom }, { x: px(i), y: frame.bottom + 4 }) +
          text({ x: px(i), y: frame.bottom + 16 }, label(value), { anchor: "middle", fill: soft, tick: true }),
      ),
      ...some(down.values).map(
        ({ value, i }) =>
          line({ x: frame.left, y: py(i) }, { x: frame.left - 4, y: py(i) }) +
          text({ x: frame.left - 7, y: py(i) + 4 }, label(value), { anchor: "end", fill: soft, tick: true }),
      ),
    ];
    const corners = [
      { x: frame.left, y: frame.top },
      { x: frame.right, y: frame.top },
      { x: frame.right, y: frame.bottom },
      { x: frame.left, y: frame.bottom },
    ];
    const unit = (one: string) => (one === "" || one === "1" ? "" : `, ${one}`);
    const count = held.flat().filter(Boolean).length;
    const says = [
      say`${result.name} from ${brief(Math.min(...known))} to ${withUnitOf(Math.max(...known), result.unit)},`,
      say`${across.name} from ${label(across.values[0] ?? null)} to ${label(across.values.at(-1) ?? null)} across,`,
      say`${down.name} from ${label(down.values[0] ?? null)} to ${label(down.values.at(-1) ?? null)} upwards.`,
      say`The checks hold in ${count} of ${held.flat().length} places.`,
    ].join(" ");
    return sheet({
      title,
      says,
      width,
      height: frame.bottom + 62,
      content: [
        path(region.join(""), { width: 0, fill: cut }),
        shape(corners, { width: 0.8, stroke: rule }),
        path(outline(held, at), { width: 2, stroke: holds }),
        ...lines,
        ...lost,
        ...ticks,
        text({ x: 2, y: frame.top - 16 }, `${down.name}${unit(down.unit)}`),
        text({ x: frame.right, y: frame.bottom + 34 }, `${across.name}${unit(across.unit)}`, { anchor: "end" }),
        text(
          { x: 4, y: frame.bottom + 54 },
          say`lines: ${result.name}${unit(result.unit)}; toned, with a thick edge: the checks hold${lost.length > 0 ? say`; rings: no result` : ""}`,
          { fill: soft },
        ),
      ],
    });
  });
}
