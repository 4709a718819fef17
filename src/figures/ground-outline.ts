import { tunnelHoleLength } from "../functions/tunnel/hole-length";
import { say } from "../words/say";
import { levelDimension } from "./draw/dimension";
import { cut, holds, short, soft } from "./draw/ink";
import { text } from "./draw/letters";
import { bold, centre, fine, group, hidden, line, type Pen, type Point, shape } from "./draw/mark";
import { type Note, notes, notesHeight } from "./draw/notes";
import { mm } from "./draw/number";
import { toScale } from "./draw/scale";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { type HoleSquareInput, holePoint } from "./hole-square";
import { named } from "./named";
import { need } from "./need";

/** Numbers of the ground outline on the hull and of what stands near it. */
export interface GroundOutlineInput extends HoleSquareInput {
  /** Width of the bevel outside, mm. */
  readonly bevel: number;
  /** Longest leg of the plies inside, mm. */
  readonly leg: number;
  /** Nearest frame or stringer from the axis, mm. */
  readonly frame: number;
  /** Nearest bulkhead from the axis, mm. */
  readonly bulkhead: number;
}

const title = say`Bevel and plies on the hull, and what stands near`;
const column = 240;

/** Hole, bevel outside and longest ply inside, seen square to the skin, against the nearest frame and bulkhead. */
export function groundOutline(input: GroundOutlineInput): Figure {
  return figure(title, () => {
    need(input, { outside: [1, 5000], bevel: [0, 5000], leg: [0, 5000], frame: [0, 50000], bulkhead: [0, 50000] });
    const { outside: diameter, entrance, flare } = input;
    return drawOutline(input, named(tunnelHoleLength, { diameter, entrance, flare }));
  });
}

/** The line at an even distance outside the hole's edge, mm. */
function around(input: HoleSquareInput, distance: number): Point[] {
  return Array.from({ length: 120 }, (_, i) => {
    const here = holePoint(input, i * 3);
    const next = holePoint(input, i * 3 + 0.01);
    const before = holePoint(input, i * 3 - 0.01);
    const run = Math.hypot(next.x - before.x, next.y - before.y);
    return { x: here.x - ((next.y - before.y) / run) * distance, y: here.y + ((next.x - before.x) / run) * distance };
  });
}

function drawOutline(input: GroundOutlineInput, long: number) {
  const { bevel, leg, frame, bulkhead } = input;
  const reachOut = long / 2 + bevel;
  const reachIn = long / 2 + leg;
  const most = Math.max(reachOut, reachIn);
  const near = most * 1.9;
  const frameSeen = frame <= near;
  const bulkheadSeen = bulkhead <= near;
  const left = -Math.max(most, bulkheadSeen ? bulkhead : 0) * 1.08;
  const right = Math.max(most, frameSeen ? frame : 0) * 1.08;
  const { at, bottom, marks } = toScale(
    { left, right, bottom: -most * 1.05, top: most * 1.05 },
    { x: 4, y: 16, width: column - 18, height: 250 },
  );
  const ring = (distance: number, pen: Pen) =>
    shape(
      around(input, distance).map(({ x, y }) => at(x, y)),
      pen,
    );
  const frameClear = frame - reachIn;
  const bulkheadClear = bulkhead - reachIn;
  const stand = (x: number): string => line(at(x, -most), at(x, most), { width: 3, stroke: soft });
  const clear = (name: string, distance: number, room: number, place: Point): Note => ({
    at: place,
    says: `${name} ${mm(distance)}: ${room >= 0 ? say`clear by ${mm(room)}` : say`in the way by ${mm(-room)}`}`,
    fill: room >= 0 ? holds : short,
    strong: room < 0,
  });
  const list: Note[] = [
    clear(say`frame`, frame, frameClear, at(Math.min(frame, right), most * 0.8)),
    clear(say`bulkhead`, bulkhead, bulkheadClear, at(Math.max(-bulkhead, left), -most * 0.9)),
    { at: at(0, input.outside * 0.5), says: say`hole` },
    { at: at(0, -(input.outside / 2 + bevel * 0.97)), says: say`bevel outside ${mm(bevel)}` },
    { at: at(0, input.outside / 2 + leg), says: say`longest leg inside ${mm(leg)}` },
  ];
  const width = sheetWidth - column;
  const first = Math.max(bottom + 18, notesHeight(list, width) + 38);
  const lowest = first + 18 + 6;
  const says = [
    say`Seen square to the skin, to scale. The frame is drawn on the right and the bulkhead on the left; only their distance from the axis is known.`,
    say`Ground outline ${mm(2 * reachOut)} across at its widest, bevel ${mm(bevel)}; plies inside reach ${mm(reachIn)} from the axis, longest leg ${mm(leg)}.`,
    say`Nearest frame ${mm(frame)} from the axis: ${frameClear >= 0 ? say`clear by ${mm(frameClear)}` : say`in the way by ${mm(-frameClear)}`}.`,
    say`Nearest bulkhead ${mm(bulkhead)}: ${bulkheadClear >= 0 ? say`clear by ${mm(bulkheadClear)}` : say`in the way by ${mm(-bulkheadClear)}`}.`,
  ].join(" ");
  return sheet({
    title,
    says,
    height: lowest + 2,
    content: [
      group(
        marks,
        ring(bevel, { ...fine, fill: cut }),
        ring(leg, hidden),
        ring(0, { ...bold, fill: "var(--paper, light-dark(#fdfbf5, #171c21))" }),
      ),
      ...(frameSeen ? [stand(frame)] : []),
      ...(bulkheadSeen ? [stand(-bulkhead)] : []),
      line(at(left, 0), at(right, 0), centre),
      line(at(0, -most), at(0, most), centre),
      levelDimension({
        from: at(-reachOut, 0).x,
        to: at(reachOut, 0).x,
        y: first,
        starts: [at(0, 0).y, at(0, 0).y],
        says: say`ground ${mm(2 * reachOut)} across`,
        right: sheetWidth,
      }),
      levelDimension({
        from: at(0, 0).x,
        to: at(reachIn, 0).x,
        y: first + 18,
        starts: [first, at(0, 0).y],
        says: say`plies to ${mm(reachIn)}`,
        right: sheetWidth,
      }),
      text({ x: 4, y: 11 }, say`side of frame and bulkhead not said`, { fill: soft }),
      notes(list, { x: column, top: 18, bottom: first - 16, width }),
    ],
  });
}
