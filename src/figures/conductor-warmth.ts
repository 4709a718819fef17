import { line as curve } from "d3-shape";
import { conductorWarm } from "../functions/conductor/warm";
import { say } from "../words/say";
import { bottomAxis, leftAxis, roundScale } from "./draw/axis";
import { holds, short, soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { circle, line, path, round } from "./draw/mark";
import { type Note, notes, notesHeight } from "./draw/notes";
import { shown, withUnit } from "./draw/number";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { named } from "./named";
import { need } from "./need";

/** Numbers of a conductor that warms while the thruster runs. */
export interface ConductorWarmthInput {
  /** Nominal area of one conductor, mm2. */
  readonly area: number;
  /** Current in one conductor, A. */
  readonly current: number;
  /** Longest run, s. */
  readonly seconds: number;
  /** Ambient along the conductor, degC. */
  readonly ambient: number;
  /** Carrying current of one conductor, A. */
  readonly carry: number;
  /** Limit of the conductor in the table that gives the carrying current, degC. */
  readonly rated: number;
  /** Ambient of that table, degC. */
  readonly base: number;
  /** Lowest limit along the run, degC. */
  readonly most: number;
}

const title = say`Conductor's temperature over two runs`;
const column = 264;
const points = 60;

/** Temperature against time over the longest run and a second one straight on, with the limits. */
export function conductorWarmth(input: ConductorWarmthInput): Figure {
  return figure(title, () => {
    need(input, { seconds: [1, 1e5] });
    return drawWarmth(input);
  });
}

function drawWarmth(input: ConductorWarmthInput) {
  const { area, current, ambient, carry, rated, base, most } = input;
  const after = (seconds: number) =>
    named(conductorWarm, { area, current, seconds, ambient, start: ambient, carry, rated, base });
  const end = 2 * input.seconds;
  const list = Array.from({ length: points + 1 }, (_, i) => ({ t: (end * i) / points, T: after((end * i) / points) }));
  const first = after(input.seconds);
  const second = after(end);
  const enough = second <= most;
  const top = 26;
  const bottom = 196;
  const x = roundScale([0, end], [34, column - 14], 5);
  const y = roundScale([Math.min(ambient, 0), Math.max(rated, most, second) * 1.04], [bottom, top]);
  const d =
    curve<{ t: number; T: number }>(
      ({ t }) => Number(round(x(t))),
      ({ T }) => Number(round(y(T))),
    )(list) ?? "";
  const right = x.range()[1] ?? 0;
  const limits = [
    { value: most, pen: { width: 1.1, dash: "6 3", stroke: short } },
    { value: rated, pen: { width: 0.8, dash: "2 3" } },
  ].map(({ value, pen }) => line({ x: 34, y: y(value) }, { x: right, y: y(value) }, pen));
  const words: Note[] = [
    { at: { x: right, y: y(most) }, says: say`lowest limit ${withUnit(most, "°C")}` },
    { at: { x: right, y: y(rated) }, says: say`table's limit ${withUnit(rated, "°C")}` },
    {
      at: { x: x(end), y: y(second) },
      says: say`second run ${withUnit(second, "°C")}${enough ? say`: holds` : say`: too hot`}`,
      fill: enough ? holds : short,
      strong: !enough,
    },
    { at: { x: x(input.seconds), y: y(first) }, says: say`first run ${withUnit(first, "°C")}` },
  ];
  const width = sheetWidth - column;
  const lowest = Math.max(bottom + 30, notesHeight(words, width) + 10);
  const says = [
    say`One conductor of ${withUnit(area, "mm²")} at ${withUnit(current, "A")}, starting from ${withUnit(ambient, "°C")}.`,
    say`After the longest run of ${withUnit(input.seconds, "s")} ${withUnit(first, "°C")}, after a second one straight on ${withUnit(second, "°C")}.`,
    say`Lowest limit along the run ${withUnit(most, "°C")}: ${enough ? say`holds` : say`falls short`}; limit of the table ${withUnit(rated, "°C")}.`,
  ].join(" ");
  return sheet({
    title,
    says,
    height: lowest + lineHeight + 4,
    content: [
      leftAxis({ scale: y, at: 34, to: right, says: "°C" }),
      bottomAxis({ scale: x, at: bottom, to: top, says: "s", ticks: 5 }),
      ...limits,
      line({ x: x(input.seconds), y: bottom }, { x: x(input.seconds), y: y(first) }, { width: 0.6, dash: "2 2" }),
      path(d, { width: 1.8 }),
      circle({ x: x(input.seconds), y: y(first) }, 2.2, { fill: "currentColor" }),
      circle({ x: x(end), y: y(second) }, 2.2, { fill: "currentColor" }),
      notes(words, { x: column, top: 8, bottom: lowest, width }),
      text(
        { x: 4, y: lowest + 10 },
        say`${shown(area)} mm² at ${withUnit(current, "A")}, from ${withUnit(ambient, "°C")}; runs of ${withUnit(input.seconds, "s")}`,
        { fill: soft },
      ),
    ],
  });
}
