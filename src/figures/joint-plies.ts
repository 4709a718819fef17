// Long for one drawing: both sides of a joint share one set of axes.

import { bevelWidth } from "../functions/joint/bevel-width";
import { say } from "../words/say";
import { dimensionLine, levelDimension } from "./draw/dimension";
import { cut, holds, short, soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { bold, fine, group, line, type Point, path, pathOf, polyline, round, shape } from "./draw/mark";
import { type Note, notes, notesHeight } from "./draw/notes";
import { mm, shown } from "./draw/number";
import { toScale } from "./draw/scale";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { named } from "./named";
import { need } from "./need";
import { type PlyStack, plyEdge } from "./ply-stack";
import { thicknessBars } from "./thickness-bars";

/** Numbers of the joint between hull and tube. */
export interface JointPliesInput {
  /** Hull laminate at the tunnel, mm. */
  readonly shell: number;
  /** Wall of the tube, mm. */
  readonly wall: number;
  /** Thickness of one ply, mm. */
  readonly ply: number;
  /** Plies inside, whole. */
  readonly pliesIn: number;
  /** Plies outside, whole. */
  readonly pliesOut: number;
  /** Leg of the first ply inside, mm. */
  readonly legFirst: number;
  /** Each further ply inside is longer by, mm. */
  readonly legStep: number;
  /** Reach of the first ply outside from the edge, mm. */
  readonly outFirst: number;
  /** Each further ply outside reaches further by, mm. */
  readonly outStep: number;
  /** Thickness wanted inside, mm. */
  readonly targetIn: number;
  /** Thickness wanted outside, mm. */
  readonly targetOut: number;
  /** Depth of the bevel outside, mm. */
  readonly bevelDepth: number;
  /** Length of the bevel over its depth. */
  readonly bevelRatio: number;
  /** Radius of the fillet, mm. */
  readonly filletRadius: number;
}

const title = say`Joint between hull and tube`;
const column = 244;

/**
 * Section through one side of the joint: the hull lies level with its outside up, the tube goes down from it. Plies
 * and legs are to scale, on the tube and on the hull.
 */
export function jointPlies(input: JointPliesInput): Figure {
  return figure(title, () => {
    need(input, {
      shell: [0.5, 200],
      wall: [0.5, 200],
      ply: [0.05, 20],
      pliesIn: [0, 60],
      pliesOut: [0, 60],
      legFirst: [1, 2000],
      legStep: [0, 500],
      outFirst: [1, 2000],
      outStep: [0, 500],
      filletRadius: [0, 300],
      bevelDepth: [0, 200],
    });
    return drawJoint(input);
  });
}

const count = (plies: number): string => (plies === 1 ? say`1 ply` : say`${plies} plies`);

const edges = (stack: PlyStack): Point[][] => Array.from({ length: stack.count }, (_, i) => plyEdge(stack, i));

function drawJoint(input: JointPliesInput) {
  const { shell, wall, ply, pliesIn, pliesOut, legFirst, legStep, outFirst, outStep, bevelDepth, filletRadius } = input;
  const inside: PlyStack = { count: pliesIn, each: ply, first: legFirst, step: legStep };
  const outside: PlyStack = { count: pliesOut, each: ply, first: outFirst, step: outStep };
  const bevel = named(bevelWidth, { thickness: bevelDepth, ratio: input.bevelRatio });
  const leg = legFirst + Math.max(0, pliesIn - 1) * legStep;
  const out = outFirst + Math.max(0, pliesOut - 1) * outStep;
  const laidIn = pliesIn * ply;
  const laidOut = pliesOut * ply;
  const stackIn = Math.max(laidIn, filletRadius);
  // x runs from the tube's outside along the hull, y up from the hull's inside: outside is above, inside below.
  const { at, bottom, marks, scale } = toScale(
    {
      left: -wall - Math.max(4, out * 0.05),
      right: Math.max(leg + stackIn, bevel, out) * 1.06,
      bottom: -(leg + stackIn) * 1.06,
      top: shell + Math.max(laidOut, 4) * 1.6,
    },
    { x: 6, y: 8, width: column - 22, height: 300 },
  );
  const far = Math.max(leg + stackIn, bevel, out) * 1.06;
  const deep = (leg + stackIn) * 1.06;
  // The corner of the inside plies follows the fillet.
  const r = Math.max(filletRadius, 0.01);
  const hull = [at(0, 0), at(far, 0), at(far, shell), at(bevel, shell), at(0, shell - bevelDepth)];
  const tube = [at(-wall, shell), at(0, shell - bevelDepth), at(0, -deep), at(-wall, -deep)];
  const fillet = `${pathOf([at(0, 0), at(r, 0)])}${arcTo(at(0, -r), r * scale)}Z`;
  const insidePlies = edges(inside).map((edge) => {
    const top = edge[0]?.y ?? 0;
    const radius = Math.max(r - top, 0.01);
    const along = edge.filter(({ x }) => x >= r).map(({ x, y }) => ({ x, y }));
    const start = { x: Math.max(r, top), y: top };
    const onHull = [start, ...along].map(({ x, y }) => at(x, -y));
    const onTube = [start, ...along].map(({ x, y }) => at(y, -x));
    return path(
      `${pathOf([...onHull].reverse())}${top < r ? arcTo(onTube[0] as Point, radius * scale) : `L${round(onTube[0]?.x ?? 0)} ${round(onTube[0]?.y ?? 0)}`}${pathOf(onTube).replace("M", "L")}`,
      { width: plyPen(ply * scale) },
    );
  });
  // Outside, plies lie in the bevel and turn into the tunnel over the tube's end.
  const rise = (x: number) => (bevel > 0 && x < bevel ? shell - bevelDepth + (bevelDepth * x) / bevel : shell);
  const outsidePlies = edges(outside).map((edge) =>
    polyline([at(-wall, shell - bevelDepth + (edge[0]?.y ?? 0)), ...edge.map(({ x, y }) => at(x, rise(x) + y))], {
      width: plyPen(ply * scale),
    }),
  );
  const enoughIn = laidIn >= input.targetIn;
  const enoughOut = laidOut >= input.targetOut;
  const judged = (side: string, laid: number, target: number, enough: boolean, place: Point): Note => ({
    at: place,
    says: say`${side}: laid ${mm(laid)}, wanted ${mm(target)}: ${enough ? say`holds` : say`short`}`,
    fill: enough ? holds : short,
    strong: !enough,
  });
  const list: Note[] = [
    judged(
      say`outside`,
      laidOut,
      input.targetOut,
      enoughOut,
      at(Math.min(outFirst * 0.6, out), rise(outFirst * 0.6) + laidOut / 2),
    ),
    { at: at(far * 0.96, shell / 2), says: say`hull ${mm(shell)}` },
    judged(say`inside`, laidIn, input.targetIn, enoughIn, at(legFirst * 0.9, -laidIn / 2)),
    { at: at(r * 0.29, -r * 0.29), says: say`fillet ${mm(filletRadius)}` },
    {
      at: at(Math.min(laidIn, deep) / 2, -legFirst * 0.95),
      says: say`${count(pliesIn)} inside, ${pliesOut} outside, ${shown(ply, 2)} mm each`,
    },
    { at: at(-wall / 2, -deep * 0.92), says: say`tube ${mm(wall)}` },
  ];
  const width = sheetWidth - column;
  const first = bottom + 18;
  const rows: (readonly [to: number, says: string, start: number])[] = [
    [leg, say`longest leg ${mm(leg)}`, at(0, 0).y],
    [bevel, say`bevel ${mm(bevel)}`, at(0, shell).y],
    [out, say`plies outside to ${mm(out)}`, at(0, shell).y],
  ];
  // The shortest stands highest, so that no line runs through another's words.
  rows.sort(([a], [b]) => a - b);
  const levels = rows.map(([to, says, start], i) =>
    levelDimension({
      from: at(0, 0).x,
      to: at(to, 0).x,
      y: first + i * 18,
      starts: [bottom, start],
      says,
      right: sheetWidth,
    }),
  );
  const lowest = Math.max(first + 2 * 18 + 8, notesHeight(list, width) + 8);
  const bars = thicknessBars(
    [
      { name: say`outside`, laid: laidOut, wanted: input.targetOut, plies: pliesOut },
      { name: say`inside`, laid: laidIn, wanted: input.targetIn, plies: pliesIn },
    ],
    { x: 4, y: lowest + lineHeight + 14 },
  );
  const says = [
    say`Section through one side, the hull level with its outside up, the tube going down; plies and legs to scale, the corner drawn square.`,
    say`Hull laminate ${mm(shell)}, tube ${mm(wall)}, ${count(pliesIn)} inside and ${pliesOut} outside of ${shown(ply, 2)} mm each.`,
    say`Inside laid ${mm(laidIn)} of ${mm(input.targetIn)} wanted: ${enoughIn ? say`holds` : say`short`}; outside laid ${mm(laidOut)} of ${mm(input.targetOut)} wanted: ${enoughOut ? say`holds` : say`short`}.`,
    say`First leg ${mm(legFirst)}, longest leg ${mm(leg)}, outside plies to ${mm(out)} from the edge, bevel ${mm(bevel)} long and ${mm(bevelDepth)} deep, fillet radius ${mm(filletRadius)}.`,
  ].join(" ");
  return sheet({
    title,
    says,
    height: lowest + lineHeight + 14 + bars.height,
    content: [
      group(
        marks,
        shape(tube, { ...bold, fill: cut }),
        shape(hull, { ...bold, fill: cut }),
        path(fillet, { ...fine, fill: cut }),
        ...insidePlies,
        ...outsidePlies,
      ),
      dimensionLine(at(far * 0.9, 0), at(far * 0.9, shell)),
      line(at(0, 0), at(0, -deep), fine),
      ...levels,
      notes(list, { x: column, top: 4, bottom: lowest, width }),
      text({ x: 4, y: lowest + 10 }, say`first leg ${mm(legFirst)}; bevel ${mm(bevelDepth)} deep`, { fill: soft }),
      bars.svg,
    ],
  });
}

/** A quarter of a circle onwards to a point. */
const arcTo = (to: Point, radius: number): string =>
  `A${round(radius)} ${round(radius)} 0 0 0 ${round(to.x)} ${round(to.y)}`;

/** Lines of neighbouring plies must stay apart. */
const plyPen = (each: number): number => Math.min(0.8, Math.max(0.15, each * 0.4));
