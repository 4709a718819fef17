import { say } from "../../words/say";
import { type CurvedSideInput, curvedSide } from "../curved-side";
import { mm, shown } from "../draw/number";
import { need } from "../need";
import { type TrimInput, type TrimPoint, trimPoints } from "../trim-points";
import { mirrored, type Side, type Template, type TemplateLine, type TemplateText } from "./template";

/** Numbers of the template that is wrapped round the tube's end. */
export interface WrapTemplateInput extends TrimInput {
  /** Half-breadth of the hull at the tunnel's axis, mm: where the mean line lies from the centreplane. */
  readonly halfBreadth: number;
}

/** Paper below the lowest point of the cut line, mm: enough to hold and tape. */
const hem = 60;
const marksEvery = 15;
const names: Readonly<Record<number, string>> = {
  0: say`top`,
  90: say`forward`,
  180: say`bottom`,
  270: say`aft`,
  360: say`top`,
};

/**
 * The paper that is wrapped round the outside of the tube, printed face out, outboard up: cut line, mean line, a mark
 * every 15 degrees. Its ends meet at the top of the tube, its straight edge must meet itself.
 *
 * @param side seen from outside the tube with outboard up, forward of the top is right to port and left to starboard.
 * @throws Fault as `TUNNEL.TRIM` does, and for a number that is missing.
 */
export function wrapTemplate(input: WrapTemplateInput, side: Side): Template {
  need(input);
  return wrapped(input.outside, input.halfBreadth, (count) => trimPoints(input, count), say`flat side`, side);
}

/** The same for a side whose offsets were measured on a grid. @throws Fault as the `HULL.` functions do. */
export function curvedWrapTemplate(input: CurvedSideInput, side: Side): Template {
  const { mean, points } = curvedSide(input);
  return wrapped(input.outside, mean, points, say`curved side`, side);
}

function wrapped(
  outside: number,
  mean: number,
  points: (count: number) => TrimPoint[],
  shape: string,
  side: Side,
): Template {
  const girth = Math.PI * outside;
  const curve = points(360).map(({ girth: x, trim: y }) => ({ x, y }));
  const first = curve[0] ?? { x: 0, y: 0 };
  curve.push({ x: girth, y: first.y });
  const heights = curve.map(({ y }) => y);
  const bottom = Math.min(...heights) - hem;
  const top = Math.max(...heights) + 12;
  const trims = points(360 / marksEvery);
  const marks = [...trims, { angle: 360, girth, trim: first.y, number: 1 }];
  const lines: TemplateLine[] = [
    { purpose: "cut", points: curve },
    { purpose: "cut", points: [first, { x: 0, y: bottom }, { x: girth, y: bottom }, { x: girth, y: first.y }] },
    {
      purpose: "mark",
      points: [
        { x: 0, y: 0 },
        { x: girth, y: 0 },
      ],
    },
    ...marks.slice(1, -1).map(
      ({ angle, girth: x, trim }): TemplateLine => ({
        purpose: angle % 90 === 0 ? "mark" : "note",
        points: [
          { x, y: bottom },
          { x, y: trim },
        ],
      }),
    ),
  ];
  const inward = (angle: number) => (angle === 0 ? 1.5 : angle === 360 ? -1.5 : 1.5);
  const texts: TemplateText[] = marks.flatMap(({ angle, girth: x }): TemplateText[] => {
    const anchor = angle === 360 ? "end" : "start";
    const at = { x: x + inward(angle), y: bottom + 3 };
    const degree: TemplateText = { at, says: `${angle}°`, size: 3.5, anchor };
    const name = names[angle];
    return name ? [degree, { at: { x: at.x, y: bottom + 9 }, says: name, size: 5, anchor }] : [degree];
  });
  texts.push(
    // At the end of the paper they stand on one sheet, whatever the paper.
    { at: { x: 1.5, y: bottom + 18 }, says: say`${side}, outboard is up, printed face out`, size: 4.5 },
    {
      at: { x: 1.5, y: bottom + 25 },
      says: say`mean line ${mm(mean)} from the centreplane`,
      size: 4.5,
    },
  );
  const template: Template = {
    title: say`Wrap template, ${side}`,
    note: say`tube ${mm(outside)} outside, ${shown(girth, 1)} mm round, ${shape}`,
    says: [
      say`Wrap round the outside of the tube on the ${side} side, printed face out, outboard up; the ends meet at the top.`,
      say`For a ${shape}: outside diameter ${mm(outside)}, ${shown(girth, 1)} mm round; the mean line lies ${mm(mean)} from the centreplane.`,
      say`Cut line against the mean every 15°, in mm: ${trims.map(({ angle, trim }) => `${angle}°: ${shown(trim, 1)}`).join(", ")}.`,
    ].join(" "),
    lines,
    texts,
    left: 0,
    right: girth,
    bottom,
    top,
  };
  return side === "port" ? template : mirrored(template);
}
