import { scaleLinear } from "d3-scale";
import { say } from "../words/say";
import { bottomAxis } from "./draw/axis";
import { cut, soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { line, shape } from "./draw/mark";
import { shown, withUnit } from "./draw/number";
import { sheet } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { need } from "./need";

/** How long a pot can be used. */
export interface PotLifeInput {
  /** Pot life by the resin's sheet, at 25 °C, min. */
  readonly stated: number;
  /** Pot life of the day, min. */
  readonly today: number;
  /** Temperature of the day, °C. */
  readonly temperature: number;
  /** Share of it that is counted on. */
  readonly share: number;
  /** What is laid up a minute, kg. */
  readonly rate: number;
  /** Portion, kg, and how many. */
  readonly portion: number;
  readonly portions: number;
}

const title = say`Time that a pot can be used`;
const rowHeight = 30;

/** Pot life by the sheet and today; the filled part is what the crew counts on. */
export function potLife(input: PotLifeInput): Figure {
  return figure(title, () => {
    need(input, { stated: [0.1, 1e4], today: [0.1, 1e4], share: [0, 1], portions: [1, 1e4], rate: [0, 100] });
    return drawLife(input);
  });
}

function drawLife({ stated, today, temperature, share, rate, portion, portions }: PotLifeInput) {
  const x = scaleLinear([0, Math.max(stated, today) * 1.05], [8, 326]).nice(6);
  const rows = [
    { says: say`by the sheet, at 25 °C: ${withUnit(stated, "min", 1)}`, minutes: stated, used: 0 },
    {
      says: say`today, at ${shown(temperature)} °C: ${withUnit(today, "min", 1)}`,
      minutes: today,
      used: share * today,
    },
  ];
  const top = 16;
  const bars = rows.flatMap(({ says, minutes, used }, i) => {
    const y = top + i * (rowHeight + 8);
    const bar = (to: number, fill: string) =>
      shape(
        [
          { x: x(0), y },
          { x: x(to), y },
          { x: x(to), y: y + 12 },
          { x: x(0), y: y + 12 },
        ],
        { width: 1, fill },
      );
    return [
      text({ x: 8, y: y - 4 }, says),
      bar(minutes, "none"),
      used > 0 ? bar(used, cut) : "",
      used > 0 ? line({ x: x(used), y: y - 1 }, { x: x(used), y: y + 18 }, { width: 1.6 }) : "",
    ];
  });
  const isCapped = share * today * rate > portion * (1 + 1e-9);
  const used = say`${shown(share * 100)} % counted on: ${withUnit(share * today, "min", 1)} at ${shown(rate, 3)} kg/min${isCapped ? say`; the largest pot is` : say` make`} ${withUnit(portion, "kg", 3)}`;
  const axis = top + 2 * (rowHeight + 8) + 4;
  const foot = axis + 44;
  const count = say`${shown(portions)} ${portions === 1 ? say`portion` : say`portions`}; the rule holds between 10 and 35 °C`;
  return sheet({
    title,
    says: say`Pot life ${rows.map(({ says }) => says).join("; ")}. ${used}. ${count}.`,
    height: foot + lineHeight + 6,
    content: [
      ...bars,
      bottomAxis({ scale: x, at: axis, to: axis - 4, says: "min", ticks: 6 }),
      text({ x: 4, y: foot }, used),
      text({ x: 4, y: foot + lineHeight }, count, { fill: soft }),
    ],
  });
}
