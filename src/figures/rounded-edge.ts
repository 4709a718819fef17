import { say } from "../words/say";
import { dimensionLine } from "./draw/dimension";
import { cut, soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { bold, centre, line, path, round } from "./draw/mark";
import { type Note, notes, notesHeight } from "./draw/notes";
import { mm, shown } from "./draw/number";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { need } from "./need";

/** One end of a tunnel with its rounded edge. */
export interface RoundedEdgeInput {
  /** Diameter of the tunnel, mm. */
  readonly diameter: number;
  /** Radius of the edge, mm. */
  readonly radius: number;
  /** Inlet loss, velocity heads. */
  readonly inlet: number;
  /** Friction along the tube, velocity heads. */
  readonly friction: number;
}

const title = say`Rounded end of the tunnel`;
const column = 196;
const box = { left: 8, top: 10, size: 170 };
const barLeft = 8;
const barRight = sheetWidth - 8;

/** Section through the tunnel's end, to scale, and below it what the water loses there, piece by piece. */
export function roundedEdge(input: RoundedEdgeInput): Figure {
  return figure(title, () => {
    need(input, { diameter: [1, 5000], radius: [0, input.diameter], inlet: [0, 10], friction: [0, 100] });
    return drawEdge(input);
  });
}

function drawEdge({ diameter, radius, inlet, friction }: RoundedEdgeInput) {
  const scale = box.size / (diameter * 1.5);
  const middle = box.top + box.size / 2;
  const skin = box.left + 26;
  const end = box.left + box.size;
  const R = (diameter / 2) * scale;
  const r = radius * scale;
  // The hull's skin stands at the left, water comes in from there; the tube's wall runs to the right.
  const wall = (sign: 1 | -1): string => {
    const edge = middle + sign * R;
    const away = middle + sign * (box.size / 2);
    return path(
      `M${round(skin)} ${round(away)}L${round(skin)} ${round(edge + sign * r)}Q${round(skin)} ${round(edge)} ${round(skin + r)} ${round(edge)}L${round(end)} ${round(edge)}L${round(end)} ${round(edge + sign * 7)}L${round(skin + 9)} ${round(edge + sign * Math.max(7, r))}L${round(skin + 9)} ${round(away)}Z`,
      { ...bold, fill: cut },
    );
  };
  const list: Note[] = [
    { at: { x: skin + r * 0.3, y: middle - R - r * 0.3 }, says: say`edge radius ${mm(radius)}` },
    {
      at: { x: end - 24, y: middle + R / 2 },
      says: say`diameter ${mm(diameter)}, radius of the tunnel ${mm(diameter / 2)}`,
    },
  ];
  const shares = [
    { what: say`jet`, size: 1 },
    { what: say`inlet`, size: inlet },
    { what: say`friction`, size: friction },
  ];
  const whole = 1 + inlet + friction;
  const top = box.top + box.size + 18;
  const x = (heads: number) => barLeft + ((barRight - barLeft) * heads) / Math.max(1.6, whole);
  const starts = shares.map((_, i) => shares.slice(0, i).reduce((sum, { size }) => sum + size, 0));
  const bars = shares.map(({ size }, i) =>
    path(
      `M${round(x(starts[i] ?? 0))} ${top}H${round(x((starts[i] ?? 0) + size))}V${top + 16}H${round(x(starts[i] ?? 0))}Z`,
      { width: 1, fill: i === 0 ? cut : "none" },
    ),
  );
  const words = say`jet 1, inlet ${shown(inlet, 3)}, friction ${shown(friction, 3)}: ${shown(whole, 3)} velocity heads`;
  const says = [
    say`Section, to scale: tunnel of ${mm(diameter)}, radius of the tunnel ${mm(diameter / 2)}, edge radius ${mm(radius)}, ${shown((radius / diameter) * 200, 0)} % of the tunnel's radius and ${shown(radius / diameter, 3)} of its diameter.`,
    say`Losses: ${words}.`,
  ].join(" ");
  const width = sheetWidth - column;
  const ratio = say`edge over diameter ${shown(radius / diameter, 3)}, ${shown((radius / diameter) * 200, 0)} % of the radius`;
  return sheet({
    title,
    says,
    height: top + 20 + 2 * lineHeight,
    content: [
      wall(-1),
      wall(1),
      line({ x: box.left, y: middle }, { x: end, y: middle }, centre),
      text({ x: box.left, y: middle - 5 }, say`water`, { fill: soft }),
      dimensionLine({ x: end - 24, y: middle - R }, { x: end - 24, y: middle + R }),
      notes(list, { x: column, top: 4, bottom: Math.max(box.top + box.size, notesHeight(list, width)), width }),
      ...bars,
      text({ x: 4, y: top + 20 + 10 }, words),
      text({ x: 4, y: top + 20 + 10 + lineHeight }, ratio, { fill: soft }),
    ],
  });
}
