import { say } from "../words/say";
import { type CurvedSideInput, curvedSide } from "./curved-side";
import { soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { line, type Point, path, pathOf } from "./draw/mark";
import { mm, shown } from "./draw/number";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { trimTable } from "./trim-table";
import { unrolled } from "./unrolled";

const title = say`Cut line on the curved side, beside the flat one`;

/** The unrolled cut line from measured offsets, and dashed the one of the flat side through the axis. */
export function cutLines(input: CurvedSideInput): Figure {
  return figure(title, () => drawLines(input));
}

function drawLines(input: CurvedSideInput) {
  const side = curvedSide(input);
  const points = side.points(24);
  const curve = side.points(72);
  const flat = side.flat(72);
  const girth = Math.PI * input.outside;
  const view = unrolled({ girth, trims: [...points, ...flat].map(({ trim }) => trim), curve, points });
  const dashed: Point[] = [...flat, { ...flat[0], girth, trim: flat[0]?.trim ?? 0 }].map((point) =>
    view.at(point.girth, point.trim),
  );
  const foot = view.bottom + 40;
  const table = trimTable(points, foot + lineHeight);
  const says = [
    say`Outside of the tube laid flat from its top, outboard is up, to scale; ${mm(girth)} round an outside diameter of ${mm(input.outside)}.`,
    say`From offsets at ${input.stations.length} stations and ${input.heights.length} heights: half-breadth at the axis ${shown(side.breadth, 1)} mm, entrance ${shown(side.entrance, 1)}°, flare ${shown(side.flare, 1)}°, mean half-length ${shown(side.mean, 1)} mm.`,
    say`Cut line against the mean at 24 points, in mm: ${points.map(({ number, trim }) => `${number}: ${shown(trim, 1)}`).join(", ")}.`,
    say`The flat side through the axis, dashed, errs by up to ${shown(side.bend, 1)} mm.`,
  ].join(" ");
  return sheet({
    title,
    says,
    height: foot + lineHeight + table.height + lineHeight,
    content: [
      ...view.content,
      path(pathOf(dashed), { width: 1, dash: "5 3" }),
      line({ x: 8, y: foot - 4 }, { x: 30, y: foot - 4 }, { width: 1, dash: "5 3" }),
      text({ x: 36, y: foot }, say`flat side through the axis, errs by up to ${shown(side.bend, 1)} mm`),
      table.svg,
      text(
        { x: sheetWidth / 2, y: foot + lineHeight + table.height + 4 },
        say`mean half-length ${shown(side.mean, 1)} mm, half-breadth ${shown(side.breadth, 1)} mm`,
        {
          fill: soft,
          anchor: "middle",
        },
      ),
    ],
  });
}
