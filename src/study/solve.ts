// Past 150 lines: the search and its answers in words belong together.
import { say } from "../words/say";
import type { Study } from "./carry-out";
import { crossings } from "./crossings";
import type { Plain } from "./kernel/plain";
import { pointsOver, type Range, rangeOf } from "./range";
import { type Bracket, type Curve, halve, leastBetween } from "./root";
import type { Runner } from "./runner";
import { type StudyInput, type StudyResult, type Subject, valuesOf } from "./subject";
import { listWords, quantityWords, valueWords } from "./words";

export interface SolveQuestion {
  /** Places among the subject's inputs and results. */
  readonly input: number;
  readonly result: number;
  readonly wanted: number;
  /** For an input that is picked from a list: which results do. At least what is wanted, when left out. */
  readonly enough?: "at least" | "at most";
  readonly range?: Partial<Range>;
  /** How many parts the range is looked through in. */
  readonly parts?: number;
}

export interface Solution {
  readonly input: Plain;
  readonly result: number;
  /** The result jumps over the wanted value here; this is the side with at least that value. */
  readonly jumps: boolean;
}

export interface SolveAnswer {
  /** All of them in the plausible range, from small to large; for a list the first that does. */
  readonly solutions: readonly Solution[];
  /** Where the result comes nearest, when there is no solution; undefined when it has no value anywhere. */
  readonly nearest: Solution | undefined;
  readonly sentence: string;
}

const defaultParts = 240;

interface Names {
  readonly input: StudyInput;
  readonly result: StudyResult;
}

const says = ({ input, result }: Names, { input: x, result: y }: Solution): string =>
  say`${input.name} ${valueWords(x, input.unit)} gives ${result.name} ${quantityWords(y, result.unit)}`;

/** The input at which a curve crosses the wanted value, by halving down to neighbouring numbers. */
function solutionAt(place: Bracket | number, curve: Curve, wanted: number): Solution {
  if (typeof place === "number") return { input: place, result: curve(place), jumps: false };
  const rises = curve(place.right) > wanted;
  const { left, right } = halve(place, (x) => curve(x) === wanted || curve(x) > wanted === rises);
  const [low, high] = [curve(left), curve(right)];
  // Between neighbouring numbers a steady curve moves by next to nothing of what it moves between two points.
  const jumps = Math.abs(high - low) > 1e-6 * Math.abs(curve(place.right) - curve(place.left));
  const takesRight = jumps ? high >= wanted : !(Math.abs(low - wanted) < Math.abs(high - wanted));
  return takesRight ? { input: right, result: high, jumps } : { input: left, result: low, jumps };
}

function continuous(names: Names, question: SolveQuestion, curve: Curve, range: Range): Study<SolveAnswer> {
  return (function* () {
    const { wanted, parts = defaultParts } = question;
    const gap: Curve = (x) => curve(x) - wanted;
    const points = pointsOver(range, parts);
    const own = typeof names.input.value === "number" ? names.input.value : undefined;
    if (own !== undefined && own > range.low && own < range.high && !points.includes(own)) {
      points.push(own);
      points.sort((a, b) => a - b);
    }
    const values: number[] = [];
    for (const [i, x] of points.entries()) {
      values.push(gap(x));
      if (i % 8 === 7) yield { done: i, of: points.length };
    }
    const solutions = crossings(points, values, gap).map((place) => solutionAt(place, curve, wanted));
    const ordered = solutions
      .sort((a, b) => Number(a.input) - Number(b.input))
      .filter((one, i, all) => i === 0 || one.input !== all[i - 1]?.input);
    return answer(names, wanted, range, ordered, nearestOf(points, values, gap, curve));
  })();
}

