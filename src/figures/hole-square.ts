import { tunnelHoleArea } from "../functions/tunnel/hole-area";
import { tunnelHoleEdge } from "../functions/tunnel/hole-edge";
import { tunnelHoleLength } from "../functions/tunnel/hole-length";
import { say } from "../words/say";
import { radians, tangent } from "./angle";
import { dimensionLine } from "./draw/dimension";
import { soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { bold, centre, group, line, type Point, shape } from "./draw/mark";
import { type Note, notes, notesHeight } from "./draw/notes";
import { mm, shown, withUnit } from "./draw/number";
import { toScale } from "./draw/scale";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { named } from "./named";
import { need } from "./need";

/** Numbers of the hole in the hull's side. */
export interface HoleSquareInput {
  /** Outside diameter of the tube, mm. */
  readonly outside: number;
  /** Half-angle of the waterline against the centreline, degrees. */
  readonly entrance: number;
  /** Angle of the side from upright, outward going up, degrees. */
  readonly flare: number;
}

const title = say`Hole in the hull, seen square to the skin`;
const column = 236;

/**
 * The hole's edge laid flat in the plane of the skin, in mm from the axis: x forward along the skin, y up along it.
 * `angle` runs round the tube from its top, 90 is forward.
 */
export function holePoint({ outside, entrance, flare }: HoleSquareInput, angle: number): Point {
  const forward = tangent(entrance);
  const up = tangent(flare);
  const R = outside / 2;
  // A point of the tube's wall on the skin, and two directions in the skin square to one another.
  const x = R * Math.sin(radians(angle));
  const z = R * Math.cos(radians(angle));
  const y = z * up - x * forward;
  const size = Math.hypot(forward, 1, -up);
  const normal = { x: forward / size, y: 1 / size, z: -up / size };
  const rise = { x: -normal.x * normal.z, y: -normal.y * normal.z, z: 1 - normal.z * normal.z };
  const length = Math.hypot(rise.x, rise.y, rise.z);
  const v = { x: rise.x / length, y: rise.y / length, z: rise.z / length };
  const u = {
    x: normal.y * v.z - normal.z * v.y,
    y: normal.z * v.x - normal.x * v.z,
    z: normal.x * v.y - normal.y * v.x,
  };
  return { x: x * u.x + y * u.y + z * u.z, y: x * v.x + y * v.y + z * v.z };
}

/** The ellipse that has to be cut, with its axes; starboard, forward is right. */
export function holeSquare(input: HoleSquareInput): Figure {
  return figure(title, () => {
    need(input, { outside: [1, 5000] });
    const { outside: diameter, entrance, flare } = input;
    return drawHole(input, {
      long: named(tunnelHoleLength, { diameter, entrance, flare }),
      edge: named(tunnelHoleEdge, { diameter, entrance, flare }),
      area: named(tunnelHoleArea, { diameter, entrance, flare }),
    });
  });
}

function drawHole(input: HoleSquareInput, hole: { long: number; edge: number; area: number }) {
  const { outside, entrance, flare } = input;
  const round = Array.from({ length: 120 }, (_, i) => holePoint(input, i * 3));
  const half = hole.long / 2;
  const { at, bottom, marks } = toScale(
    { left: -half * 1.2, right: half * 1.2, bottom: -half * 1.2, top: half * 1.2 },
    { x: 4, y: 16, width: column - 20, height: 230 },
  );
  // The long axis lies where the tube's end is steepest: outboard above and aft.
  const steep =
    hole.long - outside > outside * 1e-9 ? (Math.atan2(-tangent(entrance), tangent(flare)) * 180) / Math.PI : 0;
  const ends = [steep, steep + 180, steep + 90, steep + 270]
    .map((angle) => holePoint(input, angle))
    .map(({ x, y }) => at(x, y)) as [Point, Point, Point, Point];
  const long = holePoint(input, steep);
  const tilt = (Math.atan2(long.x, long.y) * 180) / Math.PI;
  const lean =
    Math.abs(tilt) < 0.05
      ? say`upright`
      : say`${shown(Math.abs(tilt), 1)}° ${tilt < 0 ? say`aft` : say`forward`} of upright`;
  const list: Note[] = [
    {
      at: { x: ends[0].x * 0.75 + ends[1].x * 0.25, y: ends[0].y * 0.75 + ends[1].y * 0.25 },
      says: say`long axis ${mm(hole.long)}`,
    },
    {
      at: { x: ends[2].x * 0.75 + ends[3].x * 0.25, y: ends[2].y * 0.75 + ends[3].y * 0.25 },
      says: say`short axis ${mm(outside)}`,
    },
    { at: at(holePoint(input, 130).x, holePoint(input, 130).y), says: say`edge ${mm(hole.edge)}` },
  ];
  const width = sheetWidth - column;
  const lowest = Math.max(bottom + 4, notesHeight(list, width) + 16);
  const area = withUnit(hole.area * 1e4, "cm²");
  const says = [
    say`Seen square to the skin, starboard side, forward is right, to scale; port is its mirror image.`,
    say`Ellipse with a long axis of ${mm(hole.long)}, ${lean}, and a short axis of ${mm(outside)}, the tube's outside diameter.`,
    say`Edge ${mm(hole.edge)}, area ${area}, entrance ${shown(entrance, 1)}°, flare ${shown(flare, 1)}°.`,
  ].join(" ");
  return sheet({
    title,
    says,
    height: lowest + 2 * lineHeight + 4,
    content: [
      group(
        marks,
        shape(
          round.map(({ x, y }) => at(x, y)),
          bold,
        ),
      ),
      line(at(-half * 1.15, 0), at(half * 1.15, 0), centre),
      line(at(0, -half * 1.15), at(0, half * 1.15), centre),
      dimensionLine(ends[0], ends[1]),
      dimensionLine(ends[2], ends[3]),
      text({ x: at(0, 0).x, y: 12 }, say`up`, { anchor: "middle", fill: soft }),
      text({ x: 4, y: 12 }, say`aft`, { fill: soft }),
      text({ x: column - 16, y: 12 }, say`forward`, { anchor: "end", fill: soft }),
      notes(list, { x: column, top: 16, bottom: lowest, width }),
      text({ x: 4, y: lowest + 10 }, say`area ${area}, long axis ${lean}`, { fill: soft }),
      text({ x: 4, y: lowest + 10 + lineHeight }, say`entrance ${shown(entrance, 1)}°, flare ${shown(flare, 1)}°`, {
        fill: soft,
      }),
    ],
  });
}
