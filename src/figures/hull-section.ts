// Long for one drawing: geometry, lines and dimensions of a section belong together.

import { tunnelCover } from "../functions/tunnel/cover";
import { tunnelImmersion } from "../functions/tunnel/immersion";
import { say } from "../words/say";
import { dimensionLine, levelDimension } from "./draw/dimension";
import { cut, holds, short, soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { bold, centre, fine, group, hidden, line, type Point, polyline, shape } from "./draw/mark";
import { type Note, notes, notesHeight } from "./draw/notes";
import { mm, shown } from "./draw/number";
import { toScale } from "./draw/scale";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { named } from "./named";
import { need } from "./need";

/** Numbers of the section through the hull at the tunnel. */
export interface HullSectionInput {
  /** Inside diameter of the tunnel, mm. */
  readonly diameter: number;
  /** Wall of the tube, mm. */
  readonly wall: number;
  /** Half-breadth of the hull at the tunnel's axis, mm. */
  readonly halfBreadth: number;
  /** Angle of the side from upright, outward going up, degrees. */
  readonly flare: number;
  /** Whole thickness of the skin, mm. */
  readonly skin: number;
  /** Tunnel axis above the hull's bottom, mm. */
  readonly axisHeight: number;
  /** Axis below the water in light trim, mm; below 0 the axis is out of the water. */
  readonly axisLight: number;
  /** Axis below the water in deep trim, mm. */
  readonly axisDeep: number;
  /** Least immersion, in diameters. */
  readonly immersionLeast: number;
  /** Top of the motor above the axis while it stands upright, mm. */
  readonly motorHeight: number;
  /** Half the width of the motor, mm. */
  readonly motorRadius: number;
  /** Lean of the motor from upright, degrees. */
  readonly lean: number;
  /** Free height above the axis, mm. */
  readonly headroom: number;
}

const title = say`Section through the hull at the tunnel`;
const column = 262;

/** Half-breadth of a flat side at a height above the axis; a side that would cross the centreplane ends there. */
const breadthAt = ({ halfBreadth, flare }: HullSectionInput, z: number): number =>
  Math.max(0, halfBreadth + z * Math.tan((flare * Math.PI) / 180));

/** Top of the leaning motor above the axis, mm. */
const motorTop = ({ motorHeight, motorRadius, lean }: HullSectionInput): number => {
  const angle = (lean * Math.PI) / 180;
  return motorHeight * Math.cos(angle) + motorRadius * Math.sin(angle);
};

/** Seen from ahead: hull, waterlines, tube with cover and immersion, motor under its headroom. */
export function hullSection(input: HullSectionInput): Figure {
  return figure(title, () => {
    need(input, { diameter: [1, 5000], wall: [0, 200], skin: [0, 500], flare: [-60, 80], lean: [0, 90] });
    return drawSection(input);
  });
}

function drawSection(input: HullSectionInput) {
  const { diameter, wall, skin, flare, axisHeight, axisLight, axisDeep, headroom, halfBreadth } = input;
  const R = diameter / 2;
  const outer = R + wall;
  const low = Math.min(-axisHeight, -outer * 1.15);
  const high = Math.max(axisLight, axisDeep, headroom, motorTop(input), outer * 1.3) + diameter * 0.25;
  const wide = Math.max(breadthAt(input, low), breadthAt(input, high), halfBreadth, outer) * 1.12;
  const place = { x: 4, y: 8, width: column - 16, height: 300 };
  const { at, bottom, marks, scale } = toScale({ left: -wide, right: wide, bottom: low, top: high }, place);

  const thick = skin / Math.cos((flare * Math.PI) / 180);
  const side = (sign: number, from: number, to: number) => {
    const zs = [from, to];
    const outside = zs.map((z) => at(sign * breadthAt(input, z), z));
    const inside = zs.map((z) => at(sign * Math.max(0, breadthAt(input, z) - thick), z)).reverse();
    return shape([...outside, ...inside], { ...bold, fill: cut });
  };
  const floor = breadthAt(input, low);
  const hull = [
    shape([at(-floor, low), at(floor, low), at(floor, low + skin), at(-floor, low + skin)], { ...hidden, fill: cut }),
    ...[-1, 1].flatMap((sign) => [side(sign, low, -outer), side(sign, outer, high)]),
  ];
  const wallStrip = (from: number, to: number) =>
    shape(
      [
        at(-breadthAt(input, from), from),
        at(breadthAt(input, from), from),
        at(breadthAt(input, to), to),
        at(-breadthAt(input, to), to),
      ],
      {
        ...bold,
        fill: cut,
      },
    );
  const ends = [-1, 1].map((sign) =>
    line(at(sign * breadthAt(input, -R), -R), at(sign * breadthAt(input, R), R), fine),
  );
  const water = [axisLight, axisDeep].map((z) =>
    waterline(at(-wide, z), at(wide, z), at(breadthAt(input, z), z).x - at(0, z).x),
  );

  const coverLight = named(tunnelCover, { axisDepth: axisLight, diameter });
  const coverDeep = named(tunnelCover, { axisDepth: axisDeep, diameter });
  const immersionLight = named(tunnelImmersion, { axisDepth: axisLight, diameter });
  const immersionDeep = named(tunnelImmersion, { axisDepth: axisDeep, diameter });
  const enough = immersionLight >= input.immersionLeast;
  const dims = [
    { y: 0.55, from: R, to: axisLight },
    { y: 0.74, from: R, to: axisDeep },
    { y: 0.3, from: low, to: 0 },
  ].map(({ y, from, to }) => ({ from: at(y * halfBreadth, from), to: at(y * halfBreadth, to) }));
  const middle = (k: number): Point => ({
    x: (dims[k]?.from.x ?? 0) * 0.5 + (dims[k]?.to.x ?? 0) * 0.5,
    y: ((dims[k]?.from.y ?? 0) + (dims[k]?.to.y ?? 0)) / 2,
  });
  const lean = shown(input.lean, input.lean % 1 === 0 ? 0 : 1);
  const list: Note[] = [
    { at: at(wide, axisDeep), says: say`water, deep` },
    { at: at(wide, axisLight), says: say`water, light` },
    {
      at: middle(0),
      says: say`cover, light ${mm(coverLight)}${enough ? "" : say`: short`}`,
      fill: enough ? holds : short,
      strong: !enough,
    },
    { at: middle(1), says: say`cover, deep ${mm(coverDeep)}` },
    { at: middle(2), says: say`axis above bottom ${mm(axisHeight)}` },
    { at: at(breadthAt(input, outer * 1.6), outer * 1.6), says: say`flare ${shown(flare, 1)}°` },
    { at: at(headroomHalf(input), headroom), says: say`headroom ${mm(headroom)}` },
  ];
  const says = [
    say`Seen from ahead, to scale; the side is drawn flat through the offsets that were measured, the bottom was not measured.`,
    say`Tunnel bore ${mm(diameter)}, wall ${mm(wall)}, skin ${mm(skin)}, half-breadth at the axis ${mm(halfBreadth)}, flare ${shown(flare, 1)}°, axis above the bottom ${mm(axisHeight)}.`,
    say`Cover in light trim ${mm(coverLight)}, ${shown(immersionLight, 2)} diameters, at least ${shown(input.immersionLeast, 2)} wanted: ${enough ? say`holds` : say`falls short`}.`,
    say`Cover in deep trim ${mm(coverDeep)}, ${shown(immersionDeep, 2)} diameters.`,
    say`Motor ${input.lean === 0 ? say`upright` : say`leaning ${lean}°`}, its top ${mm(motorTop(input))} above the axis under a headroom of ${mm(headroom)}.`,
  ].join(" ");
  const rowY = bottom + 18;
  const width = sheetWidth - column;
  const lowest = Math.max(rowY + 12, 6 + notesHeight(list, width));
  const rows = [
    say`bore ${mm(diameter)}, wall ${mm(wall)}, skin ${mm(skin)}`,
    say`immersion ${shown(immersionLight, 2)} light, ${shown(immersionDeep, 2)} deep; least ${shown(input.immersionLeast, 2)} diameters`,
  ];
  return sheet({
    title,
    says,
    height: lowest + 2 + rows.length * lineHeight,
    content: [
      group(
        marks,
        ...water,
        ...hull,
        wallStrip(R, outer),
        wallStrip(-outer, -R),
        ...ends,
        ...motor(input, at),
        ...headroomLine(input, at),
      ),
      line(at(0, low - 6 / scale), at(0, high), centre),
      line(at(-wide, 0), at(wide, 0), centre),
      ...dims.map(({ from, to }) => dimensionLine(from, to)),
      levelDimension({
        from: at(0, 0).x,
        to: at(halfBreadth, 0).x,
        y: rowY,
        starts: [bottom, at(0, -R * 0.2).y],
        says: say`half-breadth ${mm(halfBreadth)}`,
        right: column,
      }),
      ...rows.map((row, i) => text({ x: 4, y: lowest + 10 + i * lineHeight }, row, { fill: soft })),
      notes(list, { x: column, top: 2, bottom: lowest, width }),
    ],
  });
}

/** A waterline with the sign that drawings give it; faint where the hull keeps the water out. */
function waterline(from: Point, to: Point, half: number): string {
  const middle = (from.x + to.x) / 2;
  const wet = { width: 0.9, dash: "10 3 2 3" };
  const x = to.x - 8;
  return [
    line(from, { x: middle - half, y: from.y }, wet),
    line({ x: middle - half, y: from.y }, { x: middle + half, y: from.y }, { width: 0.5, dash: "2 3", stroke: soft }),
    line({ x: middle + half, y: from.y }, to, wet),
    shape(
      [
        { x, y: from.y },
        { x: x - 4, y: from.y - 6 },
        { x: x + 4, y: from.y - 6 },
      ],
      { width: 0.6 },
    ),
  ].join("");
}

function motor(input: HullSectionInput, at: (x: number, z: number) => Point): string[] {
  const { motorRadius, diameter, wall, lean } = input;
  const foot = diameter / 2 + wall;
  const top = Math.max(motorTop(input), foot);
  const box = shape([at(-motorRadius, foot), at(motorRadius, foot), at(motorRadius, top), at(-motorRadius, top)], fine);
  // Standing, the motor shows its round end as a line; leaning, the edge of its top is seen below the corner.
  const edge = top - 2 * motorRadius * Math.sin((lean * Math.PI) / 180);
  return edge < top - 1 && edge > foot
    ? [box, line(at(-motorRadius, edge), at(motorRadius, edge), { width: 0.5 })]
    : [box];
}

/** How far the headroom line reaches from the centreplane: inside the skin. */
const headroomHalf = (input: HullSectionInput): number =>
  Math.max(input.motorRadius, 0.9 * Math.min(input.halfBreadth, breadthAt(input, input.headroom)));

function headroomLine(input: HullSectionInput, at: (x: number, z: number) => Point): string[] {
  const half = headroomHalf(input);
  const x = -Math.max(input.motorRadius * 1.25, half * 0.62);
  return [
    polyline([at(-half, input.headroom), at(half, input.headroom)], { width: 1.1, dash: "6 3" }),
    dimensionLine(at(x, 0), at(x, input.headroom)),
  ];
}
