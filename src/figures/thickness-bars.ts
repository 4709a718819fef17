import { say } from "../words/say";
import { cut, holds, short, soft } from "./draw/ink";
import { text } from "./draw/letters";
import { line, type Point, shape } from "./draw/mark";

/** One side of a joint. */
export interface ThicknessBar {
  readonly name: string;
  /** Thickness laid, mm. */
  readonly laid: number;
  /** Thickness wanted, mm. */
  readonly wanted: number;
  /** Plies, whole. */
  readonly plies: number;
}

const rowHeight = 20;
const left = 52;
const length = 290;

/** Thickness laid, ply by ply, against a mark at the thickness wanted; all bars have one scale. */
export function thicknessBars(bars: readonly ThicknessBar[], at: Point): { svg: string; height: number } {
  const most = Math.max(...bars.flatMap(({ laid, wanted }) => [laid, wanted]), 1e-6);
  const rows = bars.map(({ name, laid, wanted, plies }, i) => {
    const y = at.y + i * rowHeight;
    const x = (thickness: number) => at.x + left + (thickness / most) * length;
    const between = Array.from({ length: Math.max(0, plies - 1) }, (_, k) => x((laid * (k + 1)) / plies));
    const judged = laid >= wanted ? holds : short;
    return [
      text({ x: at.x, y: y + 10 }, name, { fill: soft }),
      shape(
        [
          { x: x(0), y },
          { x: x(laid), y },
          { x: x(laid), y: y + 12 },
          { x: x(0), y: y + 12 },
        ],
        { width: 1, fill: cut },
      ),
      ...between.map((place) => line({ x: place, y }, { x: place, y: y + 12 }, { width: 0.4 })),
      line({ x: x(wanted), y: y - 4 }, { x: x(wanted), y: y + 16 }, { width: 2, stroke: judged }),
      shape(
        [
          { x: x(wanted), y: y - 1 },
          { x: x(wanted) - 4, y: y - 7 },
          { x: x(wanted) + 4, y: y - 7 },
        ],
        { width: 0.5, stroke: judged, fill: judged },
      ),
    ].join("");
  });
  const y = at.y + bars.length * rowHeight + 12;
  return {
    svg: [
      ...rows,
      text({ x: at.x, y }, say`thickness laid, ply by ply; the mark is the thickness wanted`, { fill: soft }),
    ].join("\n"),
    height: bars.length * rowHeight + 18,
  };
}
