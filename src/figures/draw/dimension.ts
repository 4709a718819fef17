import { ink } from "./ink";
import { text, textWidth } from "./letters";
import { line, type Point, path, pathOf } from "./mark";

const head = 6;
const halfHead = 1.7;

/** A filled arrow head with its tip at `tip`, pointing along the unit vector (`ux`, `uy`). */
function arrow(tip: Point, ux: number, uy: number, stroke: string): string {
  const base = { x: tip.x - ux * head, y: tip.y - uy * head };
  const points = [
    tip,
    { x: base.x - uy * halfHead, y: base.y + ux * halfHead },
    { x: base.x + uy * halfHead, y: base.y - ux * halfHead },
  ];
  return path(pathOf(points, true), { width: 0.3, stroke, fill: stroke });
}

/** A dimension line between two points: arrows inside, or outside and pointing in where it is short. */
export function dimensionLine(from: Point, to: Point, stroke = ink): string {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < 0.01) return "";
  const ux = (to.x - from.x) / length;
  const uy = (to.y - from.y) / length;
  const pen = { width: 0.6, stroke };
  if (length >= 2.6 * head) return line(from, to, pen) + arrow(from, -ux, -uy, stroke) + arrow(to, ux, uy, stroke);
  const tail = 2 * head;
  const before = { x: from.x - ux * tail, y: from.y - uy * tail };
  const after = { x: to.x + ux * tail, y: to.y + uy * tail };
  return line(before, after, pen) + arrow(from, ux, uy, stroke) + arrow(to, -ux, -uy, stroke);
}

export interface Level {
  /** Ends along the drawing, left and right. */
  readonly from: number;
  readonly to: number;
  /** Height of the dimension line. */
  readonly y: number;
  /** Heights from which the extension lines come down, left and right. */
  readonly starts: readonly [number, number];
  readonly says: string;
  /** The text may not run past this. */
  readonly right: number;
  readonly fill?: string;
}

/** A level dimension in a row of its own, its text above the line where it fits and beside it where not. */
export function levelDimension({ from, to, y, starts, says, right, fill = ink }: Level): string {
  const away = (start: number, x: number) =>
    line(
      { x, y: start + Math.sign(y - start) * 2 },
      { x, y: y + Math.sign(y - start) * 3 },
      { width: 0.5, stroke: fill },
    );
  const width = textWidth(says);
  const low = Math.min(from, to);
  const high = Math.max(from, to);
  const fits = high - low > width + 6;
  const roomRight = right - high - 15;
  const roomLeft = low - 15;
  const beside =
    roomRight >= width || (roomLeft < width && roomRight > roomLeft)
      ? ({ x: high + 15, anchor: "start" } as const)
      : ({ x: low - 15, anchor: "end" } as const);
  return [
    away(starts[0], from),
    away(starts[1], to),
    dimensionLine({ x: from, y }, { x: to, y }, fill),
    fits
      ? text({ x: (low + high) / 2, y: y - 3 }, says, { anchor: "middle", fill, rim: true })
      : text({ x: beside.x, y: y + 4 }, says, { anchor: beside.anchor, fill, rim: true }),
  ].join("");
}
