import { convergenceOf } from "../../study/spread/convergence";
import type { ResultSpread } from "../../study/spread/summary";
import { say } from "../../words/say";
import { bottomAxis, leftAxis, roundScale } from "../draw/axis";
import { cut, soft } from "../draw/ink";
import { text } from "../draw/letters";
import { circle, polyline, shape } from "../draw/mark";
import { sheet, sheetWidth } from "../draw/sheet";
import { type Figure, figure } from "../figure";
import { need } from "../need";
import { brief, withUnitOf } from "./brief";

/** P50 and P80 as the trials add up, the P80 with the band of two standard errors: whether more trials would say more. */
export function spreadSettling(result: ResultSpread): Figure {
  const { name, unit, least, most } = result;
  const convergence = convergenceOf(result);
  const title = say`How ${name} settles with the trials`;
  return figure(title, () => {
    need({ batches: convergence.length, range: most - least }, { batches: [2, 1000], range: [1e-300, 1e300] });
    const [top, bottom, leftmost, right] = [26, 118, 58, sheetWidth - 66];
    const bands = convergence.map(({ p80, error80 }) => {
      const reach = Number.isNaN(error80) ? 0 : 2 * error80;
      return { low: p80 - reach, high: p80 + reach };
    });
    const last = convergence.at(-1) as (typeof convergence)[number];
    const x = roundScale([0, last.trials], [leftmost, right], 5);
    const y = roundScale(
      [...convergence.map(({ p50 }) => p50), ...bands.flatMap((one) => [one.low, one.high])],
      [bottom, top],
    );
    const line = (of: (one: (typeof convergence)[number]) => number) =>
      convergence.map((one) => ({ x: x(one.trials), y: y(of(one)) }));
    const outline = [
      ...bands.map(({ high }, i) => ({ x: x(convergence[i]?.trials ?? 0), y: y(high) })),
      ...bands.map(({ low }, i) => ({ x: x(convergence[i]?.trials ?? 0), y: y(low) })).reverse(),
    ];
    const error = withUnitOf(Number(last.error80.toPrecision(2)), unit);
    return sheet({
      title,
      says: say`After ${last.trials} trials P50 is ${withUnitOf(last.p50, unit)} and P80 ${withUnitOf(last.p80, unit)}, with a standard error of ${error}. After ${convergence[0]?.trials ?? 0} trials they were ${brief(convergence[0]?.p50 ?? 0)} and ${brief(convergence[0]?.p80 ?? 0)}.`,
      height: bottom + 64,
      content: [
        leftAxis({ scale: y, at: leftmost, to: right, says: unit === "1" ? "" : unit, ticks: 4 }),
        bottomAxis({ scale: x, at: bottom, to: bottom - 3, says: say`trials`, ticks: 5 }),
        shape(outline, { width: 0, fill: cut }),
        polyline(
          line(({ p80 }) => p80),
          { width: 1.6 },
        ),
        polyline(
          line(({ p50 }) => p50),
          { width: 1.2, dash: "5 3" },
        ),
        ...line(({ p80 }) => p80).map((at) => circle(at, 1.8, { fill: "currentColor" })),
        text({ x: right + 6, y: y(last.p80) + 4 }, "P80"),
        text({ x: right + 6, y: y(last.p50) + 4 }, "P50"),
        text({ x: 4, y: bottom + 44 }, say`band: two standard errors of P80, from the batches`, { fill: soft }),
        text({ x: 4, y: bottom + 58 }, say`one is now ±${error}`, { fill: soft }),
      ],
    });
  });
}
