import { soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { shown } from "./draw/number";
import { sheetWidth } from "./draw/sheet";
import type { TrimPoint } from "./trim-points";

const columns = 6;

/** The points of a cut line as a small table, its first line at `top`. */
export function trimTable(points: readonly TrimPoint[], top: number): { svg: string; height: number } {
  const cells = points.map(({ number, trim }, i) => {
    const y = top + Math.floor(i / columns) * lineHeight;
    const x = 8 + ((i % columns) * (sheetWidth - 12)) / columns;
    return (
      text({ x: x + 12, y }, String(number), { anchor: "end", fill: soft, tick: true }) +
      text({ x: x + 52, y }, shown(trim, 1), { anchor: "end" })
    );
  });
  return { svg: cells.join(""), height: Math.ceil(points.length / columns) * lineHeight };
}
