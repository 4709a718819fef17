import { withinRange } from "../../study/sentences";
import { rising } from "../../study/spread/convergence";
import { percentiles, type ResultSpread } from "../../study/spread/summary";
import { say } from "../../words/say";
import { bottomAxis, roundScale } from "../draw/axis";
import { cut, short, soft } from "../draw/ink";
import { lineHeight, text } from "../draw/letters";
import { line, shape } from "../draw/mark";
import { hangingNotes, type Note } from "../draw/notes";
import { sheet, sheetWidth } from "../draw/sheet";
import { type Figure, figure } from "../figure";
import { need } from "../need";
import { brief, withUnitOf } from "./brief";

const bins = 48;

/** How many of the sorted values lie below a limit. */
function below(sorted: Float64Array, limit: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) < limit) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** How often a result comes out where, with P10 to P90 on its scale; the rare ends past 0.5 % are not drawn out. */
export function resultSpread(result: ResultSpread): Figure {
  const { name, unit } = result;
  const sorted = rising(result.values);
  const title = say`How ${name} spreads`;
  return figure(title, () => {
    need({ trials_with_a_number: sorted.length }, { trials_with_a_number: [2, 1e7] });
    const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] as number;
    const zero = result.isCheck ? [0] : [];
    const [least, highest] = [Math.min(at(0.005), ...zero), Math.max(at(0.995), ...zero)];
    const top = 16;
    const bottom = 128;
    const x = roundScale([least, highest], [22, sheetWidth - 98], 5);
    const [low = 0, high = 0] = x.domain();
    const edges = Array.from({ length: bins + 1 }, (_, i) => low + ((high - low) * i) / bins);
    const counts = edges.slice(1).map((edge, i) => below(sorted, edge) - below(sorted, edges[i] as number));
    const tallest = Math.max(...counts, 1);
    const y = (count: number) => bottom - ((bottom - top) * count) / tallest;
    const columns = counts.map((count, i) => {
      const [from, to] = [x(edges[i] as number), x(edges[i + 1] as number)];
      const corners = [
        { x: from, y: bottom },
        { x: from, y: y(count) },
        { x: to, y: y(count) },
        { x: to, y: bottom },
      ];
      return count === 0 ? "" : shape(corners, { width: 0.5, fill: cut });
    });
    const notes = percentiles.map((share, i): Note & { readonly share: number } => ({
      share,
      at: { x: x(result.percentiles[i] as number), y: bottom },
      says: `P${100 * share} ${withinRange(result.percentiles[i] as number, result.least, result.most)}`,
      strong: share === 0.5 || share === 0.8,
    }));
    const words = bottom + 44;
    const holds = result.isCheck
      ? [
          line({ x: x(0), y: top - 6 }, { x: x(0), y: bottom }, { width: 1.4, dash: "6 3", stroke: short }),
          text({ x: x(0) + 4, y: top - 2 }, say`holds from here`, { fill: short, rim: true }),
        ]
      : [];
    const says = say`${sorted.length} trials, mean ${withUnitOf(result.mean, unit)}, standard deviation ${brief(result.deviation)}. ${notes.map((note) => note.says).join(", ")}. From ${brief(result.least)} to ${withUnitOf(result.most, unit)}.`;
    return sheet({
      title,
      says,
      height: words + notes.length * lineHeight + 18,
      content: [
        ...columns,
        bottomAxis({ scale: x, at: bottom, to: bottom - 3, says: "", ticks: 5 }),
        ...notes.map(({ at: { x: place } }) =>
          line({ x: place, y: bottom }, { x: place, y: top }, { width: 0.9, dash: "3 2" }),
        ),
        ...holds,
        hangingNotes(notes, words, bottom + 20),
        text(
          { x: 4, y: words + notes.length * lineHeight + 8 },
          say`${unit === "1" ? "" : `${unit}; `}mean ${brief(result.mean)}, standard deviation ${brief(result.deviation)}`,
          { fill: soft },
        ),
      ],
    });
  });
}
