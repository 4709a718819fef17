import { type ScaleLinear, scaleLinear } from "d3-scale";
import { rule, soft } from "./ink";
import { text, textWidth } from "./letters";
import { line } from "./mark";
import { shown } from "./number";

export type Scale = ScaleLinear<number, number>;

/** A straight scale from the values of a quantity to places on the drawing, its ends on round values. */
export const roundScale = (values: readonly number[], places: readonly [number, number], ticks = 6): Scale => {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const ends = low === high ? [low - 1, high + 1] : [low, high];
  return scaleLinear(ends, places).nice(ticks);
};

export interface Axis {
  readonly scale: Scale;
  /** Place of the axis across its own direction. */
  readonly at: number;
  /** To where the faint lines of the scale run. */
  readonly to: number;
  readonly says: string;
  readonly ticks?: number;
}

const decimalsOf = (ticks: readonly number[]): number => {
  const step = Math.abs((ticks[1] ?? 1) - (ticks[0] ?? 0));
  return step >= 1 ? 0 : Math.min(3, Math.ceil(-Math.log10(step) - 1e-9));
};

/** Scale along the bottom; a short unit stands at its right end, longer words below that. */
export function bottomAxis({ scale, at, to, says, ticks = 6 }: Axis): string {
  const list = scale.ticks(ticks);
  const decimals = decimalsOf(list);
  const [from = 0, end = 0] = scale.range();
  const marks = list.map((tick) => {
    const x = scale(tick);
    return (
      line({ x, y: at }, { x, y: to }, { width: 0.5, stroke: rule }) +
      line({ x, y: at }, { x, y: at + 3 }) +
      text({ x, y: at + 15 }, shown(tick, decimals), { anchor: "middle", fill: soft, tick: true })
    );
  });
  return [
    ...marks,
    line({ x: from, y: at }, { x: end, y: at }),
    textWidth(says) < 14
      ? text({ x: end + 5, y: at + 4 }, says, { fill: soft })
      : text({ x: end, y: at + 29 }, says, { anchor: "end", fill: soft }),
  ].join("");
}

/** Scale on the left, its quantity written above the upper end. */
export function leftAxis({ scale, at, to, says, ticks = 5 }: Axis): string {
  const list = scale.ticks(ticks);
  const decimals = decimalsOf(list);
  const [from = 0, end = 0] = scale.range();
  const top = Math.min(from, end);
  const bottom = Math.max(from, end);
  const marks = list.map((tick) => {
    const y = scale(tick);
    return (
      line({ x: at, y }, { x: to, y }, { width: 0.5, stroke: rule }) +
      line({ x: at, y }, { x: at - 3, y }) +
      // The lowest figure makes room for the scale below.
      text({ x: at - 6, y: y > bottom - 6 ? y : y + 4 }, shown(tick, decimals), {
        anchor: "end",
        fill: soft,
        tick: true,
      })
    );
  });
  return [...marks, line({ x: at, y: from }, { x: at, y: end }), text({ x: 2, y: top - 9 }, says, { fill: soft })].join(
    "",
  );
}
