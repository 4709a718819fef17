import { scaleBand } from "d3-scale";
import { conductorDrop } from "../functions/conductor/drop";
import { say } from "../words/say";
import { leftAxis, roundScale } from "./draw/axis";
import { cut, holds, short, soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { line, shape } from "./draw/mark";
import { shown, withUnit } from "./draw/number";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { named } from "./named";
import { need } from "./need";

/** A run of copper and what may be lost in it. */
export interface LossBySizeInput {
  /** Current, A. */
  readonly current: number;
  /** Length out and back, m. */
  readonly run: number;
  /** Conductor while running, °C. */
  readonly temperature: number;
  /** Volts that may be lost. */
  readonly limit: number;
  /** The size that is looked at, mm². */
  readonly size: number;
}

const title = say`Volts lost by size of the conductor`;
/** Sizes of IEC 60228 that come into question for a thruster. */
const sizes = [25, 35, 50, 70, 95, 120, 150] as const;
const [left, right, top, bottom] = [38, sheetWidth - 8, 34, 176];

/** What each size would lose at the same current over the same run, against what may be lost. */
export function lossBySize(input: LossBySizeInput): Figure {
  return figure(title, () => {
    need(input, { current: [0, 1e5], run: [0, 500], limit: [0, 1000], size: [0.1, 1000] });
    return drawLosses(input);
  });
}

function drawLosses({ current, run, temperature, limit, size }: LossBySizeInput) {
  const bars = sizes.map((area) => ({ area, lost: named(conductorDrop, { current, run, area, temperature }) }));
  const y = roundScale([0, limit * 1.15, ...bars.map(({ lost }) => lost)], [bottom, top], 5);
  const x = scaleBand<number>([...sizes], [left, right]).padding(0.35);
  const own = bars.find(({ area }) => area === size);
  const words = own
    ? say`${shown(size)} mm² loses ${withUnit(own.lost, "V", 2)}, ${withUnit(limit, "V", 2)} may be lost: ${own.lost <= limit ? say`holds` : say`short`}`
    : say`${withUnit(limit, "V", 2)} may be lost`;
  const judged = own && own.lost > limit ? short : holds;
  const drawn = bars.map(({ area, lost }) => {
    const [from, to] = [x(area) ?? 0, (x(area) ?? 0) + x.bandwidth()];
    const isOwn = area === size;
    return {
      bar: shape(
        [
          { x: from, y: bottom },
          { x: from, y: y(lost) },
          { x: to, y: y(lost) },
          { x: to, y: bottom },
        ],
        { width: isOwn ? 2 : 0.8, fill: lost <= limit ? cut : "none", ...(isOwn && { stroke: judged }) },
      ),
      says:
        text({ x: (from + to) / 2, y: bottom + 14 }, shown(area), {
          anchor: "middle",
          tick: true,
          ...(isOwn ? { strong: true } : { fill: soft }),
        }) +
        text({ x: (from + to) / 2, y: y(lost) - 4 }, shown(lost, 2), {
          anchor: "middle",
          rim: true,
          ...(isOwn ? { strong: true } : { fill: soft }),
        }),
    };
  });
  const foot = bottom + 44;
  const given = say`${withUnit(current, "A")}, ${withUnit(run, "m", 1)} out and back, copper at ${shown(temperature)} °C`;
  return sheet({
    title,
    says: say`At ${given}: ${bars.map(({ area, lost }) => `${shown(area)} mm² ${withUnit(lost, "V", 2)}`).join(", ")}. ${words}.`,
    height: foot + lineHeight + 6,
    content: [
      leftAxis({ scale: y, at: left, to: right, says: say`volts lost` }),
      line({ x: left, y: bottom }, { x: right, y: bottom }),
      ...drawn.map(({ bar }) => bar),
      line({ x: left, y: y(limit) }, { x: right, y: y(limit) }, { width: 1.4, dash: "6 4", stroke: short }),
      ...drawn.map(({ says }) => says),
      text({ x: right, y: bottom + 28 }, say`nominal size, mm²; filled: not above what may be lost`, {
        anchor: "end",
        fill: soft,
      }),
      text({ x: 4, y: foot }, words, { fill: judged, strong: judged === short }),
      text({ x: 4, y: foot + lineHeight }, given, { fill: soft }),
    ],
  });
}
