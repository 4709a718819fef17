import { say } from "../words/say";
import { bottomAxis, leftAxis, roundScale } from "./draw/axis";
import { holds, short, soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { circle, line } from "./draw/mark";
import { type Note, notes, notesHeight } from "./draw/notes";
import { percent, shown } from "./draw/number";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { need } from "./need";

/** One option of the comparison. */
export interface OptionMark {
  readonly option: string;
  /** Price with contingency, money. */
  readonly price: number;
  /** Margin of the thrust at the bow over need and spare, a share; from 0 it holds. */
  readonly margin: number;
  /** Checks that fall short. */
  readonly short: number;
  /** Checks that could not be worked out. */
  readonly open: number;
}

const title = say`Options: margin of thrust against price`;
const column = 238;

/** Price against margin of thrust; an option that a check rules out carries a cross. */
export function optionsCompared(options: readonly OptionMark[]): Figure {
  return figure(title, () => {
    need({ options: options.length }, { options: [1, 40] });
    for (const { option, ...numbers } of options) {
      need(Object.fromEntries(Object.entries(numbers).map(([name, value]) => [say`${name} of ${option}`, value])));
    }
    return drawOptions(options);
  });
}

const verdict = ({ short: few, open }: OptionMark): string =>
  few > 0 ? say`ruled out, ${few} short` : open > 0 ? say`not judged, ${open} open` : say`all hold`;

function drawOptions(options: readonly OptionMark[]) {
  const top = 26;
  const bottom = 196;
  const prices = options.map(({ price }) => price);
  const spare = (Math.max(...prices) - Math.min(...prices)) * 0.15 || Math.abs(prices[0] ?? 1) * 0.1 || 1;
  const x = roundScale([Math.min(...prices) - spare, Math.max(...prices) + spare], [44, column - 26], 4);
  const y = roundScale(
    [
      Math.min(0, ...options.map(({ margin }) => margin * 100)) - 4,
      Math.max(10, ...options.map(({ margin }) => margin * 100)) + 4,
    ],
    [bottom, top],
  );
  const [, right = 0] = x.range();
  const marks = options.map((mark) => {
    const at = { x: x(mark.price), y: y(mark.margin * 100) };
    if (mark.short > 0) {
      const cross = [-1, 1].map((sign) =>
        line({ x: at.x - 5, y: at.y - 5 * sign }, { x: at.x + 5, y: at.y + 5 * sign }, { width: 1.6, stroke: short }),
      );
      return circle(at, 5, { width: 1, stroke: short }) + cross.join("");
    }
    return mark.open > 0
      ? circle(at, 5, { width: 1.4, dash: "2 2" })
      : circle(at, 5, { width: 1.4, stroke: holds, fill: holds });
  });
  const words: Note[] = options.map((mark) => ({
    at: { x: x(mark.price), y: y(mark.margin * 100) },
    says: `${mark.option}: ${percent(mark.margin)}, ${shown(mark.price)}; ${verdict(mark)}`,
    fill: mark.short > 0 ? short : mark.open > 0 ? soft : holds,
  }));
  const width = sheetWidth - column;
  const lowest = Math.max(bottom + 34, notesHeight(words, width) + 12);
  const says = options
    .map(
      (mark) =>
        say`${mark.option}: margin of thrust ${percent(mark.margin)}, price with contingency ${shown(mark.price)}, ${verdict(mark)}.`,
    )
    .join(" ");
  return sheet({
    title,
    says,
    height: lowest + lineHeight + 4,
    content: [
      leftAxis({ scale: y, at: 44, to: right, says: say`margin of thrust, %` }),
      bottomAxis({ scale: x, at: bottom, to: top, says: say`price with contingency`, ticks: 4 }),
      line({ x: 44, y: y(0) }, { x: right, y: y(0) }, { width: 1.2, dash: "6 3", stroke: short }),
      ...marks,
      notes(words, { x: column, top: 14, bottom: lowest, width }),
      text({ x: 4, y: lowest + 10 }, say`filled: all checks hold; crossed: ruled out; dashed: not judged`, {
        fill: soft,
      }),
    ],
  });
}
