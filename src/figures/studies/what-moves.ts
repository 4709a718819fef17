import type { MovesAnswer } from "../../study/moves";
import { valueWords } from "../../study/words";
import { say } from "../../words/say";
import { bottomAxis, roundScale } from "../draw/axis";
import { cut, soft } from "../draw/ink";
import { text, wrap } from "../draw/letters";
import { line, shape } from "../draw/mark";
import { sheet } from "../draw/sheet";
import { type Figure, figure } from "../figure";
import { need } from "../need";
import { brief, withUnitOf } from "./brief";

const most = 14;
const width = 560;
const left = 210;
const rowHeight = 21;

/** A bar for each input from the result at one end of its range to the result at the other, the largest first. */
export function whatMoves({ result, unit, now, moves }: MovesAnswer): Figure {
  const title = say`What moves ${result}`;
  return figure(title, () => {
    const shown = moves.filter(({ over }) => over !== undefined && over > 0).slice(0, most);
    need({ inputs_with_a_range: shown.length, result: now }, { inputs_with_a_range: [1, most] });
    const ends = shown.flatMap(({ atLow = now, atHigh = now }) => [atLow, atHigh]);
    const top = 30;
    const bottom = top + shown.length * rowHeight;
    const x = roundScale([now, ...ends], [left, width - 46], 5);
    const bars = shown.map(({ name, atLow = now, atHigh = now }, i) => {
      const y = top + i * rowHeight + 4;
      const [from, to] = [Math.min(x(atLow), x(atHigh)), Math.max(x(atLow), x(atHigh))];
      const height = rowHeight - 8;
      const corners = [
        { x: from, y },
        { x: to, y },
        { x: to, y: y + height },
        { x: from, y: y + height },
      ];
      // The end at the high value is marked, so that the direction shows without colour.
      const highEnd = x(atHigh);
      return [
        shape(corners, { width: 0.8, fill: cut }),
        line({ x: highEnd, y: y - 1 }, { x: highEnd, y: y + height + 1 }, { width: 3 }),
        text({ x: left - 12, y: y + height - 3 }, wrap(name, left - 16)[0] ?? name, { anchor: "end" }),
      ].join("");
    });
    const says = [
      say`${result} is ${withUnitOf(now, unit)}.`,
      ...shown.map(
        ({ name, low = null, high = null, atLow = now, atHigh = now, unit: own }) =>
          say`${name} from ${valueWords(low, "")} to ${valueWords(high, own)}: ${brief(atLow)} to ${withUnitOf(atHigh, unit)}.`,
      ),
    ].join(" ");
    return sheet({
      title,
      says,
      width,
      height: bottom + 46,
      content: [
        bottomAxis({ scale: x, at: bottom + 2, to: top - 4, says: unit === "1" ? "" : unit, ticks: 5 }),
        ...bars,
        line({ x: x(now), y: top - 8 }, { x: x(now), y: bottom + 2 }, { width: 1.2, dash: "5 3" }),
        text({ x: x(now), y: top - 12 }, say`now ${withUnitOf(now, unit)}`, { anchor: "middle", rim: true }),
        text({ x: 4, y: bottom + 40 }, say`thick end: the input's high value, or the choice with most`, { fill: soft }),
      ],
    });
  });
}
