import { line as curve } from "d3-shape";
import { windLimit } from "../functions/wind/limit";
import { say } from "../words/say";
import { bottomAxis, leftAxis, roundScale } from "./draw/axis";
import { holds, rule, short, soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { circle, line, path, round } from "./draw/mark";
import { type Note, notes, notesHeight } from "./draw/notes";
import { shown, withUnit } from "./draw/number";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { named } from "./named";
import { need } from "./need";

/** Numbers of the side force. */
export interface PushAgainstWindInput {
  /** Wind to be held, m/s. */
  readonly wind: number;
  /** Thrust needed at the bow in that wind, N. */
  readonly thrustNeeded: number;
  /** Spare wanted over the thrust needed, a factor. */
  readonly spare: number;
  /** Thrust at the bow, N. */
  readonly thrust: number;
}

const title = say`Thrust needed against wind`;
const column = 262;
const forces = Array.from({ length: 12 }, (_, force) => force);

/** Thrust needed grows with the square of the wind; where it meets the thrust at the bow, the unit holds no more. */
export function pushAgainstWind(input: PushAgainstWindInput): Figure {
  return figure(title, () => {
    need(input, { wind: [0.01, 80], thrustNeeded: [0.01, 1e7], spare: [0.1, 10], thrust: [0, 1e7] });
    return drawPush(input);
  });
}

function drawPush({ wind, thrustNeeded, spare, thrust }: PushAgainstWindInput) {
  const needed = (speed: number) => thrustNeeded * (speed / wind) ** 2;
  const held = wind * Math.sqrt(thrust / thrustNeeded);
  const wanted = thrustNeeded * spare;
  const enough = thrust >= wanted;
  const end = Math.max(wind, held) * 1.25;
  const top = 40;
  const bottom = 210;
  const x = roundScale([0, end], [38, column - 14], 5);
  const y = roundScale([0, Math.max(needed(end), thrust, wanted) * 1.05], [bottom, top]);
  const [, right = 0] = x.range();
  const last = x.invert(right);
  const list = Array.from({ length: 61 }, (_, i) => (last * i) / 60).filter((speed) => y(needed(speed)) >= top - 2);
  const d =
    curve<number>(
      (speed) => Number(round(x(speed))),
      (speed) => Number(round(y(needed(speed)))),
    )(list) ?? "";
  // Beaufort's forces along the top; one that has no room for its figure keeps its line.
  let free = Number.NEGATIVE_INFINITY;
  const beaufort = forces.map((force) => {
    const place = x(named(windLimit, { force }));
    if (place > right) return "";
    const mark = line({ x: place, y: top - 6 }, { x: place, y: bottom }, { width: 0.4, dash: "1 3", stroke: rule });
    if (place < free + 12) return mark;
    free = place;
    return mark + text({ x: place, y: top - 9 }, String(force), { anchor: "middle", tick: true, fill: soft });
  });
  const words: Note[] = [
    { at: { x: right, y: y(thrust) }, says: say`thrust at the bow ${withUnit(thrust, "N")}`, strong: true },
    { at: { x: x(held), y: y(thrust) }, says: say`holds up to ${withUnit(held, "m/s", 1)}` },
    {
      at: { x: x(wind), y: y(wanted) },
      says: say`wanted ${withUnit(wanted, "N")} at ${withUnit(wind, "m/s", 1)}${enough ? say`: holds` : say`: short`}`,
      fill: enough ? holds : short,
      strong: !enough,
    },
    { at: { x: x(wind), y: y(thrustNeeded) }, says: say`needed ${withUnit(thrustNeeded, "N")}` },
  ];
  const width = sheetWidth - column;
  const lowest = Math.max(bottom + 30, notesHeight(words, width) + 12);
  const says = [
    say`In the wind to be held, ${withUnit(wind, "m/s", 1)}, the thrust needed is ${withUnit(thrustNeeded, "N")}; with a spare of ${shown(spare, 2)} times ${withUnit(wanted, "N")}.`,
    say`Thrust at the bow ${withUnit(thrust, "N")}: ${enough ? say`holds` : say`falls short`}.`,
    say`Without spare the unit holds up to ${withUnit(held, "m/s", 1)}.`,
  ].join(" ");
  return sheet({
    title,
    says,
    height: lowest + lineHeight + 4,
    content: [
      text({ x: 60, y: 13 }, say`upper limits of Beaufort's forces, below`, { fill: soft }),
      leftAxis({ scale: y, at: 38, to: right, says: "N" }),
      bottomAxis({ scale: x, at: bottom, to: top, says: say`wind, m/s`, ticks: 5 }),
      ...beaufort,
      line({ x: 38, y: y(thrust) }, { x: right, y: y(thrust) }, { width: 1.2, dash: "6 3" }),
      path(d, { width: 1.8 }),
      line(
        { x: x(wind), y: bottom },
        { x: x(wind), y: y(wanted) },
        { width: 0.8, dash: "2 2", stroke: enough ? holds : short },
      ),
      circle({ x: x(wind), y: y(thrustNeeded) }, 2.2, { fill: "currentColor" }),
      circle({ x: x(wind), y: y(wanted) }, 3, { width: 1.4, stroke: enough ? holds : short }),
      circle({ x: x(held), y: y(thrust) }, 2.6, { width: 1.2 }),
      notes(words, { x: column, top: 20, bottom: lowest, width }),
      text({ x: 4, y: lowest + 10 }, say`spare ${shown(spare, 2)} times the thrust needed`, { fill: soft }),
    ],
  });
}
