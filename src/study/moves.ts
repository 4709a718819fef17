import { say } from "../words/say";
import type { Study } from "./carry-out";
import type { Plain } from "./kernel/plain";
import type { Runner } from "./runner";
import { type StudyInput, type Subject, valuesOf } from "./subject";
import { valueWords } from "./words";

/** How much one input moves a result, everything else staying as it is. */
export interface Move {
  readonly name: string;
  readonly quantity: string;
  readonly unit: string;
  readonly value: Plain;
  /** The values that were tried: the ends of the plausible range, or the choices with the least and most result. */
  readonly low: Plain | undefined;
  readonly high: Plain | undefined;
  /** Results there; NaN where there is none, undefined where the notebook has no range. */
  readonly atLow: number | undefined;
  readonly atHigh: number | undefined;
  /** Distance between the two results; undefined without both. */
  readonly over: number | undefined;
  /** Change of the result for one percent more of the input; undefined for words, 0 and where there is no result. */
  readonly percent: number | undefined;
  /** What keeps a figure from being given, in words; empty where nothing does. */
  readonly note: string;
}

export interface MovesAnswer {
  readonly result: string;
  readonly unit: string;
  /** The result as the notebook stands. */
  readonly now: number;
  /** By change over the plausible range, then by change for a percent; inputs that move nothing are left out. */
  readonly moves: readonly Move[];
  /** Inputs that move nothing, by name. */
  readonly still: readonly string[];
}

type At = (x: Plain) => number;

/** The percent is taken to both sides, so that a bend counts half. */
function perPercent(value: Plain, at: At): number | undefined {
  if (typeof value !== "number" || value === 0) return undefined;
  const change = (at(value * 1.01) - at(value * 0.99)) / 2;
  return Number.isNaN(change) ? undefined : change;
}

function ends(input: StudyInput, at: At): Pick<Move, "low" | "high" | "atLow" | "atHigh"> {
  const none = { low: undefined, high: undefined, atLow: undefined, atHigh: undefined };
  if (input.choices) {
    const tried = input.choices.map((x) => ({ x, result: at(x) })).filter(({ result }) => !Number.isNaN(result));
    const [first] = tried;
    if (!first) return none;
    const least = tried.reduce((a, b) => (b.result < a.result ? b : a), first);
    const most = tried.reduce((a, b) => (b.result > a.result ? b : a), first);
    return { low: least.x, high: most.x, atLow: least.result, atHigh: most.result };
  }
  if (typeof input.value !== "number" || input.low === undefined || input.high === undefined) return none;
  return { low: input.low, high: input.high, atLow: at(input.low), atHigh: at(input.high) };
}

function noteOf(
  input: StudyInput,
  { low, high, atLow, atHigh }: Pick<Move, "low" | "high" | "atLow" | "atHigh">,
): string {
  if (low === undefined || high === undefined) {
    return typeof input.value === "number"
      ? say`no plausible range in the notebook`
      : say`no list of choices in the notebook`;
  }
  const missing = [
    ...(Number.isNaN(atLow) ? [valueWords(low, input.unit)] : []),
    ...(Number.isNaN(atHigh) ? [valueWords(high, input.unit)] : []),
  ];
  return missing.length > 0 ? say`no result at ${missing.join(" and ")}` : "";
}

function moveOf(input: StudyInput, at: At): Move {
  const { name, quantity, unit, value } = input;
  const range = ends(input, at);
  const { atLow, atHigh } = range;
  const distance = atLow === undefined || atHigh === undefined ? Number.NaN : Math.abs(atHigh - atLow);
  const over = Number.isNaN(distance) ? undefined : distance;
  const percent = input.choices ? undefined : perPercent(value, at);
  return { name, quantity, unit, value, ...range, over, percent, note: noteOf(input, range) };
}

/** Those that lose their result somewhere in their range come first: nothing moves a result more. */
const weight = ({ over, low, percent }: Move): readonly [number, number] => [
  over ?? (low === undefined ? 0 : Number.POSITIVE_INFINITY),
  Math.abs(percent ?? 0),
];

const isMoving = ({ over, percent, low }: Move): boolean =>
  (over ?? 0) > 0 || (percent ?? 0) !== 0 || (over === undefined && low !== undefined);

/**
 * What moves a result: every input by itself over its plausible range and by one percent, the rest staying as in the
 * notebook. Inputs that only matter together are not found this way.
 *
 * @param result place among the subject's results.
 */
export function moves(subject: Subject, runner: Runner, result: number): Study<MovesAnswer> {
  const asked = subject.results[result];
  if (!asked) throw new Error(say`the question names a result that the subject does not have`);
  const base = valuesOf(subject);
  const read = (values: readonly Plain[]): number => {
    const value = runner.run(values)[result];
    return typeof value === "number" ? value : Number.NaN;
  };
  return (function* () {
    const found: Move[] = [];
    for (const [i, input] of subject.inputs.entries()) {
      found.push(moveOf(input, (x) => read(base.with(i, x))));
      yield { done: i + 1, of: subject.inputs.length };
    }
    const [moving, still] = [found.filter(isMoving), found.filter((one) => !isMoving(one))];
    moving.sort((a, b) => {
      const [[overA, percentA], [overB, percentB]] = [weight(a), weight(b)];
      return overA === overB ? percentB - percentA : overA > overB ? -1 : 1;
    });
    const { name, unit } = asked;
    return { result: name, unit, now: read(base), moves: moving, still: still.map((one) => one.name) };
  })();
}
