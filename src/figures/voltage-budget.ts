import { said, say } from "../words/say";
import { bottomAxis, roundScale } from "./draw/axis";
import { holds, short, soft } from "./draw/ink";
import { text } from "./draw/letters";
import { line, polyline } from "./draw/mark";
import { shown, withUnit } from "./draw/number";
import { sheet } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { need } from "./need";

/** Numbers of the way from battery to motor. */
export interface VoltageBudgetInput {
  /** Volts of the bank at rest, V. */
  readonly rest: number;
  /** What is lost on the way, in its order, V each. */
  readonly losses: readonly { readonly what: string; readonly volts: number }[];
  /** Least volts wanted at the motor, V. */
  readonly least: number;
  /** Current that flows, A. */
  readonly current: number;
  /** What the least volts are called where they are not the least that is wanted. */
  readonly called?: string;
}

const title = say`Volts from the battery to the motor`;
const left = 96;
const right = 300;
const rowHeight = 21;

/** Volts step down line by line, against the least that the motor wants. */
export function voltageBudget(input: VoltageBudgetInput): Figure {
  return figure(title, () => {
    need(input);
    for (const { what, volts } of input.losses) need({ [`volts lost, ${what}`]: volts });
    return drawBudget(input);
  });
}

function drawBudget({ rest, losses, least, current, called = say`least wanted` }: VoltageBudgetInput) {
  const ends: number[] = [];
  for (const { volts } of losses) ends.push((ends.at(-1) ?? rest) - volts);
  const motor = ends.at(-1) ?? rest;
  const enough = motor >= least;
  const spare = Math.abs(rest - Math.min(motor, least)) * 0.12 || 0.1;
  const x = roundScale([Math.min(motor, least) - spare, rest + spare], [left, right], 5);
  const top = 22;
  const row = (k: number) => top + k * rowHeight;
  const stations = [say`at rest`, ...losses.map(({ what }) => said(what)), say`at the motor`];
  const bottom = row(stations.length);
  const volts = [rest, ...ends];
  const steps = volts.flatMap((value, k) => [
    { x: x(value), y: row(k) },
    { x: x(value), y: row(k + 1) },
  ]);
  steps.push({ x: x(motor), y: bottom });
  const names = stations.map((name, k) =>
    text({ x: left - 8, y: row(k) + 14 }, name, { anchor: "end", strong: k === stations.length - 1 }),
  );
  const values = stations.map((_, k) => {
    const y = row(k) + 14;
    if (k === 0) return text({ x: right + 8, y }, withUnit(rest, "V", 2));
    if (k === stations.length - 1) {
      return text({ x: right + 8, y }, withUnit(motor, "V", 2), { strong: true, fill: enough ? holds : short });
    }
    return text({ x: right + 8, y }, withUnit(-(losses[k - 1]?.volts ?? 0), "V", 2));
  });
  const limit = x(least);
  const word = enough
    ? say`holds by ${withUnit(motor - least, "V", 2)}`
    : say`short by ${withUnit(least - motor, "V", 2)}`;
  const says = [
    say`At ${withUnit(current, "A")} the volts fall from ${withUnit(rest, "V", 2)} at rest to ${withUnit(motor, "V", 2)} at the motor, ${withUnit(rest - motor, "V", 2)} in all.`,
    say`Lost: ${losses.map(({ what, volts: lost }) => `${said(what)} ${withUnit(-lost, "V", 2)}`).join(", ")}.`,
    `${called.charAt(0).toUpperCase()}${called.slice(1)} ${withUnit(least, "V", 2)}: ${word}.`,
  ].join(" ");
  return sheet({
    title,
    says,
    height: bottom + 48,
    content: [
      bottomAxis({ scale: x, at: bottom, to: top, says: say`volts`, ticks: 5 }),
      ...stations.map((_, k) =>
        line(
          { x: 4, y: row(k + 1) },
          { x: 356, y: row(k + 1) },
          { width: 0.4, stroke: "var(--rule, light-dark(#d9d2c1, #3a434b))" },
        ),
      ),
      line({ x: limit, y: top - 4 }, { x: limit, y: bottom }, { width: 1, dash: "6 4", stroke: short }),
      polyline(steps, { width: 2 }),
      text({ x: 4, y: 12 }, `${called} ${withUnit(least, "V", 2)}: ${word}`, {
        fill: enough ? holds : short,
        strong: !enough,
      }),
      text({ x: 4, y: bottom + 41 }, say`at ${withUnit(current, "A")}, ${shown(rest - motor, 2)} V lost on the way`, {
        fill: soft,
      }),
      ...names,
      ...values,
    ],
  });
}
