import { motorLean } from "../functions/tunnel/lean";
import { say } from "../words/say";
import { radians } from "./angle";
import { dimensionLine } from "./draw/dimension";
import { cut, holds, short, soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { bold, centre, circle, fine, group, line, type Point, path, polyline, round, shape } from "./draw/mark";
import { type Note, notes, notesHeight } from "./draw/notes";
import { mm, shown } from "./draw/number";
import { toScale } from "./draw/scale";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { named } from "./named";
import { need } from "./need";

/** Numbers of the motor's place above the tunnel. */
export interface MotorSpaceInput {
  /** Inside diameter of the tunnel, mm. */
  readonly diameter: number;
  /** Wall of the tube, mm. */
  readonly wall: number;
  /** From the tunnel's axis to the motor's top, upright, mm. */
  readonly motorHeight: number;
  /** Half the width of the motor, mm. */
  readonly motorRadius: number;
  /** Free height above the axis, mm. */
  readonly headroom: number;
  /** Free space beside the axis on the side to which the motor leans, mm. */
  readonly sideRoom: number;
  /** Most lean allowed here, degrees. */
  readonly leanMost: number;
}

const title = say`Motor in its space, seen along the tunnel`;
const column = 250;

/** The motor upright, or at the least lean that gets it under the headroom. */
export function motorSpace(input: MotorSpaceInput): Figure {
  return figure(title, () => {
    need(input, { diameter: [1, 5000], motorHeight: [1, 5000], motorRadius: [0, 2000] });
    const { motorHeight: height, motorRadius: radius, headroom } = input;
    return drawSpace(input, named(motorLean, { height, radius, headroom }));
  });
}

function drawSpace(input: MotorSpaceInput, lean: number) {
  const { diameter, wall, motorHeight, motorRadius, headroom, sideRoom, leanMost } = input;
  const R = diameter / 2;
  const outer = R + wall;
  const angle = radians(lean);
  const turned = (along: number, up: number): Point => ({
    x: along * Math.cos(angle) + up * Math.sin(angle),
    y: -along * Math.sin(angle) + up * Math.cos(angle),
  });
  const foot = Math.min(outer, motorHeight);
  const corners = [
    turned(-motorRadius, foot),
    turned(motorRadius, foot),
    turned(motorRadius, motorHeight),
    turned(-motorRadius, motorHeight),
  ];
  const taken = motorHeight * Math.sin(angle) + motorRadius * Math.cos(angle);
  const { at, bottom, marks } = toScale(
    {
      left: -Math.max(outer, motorRadius) * 1.25,
      right: Math.max(sideRoom, taken, outer) * 1.05,
      bottom: -outer * 1.15,
      top: Math.max(headroom, ...corners.map(({ y }) => y), outer * 1.2) * 1.06,
    },
    { x: 6, y: 6, width: column - 22, height: 260 },
  );
  const holdsLean = lean <= leanMost;
  const holdsSide = taken <= sideRoom;
  const arm = Math.min(motorHeight * 0.62, headroom * 0.9);
  const tip = at(turned(0, arm).x, turned(0, arm).y);
  const upright = at(0, arm);
  const radius = at(arm, 0).x - at(0, 0).x;
  const arc =
    lean > 0.5
      ? [
          path(
            `M${round(upright.x)} ${round(upright.y)}A${round(radius)} ${round(radius)} 0 0 1 ${round(tip.x)} ${round(tip.y)}`,
            { width: 0.6 },
          ),
        ]
      : [];
  const list: Note[] = [
    { at: at(Math.max(sideRoom * 0.8, outer), headroom), says: say`headroom ${mm(headroom)}` },
    {
      at: tip,
      says:
        lean === 0
          ? say`motor upright`
          : say`lean ${shown(lean, 1)}°, most ${shown(leanMost)}°${holdsLean ? "" : say`: too far`}`,
      ...(holdsLean ? {} : { fill: short, strong: true }),
    },
    {
      at: at(sideRoom, headroom * 0.4),
      says: say`free beside ${mm(sideRoom)}`,
    },
    {
      at: at(corners[2]?.x ?? 0, corners[2]?.y ?? 0),
      says: say`motor takes ${mm(taken)}${holdsSide ? "" : say`: no room`}`,
      fill: holdsSide ? holds : short,
      strong: !holdsSide,
    },
    { at: at(outer * 0.7, -outer * 0.7), says: say`bore ${mm(diameter)}` },
  ];
  const width = sheetWidth - column;
  const lowest = Math.max(bottom + 8, notesHeight(list, width) + 8);
  const says = [
    say`Seen along the tunnel, to scale; the side to which the motor leans is on the right.`,
    say`Motor ${mm(motorHeight)} above the axis when upright, ${mm(2 * motorRadius)} wide, headroom ${mm(headroom)}, tunnel bore ${mm(diameter)}.`,
    lean === 0
      ? say`The motor stands upright.`
      : say`Least lean ${shown(lean, 1)}°, allowed here ${shown(leanMost)}°: ${holdsLean ? say`holds` : say`falls short`}.`,
    say`The motor takes ${mm(taken)} beside the axis of ${mm(sideRoom)} that are free: ${holdsSide ? say`holds` : say`falls short`}.`,
  ].join(" ");
  return sheet({
    title,
    says,
    height: lowest + lineHeight + 4,
    content: [
      group(
        marks,
        circle(at(0, 0), at(outer, 0).x - at(0, 0).x, { ...bold, fill: cut }),
        circle(at(0, 0), at(R, 0).x - at(0, 0).x, { ...fine, fill: "var(--paper, light-dark(#fdfbf5, #171c21))" }),
        shape(
          corners.map(({ x, y }) => at(x, y)),
          { ...bold, fill: cut },
        ),
        polyline([at(-outer, headroom), at(sideRoom, headroom), at(sideRoom, -outer)], { width: 1.1, dash: "6 3" }),
      ),
      line(at(0, -outer * 1.1), at(0, Math.max(headroom, motorHeight)), centre),
      line(at(0, 0), at(turned(0, motorHeight).x, turned(0, motorHeight).y), centre),
      ...arc,
      dimensionLine(at(-Math.max(outer, motorRadius) * 1.12, 0), at(-Math.max(outer, motorRadius) * 1.12, headroom)),
      notes(list, { x: column, top: 4, bottom: lowest, width }),
      text({ x: 4, y: lowest + 10 }, say`motor ${mm(motorHeight)} high upright, ${mm(2 * motorRadius)} wide`, {
        fill: soft,
      }),
    ],
  });
}
