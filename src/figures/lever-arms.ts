import { say } from "../words/say";
import { levelDimension } from "./draw/dimension";
import { holds, short, soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { bold, centre, circle, fine, line, type Point, path, shape } from "./draw/mark";
import { withUnit } from "./draw/number";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { need } from "./need";

/** Forces on a boat that is held at one point, all distances ahead of the transom. */
export interface LeverArmsInput {
  /** Push of the wind, N. */
  readonly push: number;
  /** Where the push acts, m. */
  readonly centre: number;
  /** The held point, m. */
  readonly pivot: number;
  /** The tunnel's axis, m. */
  readonly thruster: number;
  /** Thrust that keeps the balance, N. */
  readonly needed: number;
  /** Thrust offered, N. */
  readonly offered: number;
}

const title = say`Levers about the held point`;
const left = 14;
const right = sheetWidth - 14;
const axis = 74;
const half = 26;
const longest = 40;

/** Seen from above, the bow at the right: the push and the thrust against it, each with its lever. */
export function leverArms(input: LeverArmsInput): Figure {
  return figure(title, () => {
    need(input, { push: [0, 1e6], needed: [0, 1e6], offered: [0, 1e6], centre: [0, 100], thruster: [0.1, 100] });
    return drawLevers(input);
  });
}

function arrow(tip: Point, length: number, sign: 1 | -1, stroke: string): string {
  const end = { x: tip.x, y: tip.y - sign * length };
  const head = [tip, { x: tip.x - 4, y: tip.y - sign * 8 }, { x: tip.x + 4, y: tip.y - sign * 8 }];
  return line(end, tip, { width: 2, stroke }) + shape(head, { width: 0.5, stroke, fill: stroke });
}

function drawLevers({ push, centre: acts, pivot, thruster, needed, offered }: LeverArmsInput) {
  const boat = thruster * 1.1;
  const x = (ahead: number) => left + ((right - left) * ahead) / boat;
  const enough = offered >= needed;
  const most = Math.max(push, needed, offered, 1e-9);
  const size = (force: number) => Math.max(12, (longest * force) / most);
  const bow = right - left;
  const hull = path(
    `M${left} ${axis - half}L${left + bow * 0.45} ${axis - half}Q${left + bow * 0.82} ${axis - half} ${right} ${axis}Q${left + bow * 0.82} ${axis + half} ${left + bow * 0.45} ${axis + half}L${left} ${axis + half}Z`,
    bold,
  );
  const word = enough
    ? say`offered ${withUnit(offered, "N")}: holds by ${withUnit(offered - needed, "N")}`
    : say`offered ${withUnit(offered, "N")}: short by ${withUnit(needed - offered, "N")}`;
  const leverOf = (to: number, y: number, start: number) =>
    levelDimension({
      from: x(pivot),
      to: x(to),
      y,
      starts: [axis + 6, start],
      says: withUnit(to - pivot, "m", 1),
      right: sheetWidth,
    });
  const foot = axis + half + longest + 66;
  const says = [
    say`Seen from above. The boat is held ${withUnit(pivot, "m", 1)} ahead of the transom.`,
    say`The push of ${withUnit(push, "N")} has a lever of ${withUnit(acts - pivot, "m", 1)}, the thruster one of ${withUnit(thruster - pivot, "m", 1)}: ${withUnit(needed, "N")} keep the balance.`,
    `${word.charAt(0).toUpperCase()}${word.slice(1)}.`,
  ].join(" ");
  return sheet({
    title,
    says,
    height: foot + 2 * lineHeight,
    content: [
      hull,
      line({ x: left - 6, y: axis }, { x: right + 6, y: axis }, centre),
      line({ x: x(thruster), y: axis - half * 0.55 }, { x: x(thruster), y: axis + half * 0.55 }, fine),
      circle({ x: x(pivot), y: axis }, 5, { width: 1.5 }),
      circle({ x: x(pivot), y: axis }, 1.6, { fill: "currentColor" }),
      arrow({ x: x(acts), y: axis - half }, size(push), 1, "currentColor"),
      arrow({ x: x(thruster), y: axis + half * 0.55 }, size(needed), -1, enough ? holds : short),
      text({ x: x(acts) - 7, y: axis - half - size(push) + 10 }, say`push ${withUnit(push, "N")}`, { anchor: "end" }),
      text({ x: x(pivot) + 8, y: axis - 7 }, say`held`, { fill: soft }),
      text({ x: x(thruster) - 7, y: axis + half + size(needed) - 8 }, say`needed ${withUnit(needed, "N")}`, {
        anchor: "end",
        rim: true,
      }),
      leverOf(acts, axis + half + longest + 12, axis + half),
      leverOf(thruster, axis + half + longest + 38, axis + half + size(needed)),
      text({ x: 4, y: foot }, word, { fill: enough ? holds : short, strong: !enough }),
      text({ x: 4, y: foot + lineHeight }, say`seen from above, bow at the right; distances along the boat to scale`, {
        fill: soft,
      }),
    ],
  });
}
