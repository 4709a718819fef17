// Long for one drawing: hull lines, tube, strip, end shape and their dimensions belong together.

import { tunnelBackFace } from "../functions/tunnel/back-face";
import { say } from "../words/say";
import { tangent } from "./angle";
import { dimensionLine, levelDimension } from "./draw/dimension";
import { cut, holds, short, soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { bold, centre, fine, group, hidden, line, polyline, shape } from "./draw/mark";
import { type Note, notes, notesHeight } from "./draw/notes";
import { mm, shown } from "./draw/number";
import { type ToScale, toScale } from "./draw/scale";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { named } from "./named";
import { need } from "./need";

/** Numbers of the view from above at the height of the tunnel. */
export interface WaterlineViewInput {
  /** Inside diameter of the tunnel, mm. */
  readonly diameter: number;
  /** Wall of the tube, mm. */
  readonly wall: number;
  /** Half-breadth of the hull at the tunnel's axis, mm. */
  readonly halfBreadth: number;
  /** Half-angle of the waterline against the centreline, degrees. */
  readonly entrance: number;
  /** Distance fore and aft between the two measured offsets, mm. */
  readonly measured: number;
  /** Axis behind the stem at this height, mm. */
  readonly behindStem: number;
  /** How far the aft lip is brought inboard, mm; 0 without a recess. */
  readonly recessDepth: number;
  /** Length of the recess behind the tunnel, mm; 0 without one. */
  readonly recessLength: number;
  /** How far a deflector stands out ahead of the fore lip, mm; 0 without one. */
  readonly deflector: number;
}

const title = say`Waterline at the height of the tunnel`;
const column = 258;

/** Seen from above, forward is right: half-breadths, entrance, tube, strip of aft wall, recess and deflector. */
export function waterlineView(input: WaterlineViewInput): Figure {
  return figure(title, () => {
    need(input, {
      diameter: [1, 5000],
      halfBreadth: [0, 10000],
      entrance: [0, 85],
      recessDepth: [0, 2000],
      recessLength: [0, 10000],
      deflector: [0, 2000],
    });
    return drawView(input);
  });
}

/** What is drawn on either side; `sign` is 1 to port. */
function side(input: WaterlineViewInput, { at }: ToScale, left: number, right: number, sign: number): string[] {
  const { diameter, wall, halfBreadth, entrance, measured, recessDepth, recessLength, deflector } = input;
  const slope = tangent(entrance);
  const R = diameter / 2;
  const outer = R + wall;
  const y = (x: number) => Math.max(0, halfBreadth - x * slope);
  const on = (x: number, inboard = 0) => at(x, sign * Math.max(0, y(x) - inboard));
  const half = Math.max(measured / 2, outer);
  const strip = [on(-R), on(R), at(R, sign * y(R)), at(-R, sign * y(R))];
  const lip = recessDepth > 0 ? [polyline([on(-R, recessDepth), on(-R - recessLength)], { width: 1.3 })] : [];
  const out =
    deflector > 0 ? [shape([on(R), on(R, -deflector), on(R + 2.5 * deflector)], { width: 1, fill: cut })] : [];
  return [
    shape(
      [strip[0], strip[2], strip[3]].filter((p) => p !== undefined),
      { width: 0, fill: cut },
    ),
    polyline([on(-half), on(-outer)], bold),
    polyline([on(outer), on(half)], bold),
    polyline([on(left), on(-half)], hidden),
    polyline([on(half), on(right)], hidden),
    line(on(-outer), on(outer), fine),
    line(at(-R, sign * y(R)), at(-R, sign * y(-R)), { width: 3, stroke: short }),
    ...lip,
    ...out,
  ];
}

function drawView(input: WaterlineViewInput) {
  const { diameter, wall, halfBreadth, entrance, behindStem, recessDepth, recessLength, deflector } = input;
  const R = diameter / 2;
  const outer = R + wall;
  const slope = tangent(entrance);
  const y = (x: number) => Math.max(0, halfBreadth - x * slope);
  const left = -Math.max(outer * 2, R + recessLength * 1.15, input.measured * 0.6);
  const right = Math.max(outer * 2, R + 3.2 * deflector, Math.min(behindStem, outer * 4), input.measured * 0.6);
  const wide = Math.max(y(left), halfBreadth + deflector) * 1.06;
  const place = { x: 4, y: 16, width: column - 20, height: 300 };
  const view = toScale({ left, right, bottom: -wide, top: wide }, place);
  const { at, bottom, marks } = view;
  const strip = named(tunnelBackFace, { diameter, entrance });
  const hiddenBy = recessDepth + deflector;
  const isHidden = hiddenBy >= strip;
  const walls = [R, -R].flatMap((x) => {
    const far = x + Math.sign(x) * wall;
    return [shape([at(x, -y(x)), at(x, y(x)), at(far, y(far)), at(far, -y(far))], { width: 1.2, fill: cut })];
  });
  const stripMiddle = at(-R, (y(R) + y(-R)) / 2);
  const list: Note[] = [
    { at: at(left * 0.5 - R * 0.5, y(left * 0.5 - R * 0.5)), says: say`entrance ${shown(entrance, 1)}°` },
    {
      at: stripMiddle,
      says: say`aft wall seen ${mm(strip)}${strip === 0 ? "" : isHidden ? say`: hidden` : say`: not hidden`}`,
      fill: isHidden ? holds : short,
      strong: !isHidden,
    },
    ...(deflector > 0 ? [{ at: at(R, y(R) + deflector), says: say`deflector ${mm(deflector)} out` }] : []),
    ...(recessDepth > 0
      ? [
          {
            at: at(-R - recessLength * 0.4, -(y(-R - recessLength * 0.4) - recessDepth * 0.6)),
            says: say`recess ${mm(recessDepth)} in`,
          },
        ]
      : []),
    { at: at(halfX(R), -halfBreadth * 0.5), says: say`half-breadth ${mm(halfBreadth)}` },
  ];
  const width = sheetWidth - column;
  const first = bottom + 18;
  const rows = [
    levelDimension({
      from: at(-R, 0).x,
      to: at(R, 0).x,
      y: first,
      starts: [at(-R, -y(-R)).y, at(R, -y(R)).y],
      says: say`bore ${mm(diameter)}`,
      right: column - 8,
    }),
    ...(recessLength > 0 && recessDepth > 0
      ? [
          levelDimension({
            from: at(-R - recessLength, 0).x,
            to: at(-R, 0).x,
            y: first + 18,
            starts: [at(-R - recessLength, -y(-R - recessLength)).y, at(-R, -y(-R)).y],
            says: say`recess ${mm(recessLength)}`,
            right: column - 8,
          }),
        ]
      : []),
  ];
  const lowest = Math.max(first + (rows.length - 1) * 18 + 8, notesHeight(list, width) + 18);
  const shape_ = [
    recessDepth > 0 ? say`recess ${mm(recessDepth)} deep and ${mm(recessLength)} long` : say`no recess`,
    deflector > 0 ? say`deflector standing out ${mm(deflector)}` : say`no deflector`,
  ].join(", ");
  const foot = say`stem ${mm(behindStem)} ahead of the axis; wall ${mm(wall)}`;
  const says = [
    say`Seen from above, forward is right, to scale; dashed where the waterline was not measured.`,
    say`Half-breadth at the axis ${mm(halfBreadth)}, entrance ${shown(entrance, 1)}°, bore ${mm(diameter)}, wall ${mm(wall)}, stem ${mm(behindStem)} ahead of the axis.`,
    say`Strip of aft wall seen from dead ahead ${mm(strip)}; end shape: ${shape_}; together ${mm(hiddenBy)}, ${
      strip === 0 ? say`nothing to hide` : isHidden ? say`the strip is hidden` : say`the strip is not hidden`
    }.`,
  ].join(" ");
  return sheet({
    title,
    says,
    height: lowest + lineHeight + 4,
    content: [
      group(marks, ...[1, -1].flatMap((sign) => side(input, view, left, right, sign)), ...walls),
      line(at(left, 0), at(right, 0), centre),
      line(at(0, -wide), at(0, wide), centre),
      dimensionLine(at(halfX(R), 0), at(halfX(R), -halfBreadth)),
      text({ x: 4, y: 11 }, say`aft`, { fill: soft }),
      text({ x: column - 16, y: 11 }, say`forward`, { fill: soft, anchor: "end" }),
      ...rows,
      notes(list, { x: column, top: 12, bottom: lowest, width }),
      text({ x: 4, y: lowest + 10 }, foot, { fill: soft }),
    ],
  });
}

/** Where the half-breadth is dimensioned: beside the axis, inside the tube. */
const halfX = (R: number): number => R * 0.35;
