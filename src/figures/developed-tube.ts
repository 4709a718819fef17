import { levelDimension } from "./draw/dimension";
import { cut, soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { bold, circle, group, line, type Point, path, pathOf } from "./draw/mark";
import { mm, shown } from "./draw/number";
import { toScale } from "./draw/scale";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { need } from "./need";
import { type TrimInput, trimPoints } from "./trim-points";

const title = "Tube end unrolled, with its cut line";
const marks = ["top", "forward", "bottom", "aft"];
const columns = 6;

/** The outside of the tube laid flat from its top, outboard is up, with the points of the trim table. */
export function developedTube(input: TrimInput): Figure {
  return figure(title, () => {
    need(input, { outside: [1, 5000] });
    return drawTube(input);
  });
}

function drawTube(input: TrimInput) {
  const points = trimPoints(input);
  const curve = trimPoints(input, 144);
  const girth = Math.PI * input.outside;
  const most = Math.max(...points.map(({ trim }) => Math.abs(trim)));
  const tall = Math.max(most * 1.15, girth * 0.06);
  const view = toScale({ left: 0, right: girth, bottom: -tall, top: tall }, { x: 26, y: 22, width: 308, height: 260 });
  const { at, bottom } = view;
  const cutLine: Point[] = [...curve.map((point) => at(point.girth, point.trim)), at(girth, points[0]?.trim ?? 0)];
  const inner = [at(girth, -tall), at(0, -tall)];
  const quarters = [0, 1, 2, 3, 4].map((quarter) => {
    const x = at((girth * quarter) / 4, 0).x;
    const name = marks[quarter % 4] as string;
    return (
      line({ x, y: 16 }, { x, y: bottom }, { width: 0.5, dash: "2 3", stroke: soft }) +
      text({ x, y: 12 }, name, { anchor: "middle", fill: soft })
    );
  });
  const dots = points.map(({ girth: along, trim, number }) =>
    circle(at(along, trim), 2, { width: 0.9, fill: "currentColor" }, { "data-point": number }),
  );
  const dimension = bottom + 18;
  const table = dimension + 22;
  const cells = points.map(({ number, trim }, i) => {
    const column = i % columns;
    const y = table + Math.floor(i / columns) * lineHeight;
    const x = 8 + (column * (sheetWidth - 12)) / columns;
    return (
      text({ x: x + 12, y }, String(number), { anchor: "end", fill: soft, tick: true }) +
      text({ x: x + 52, y }, shown(trim, 1), { anchor: "end" })
    );
  });
  const says = [
    `Outside of the tube laid flat from its top, outboard is up, to scale; ${mm(girth)} round an outside diameter of ${mm(input.outside)}.`,
    `Cut line against the mean at 24 points, ${shown(girth / 24, 1)} mm apart, in mm: ${points.map(({ number, trim }) => `${number}: ${shown(trim, 1)}`).join(", ")}.`,
    "Point 1 is the top, 7 forward, 13 the bottom, 19 aft.",
  ].join(" ");
  return sheet({
    title,
    says,
    height: table + 3 * lineHeight + lineHeight + 10,
    content: [
      path(pathOf([...cutLine, ...inner], true), { width: 0, fill: cut }),
      ...quarters,
      group({ ...view.marks }, path(pathOf(cutLine), bold), ...dots),
      line(at(0, 0), at(girth, 0), { width: 0.6, dash: "9 2 2 2" }),
      text({ x: 22, y: at(0, 0).y + 4 }, "0", { anchor: "end", tick: true, fill: soft }),
      levelDimension({
        from: at(0, 0).x,
        to: at(girth, 0).x,
        y: dimension,
        starts: [bottom, bottom],
        says: `${mm(girth)} round the outside`,
        right: sheetWidth,
      }),
      ...cells,
      text(
        { x: 8, y: table + 4 * lineHeight },
        `point and mm outboard of the mean; ${shown(girth / 24, 1)} mm from point to point`,
        { fill: soft },
      ),
    ],
  });
}
