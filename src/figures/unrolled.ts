import { say } from "../words/say";
import { levelDimension } from "./draw/dimension";
import { cut, soft } from "./draw/ink";
import { text } from "./draw/letters";
import { bold, circle, group, line, type Point, path, pathOf } from "./draw/mark";
import { mm } from "./draw/number";
import { type ToScale, toScale } from "./draw/scale";
import { sheetWidth } from "./draw/sheet";
import type { TrimPoint } from "./trim-points";

const quarters = [say`top`, say`forward`, say`bottom`, say`aft`, say`top`];

export interface UnrolledInput {
  /** Round the outside of the tube, mm. */
  readonly girth: number;
  /** Every height that has to be seen, mm against the mean. */
  readonly trims: readonly number[];
  /** The cut line, close enough to look smooth. */
  readonly curve: readonly TrimPoint[];
  /** The points that are marked. */
  readonly points: readonly TrimPoint[];
}

/** The outside of a tube laid flat from its top, outboard up: cut line, marked points, quarters and girth. */
export function unrolled({ girth, trims, curve, points }: UnrolledInput): ToScale & { content: string[] } {
  const most = Math.max(...trims.map(Math.abs));
  const tall = Math.max(most * 1.15, girth * 0.06);
  const place = { x: 26, y: 22, width: 308, height: 260 };
  const view = toScale({ left: 0, right: girth, bottom: -tall, top: tall }, place);
  const { at, bottom } = view;
  const cutLine: Point[] = [...curve.map((point) => at(point.girth, point.trim)), at(girth, curve[0]?.trim ?? 0)];
  const dots = points.map((point) =>
    circle(at(point.girth, point.trim), 2, { width: 0.9, fill: "currentColor" }, { "data-point": point.number }),
  );
  const content = [
    path(pathOf([...cutLine, at(girth, -tall), at(0, -tall)], true), { width: 0, fill: cut }),
    ...quarters.map((name, quarter) => {
      const { x } = at((girth * quarter) / 4, 0);
      return (
        line({ x, y: 16 }, { x, y: bottom }, { width: 0.5, dash: "2 3", stroke: soft }) +
        text({ x, y: 12 }, name, { anchor: "middle", fill: soft })
      );
    }),
    group({ ...view.marks }, path(pathOf(cutLine), bold), ...dots),
    line(at(0, 0), at(girth, 0), { width: 0.6, dash: "9 2 2 2" }),
    text({ x: 22, y: at(0, 0).y + 4 }, "0", { anchor: "end", tick: true, fill: soft }),
    levelDimension({
      from: at(0, 0).x,
      to: at(girth, 0).x,
      y: bottom + 18,
      starts: [bottom, bottom],
      says: say`${mm(girth)} round the outside`,
      right: sheetWidth,
    }),
  ];
  return { ...view, content };
}
