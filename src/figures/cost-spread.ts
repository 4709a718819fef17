import { area, line as curve } from "d3-shape";
import { hoursAt } from "../functions/hours/at";
import { say } from "../words/say";
import { bottomAxis, roundScale } from "./draw/axis";
import { cut, soft } from "./draw/ink";
import { text } from "./draw/letters";
import { line, path, round } from "./draw/mark";
import { hangingNotes, type Note } from "./draw/notes";
import { percent, shown } from "./draw/number";
import { sheet } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { named } from "./named";
import { need } from "./need";

/** Numbers of the estimate's spread. */
export interface CostSpreadInput {
  /** Likely lines added up, money. */
  readonly base: number;
  /** Mean cost, money. */
  readonly mean: number;
  /** One standard deviation of the cost, money. */
  readonly spread: number;
  /** Share of jobs that the middle figure holds in, as a rule 0.5. */
  readonly shareMiddle: number;
  /** Share of jobs that the figure with contingency holds in, as a rule 0.8. */
  readonly shareContingency: number;
}

const title = say`Cost: how it may spread`;
const reach = 3.2;

/** The normal distribution of the cost, filled up to the figure with contingency. */
export function costSpread(input: CostSpreadInput): Figure {
  return figure(title, () => {
    need(input, { spread: [1e-9, 1e12], shareMiddle: [0.001, 0.999], shareContingency: [0.001, 0.999] });
    return drawSpread(input);
  });
}

function drawSpread({ base, mean, spread, shareMiddle, shareContingency }: CostSpreadInput) {
  const at = (share: number) => named(hoursAt, { mean, spread, share });
  const middle = at(shareMiddle);
  const contingency = at(shareContingency);
  const bell = (cost: number) => Math.exp(-0.5 * ((cost - mean) / spread) ** 2);
  const top = 22;
  const bottom = 130;
  const x = roundScale([Math.min(base, mean - reach * spread), Math.max(base, mean + reach * spread)], [26, 262], 5);
  const height = (value: number) => bottom - (bottom - top) * value;
  const [low = 0, high = 0] = x.domain();
  const costs = Array.from({ length: 121 }, (_, i) => low + ((high - low) * i) / 120);
  const px = (cost: number) => Number(round(x(cost)));
  const py = (cost: number) => Number(round(height(bell(cost))));
  const outline = curve<number>(px, py)(costs) ?? "";
  const filled = area<number>(px, bottom, py)([...costs.filter((cost) => cost < contingency), contingency]) ?? "";
  const name = (share: number) => `P${shown(share * 100, (share * 100) % 1 === 0 ? 0 : 1)}`;
  const place = (cost: number) => ({ x: x(cost), y: bottom });
  const list: Note[] = [
    { at: place(base), says: say`likely lines added up ${shown(base)}` },
    { at: place(middle), says: `${name(shareMiddle)} ${shown(middle)}`, strong: true },
    { at: place(contingency), says: `${name(shareContingency)} ${shown(contingency)}`, strong: true },
  ];
  const words = bottom + 46;
  const says = [
    say`Cost before mark-up and tax, mean ${shown(mean)}, one standard deviation ${shown(spread)}, taken as a normal distribution.`,
    say`${name(shareMiddle)} ${shown(middle)}: ${percent(shareMiddle)} of such jobs cost no more; ${name(shareContingency)} ${shown(contingency)}: ${percent(shareContingency)} cost no more.`,
    say`The likely lines added up are ${shown(base)}.`,
  ].join(" ");
  return sheet({
    title,
    says,
    height: words + 3 * 14 + 12,
    content: [
      path(filled, { width: 0, fill: cut }),
      path(outline, { width: 1.6 }),
      bottomAxis({ scale: x, at: bottom, to: bottom - 3, says: "", ticks: 5 }),
      ...[middle, contingency].map((cost) =>
        line({ x: x(cost), y: bottom }, { x: x(cost), y: height(bell(cost)) }, { width: 1.2 }),
      ),
      line({ x: x(base), y: bottom }, { x: x(base), y: height(bell(base)) }, { width: 1, dash: "3 3" }),
      hangingNotes(list, words, bottom + 21),
      text({ x: 4, y: 12 }, say`money before mark-up and tax; mean ${shown(mean)}, spread ${shown(spread)}`, {
        fill: soft,
      }),
    ],
  });
}
