import { say } from "../words/say";
import { bottomAxis, roundScale } from "./draw/axis";
import { cut, holds, short, soft } from "./draw/ink";
import { text } from "./draw/letters";
import { line, shape } from "./draw/mark";
import { hangingNotes, type Note } from "./draw/notes";
import { shown, withUnit } from "./draw/number";
import { sheet } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { need } from "./need";

/** Numbers between which a fuse must lie. */
export interface FuseWindowInput {
  /** Current while running, A. */
  readonly current: number;
  /** Carrying current of the conductor, A. */
  readonly carry: number;
  /** Most fuse over carrying current by the rule in use. */
  readonly share: number;
  /** Rating of the fuse, A. */
  readonly fuse: number;
}

const title = say`Window for the fuse`;

/** The bar from the running current to the most that the conductor allows, and where the fuse lies. */
export function fuseWindow(input: FuseWindowInput): Figure {
  return figure(title, () => {
    need(input, { current: [0, 1e5], carry: [0, 1e5], share: [0, 10], fuse: [0, 1e5] });
    return drawWindow(input);
  });
}

function drawWindow({ current, carry, share, fuse }: FuseWindowInput) {
  const most = carry * share;
  const open = most >= current;
  const fits = fuse >= current && fuse <= most;
  const high = Math.max(current, most, fuse, carry);
  const low = Math.min(current, most, fuse, carry);
  const x = roundScale([Math.max(0, low - (high - low) * 0.15 - high * 0.02), high * 1.02], [14, 236], 5);
  const [top, bottom] = [24, 48];
  const bar = (from: number, to: number, fill: string) =>
    shape(
      [
        { x: x(from), y: top },
        { x: x(to), y: top },
        { x: x(to), y: bottom },
        { x: x(from), y: bottom },
      ],
      { width: 1, fill },
    );
  const word = fits
    ? say`fuse of ${withUnit(fuse, "A")} lies inside: holds`
    : !open
      ? say`no window: the conductor is too small for the current`
      : fuse < current
        ? say`fuse is ${withUnit(current - fuse, "A")} below the running current: short`
        : say`fuse is ${withUnit(fuse - most, "A")} above the most allowed: short`;
  const at = (value: number) => ({ x: x(value), y: bottom });
  const list: Note[] = [
    { at: at(current), says: say`running ${withUnit(current, "A")}` },
    { at: at(carry), says: say`conductor carries ${withUnit(carry, "A")}` },
    { at: at(fuse), says: say`fuse ${withUnit(fuse, "A")}`, strong: true, fill: fits ? holds : short },
    { at: at(most), says: say`most ${withUnit(most, "A")}, ${shown(share * 100)} % of that` },
  ];
  const says = [
    say`Running current ${withUnit(current, "A")}, conductor carries ${withUnit(carry, "A")}, most fuse ${withUnit(most, "A")}, ${shown(share * 100)} % of that, fuse ${withUnit(fuse, "A")}.`,
    `${word.charAt(0).toUpperCase()}${word.slice(1)}.`,
  ].join(" ");
  const axis = 124;
  return sheet({
    title,
    says,
    height: axis + 34,
    content: [
      bottomAxis({ scale: x, at: axis, to: axis - 3, says: "A", ticks: 5 }),
      open
        ? bar(current, most, cut)
        : line(
            { x: x(most), y: (top + bottom) / 2 },
            { x: x(current), y: (top + bottom) / 2 },
            { width: 2, dash: "2 4", stroke: short },
          ),
      shape(
        [
          { x: x(fuse), y: top + 6 },
          { x: x(fuse) - 6, y: top - 4 },
          { x: x(fuse) + 6, y: top - 4 },
        ],
        { width: 1, fill: fits ? holds : short, stroke: fits ? holds : short },
      ),
      line({ x: x(fuse), y: top }, { x: x(fuse), y: bottom }, { width: 2.4, stroke: fits ? holds : short }),
      hangingNotes(list, bottom + 18, bottom),
      text({ x: 4, y: 12 }, word, { fill: fits ? holds : short, strong: !fits }),
      text({ x: 4, y: axis + 28 }, say`bar: from the running current to the most allowed`, { fill: soft }),
    ],
  });
}