function nearestOf(
  points: readonly number[],
  values: readonly number[],
  gap: Curve,
  curve: Curve,
): Solution | undefined {
  let best = -1;
  values.forEach((value, i) => {
    if (!Number.isNaN(value) && (best < 0 || Math.abs(value) < Math.abs(values[best] as number))) best = i;
  });
  if (best < 0) return undefined;
  const here = points[best] as number;
  const around = { left: points[best - 1] ?? here, right: points[best + 1] ?? here };
  const closer = around.right > around.left ? leastBetween((x) => Math.abs(gap(x)), around) : here;
  const input = Math.abs(gap(closer)) < Math.abs(gap(here)) ? closer : here;
  return { input, result: curve(input), jumps: false };
}

function answer(
  names: Names,
  wanted: number,
  { low, high }: Range,
  solutions: readonly Solution[],
  nearest: Solution | undefined,
): SolveAnswer {
  const { input, result } = names;
  const range = say`${input.name} from ${quantityWords(low, "")} to ${quantityWords(high, input.unit)}`;
  const aim = `${result.name} ${quantityWords(wanted, result.unit)}`;
  if (!nearest) return { solutions: [], nearest, sentence: say`${result.name} has no result for ${range}.` };
  if (solutions.length === 0) {
    const reach = say`nearest: ${says(names, nearest)}`;
    return { solutions, nearest, sentence: say`${aim} is out of reach for ${range}; ${reach}.` };
  }
  const jumps = solutions.some((one) => one.jumps) ? say`; the result jumps there` : "";
  const several = solutions.length > 1 ? say`${solutions.length} values do, the result goes up and down: ` : "";
  return {
    solutions,
    nearest: undefined,
    sentence: `${several}${listWords(solutions.map((one) => says(names, one)))}${jumps}.`,
  };
}

function fromList(names: Names, question: SolveQuestion, at: (x: Plain) => number): Study<SolveAnswer> {
  return (function* () {
    const { wanted, enough = "at least" } = question;
    const choices = names.input.choices ?? [];
    const [name, amount] = [names.result.name, quantityWords(wanted, names.result.unit)];
    const aim = enough === "at least" ? say`${name} at least ${amount}` : say`${name} at most ${amount}`;
    const tried: Solution[] = [];
    for (const [i, choice] of choices.entries()) {
      const one = { input: choice, result: at(choice), jumps: false };
      tried.push(one);
      if (enough === "at least" ? one.result >= wanted : one.result <= wanted) {
        return {
          solutions: [one],
          nearest: undefined,
          sentence: say`The first of the list with ${aim}: ${says(names, one)}.`,
        };
      }
      yield { done: i + 1, of: choices.length };
    }
    const results = tried.filter(({ result }) => !Number.isNaN(result));
    const nearest = results.sort((a, b) => Math.abs(a.result - wanted) - Math.abs(b.result - wanted))[0];
    const reach = nearest ? say`nearest: ${says(names, nearest)}` : say`no choice has a result`;
    return { solutions: [], nearest, sentence: say`No choice of ${names.input.name} gives ${aim}; ${reach}.` };
  })();
}

/**
 * Looks for the values of one input that give a wanted result, everything else staying as it is: all of them in the
 * plausible range, or the first of a list that reaches it.
 *
 * The range is looked through in `parts` steps; each crossing is halved down to neighbouring numbers, and a turning
 * point between two steps is looked for. Two crossings closer together than a step can be missed.
 *
 * @throws Refusal for an input without a plausible range.
 */
export function solve(subject: Subject, runner: Runner, question: SolveQuestion): Study<SolveAnswer> {
  const input = subject.inputs[question.input];
  const result = subject.results[question.result];
  if (!input || !result) throw new Error(say`the question names an input or a result that the subject does not have`);
  const base = valuesOf(subject);
  const at = (x: Plain): number => {
    const value = runner.run(base.with(question.input, x))[question.result];
    return typeof value === "number" ? value : Number.NaN;
  };
  const names = { input, result };
  if (input.choices && question.range === undefined) return fromList(names, question, at);
  return continuous(names, question, at, rangeOf(input, question.range));
}
