// Past 150 lines: drawing, running and summing up share their running numbers.
import type { Study } from "../carry-out";
import type { Plain } from "../kernel/plain";
import type { Runner } from "../runner";
import { type StudyResult, type Subject, valuesOf } from "../subject";
import { percentile } from "./percentile";
import { type CommonCause, type Random, randomOf, shares } from "./sample";
import { checkShape, type Shape, valueAt } from "./shape";

export interface VariedInput {
  /** Place among the subject's inputs. */
  readonly input: number;
  readonly shape: Shape;
  /** 1 with the common cause (the default), −1 against it, 0 by itself. */
  readonly turns?: 1 | -1 | 0;
}

export interface SpreadQuestion {
  readonly varied: readonly VariedInput[];
  readonly trials: number;
  readonly common: CommonCause;
  /** The same seed gives the same numbers everywhere. */
  readonly seed: number;
}

export const percentiles = [0.1, 0.5, 0.8, 0.9] as const;

/** A figure after so many trials, and how far the batches of trials lie apart about it. */
export interface Convergence {
  readonly trials: number;
  readonly p50: number;
  readonly p80: number;
  /** Standard error of the P80 from the batches so far; NaN after the first. */
  readonly error80: number;
}

export interface ResultSpread extends StudyResult {
  readonly mean: number;
  /** Standard deviation. */
  readonly deviation: number;
  /** P10, P50, P80, P90. */
  readonly percentiles: readonly number[];
  readonly least: number;
  readonly most: number;
  /** Trials without a result; they are left out of all figures above. */
  readonly lost: number;
  /** For a check: the share of trials in which it holds; a trial without a result does not count as one. */
  readonly chance: number | undefined;
  readonly convergence: readonly Convergence[];
  /** Every trial's result in rising order, for a drawing. */
  readonly sorted: Float64Array;
}

export interface SpreadAnswer {
  readonly trials: number;
  readonly seed: number;
  readonly common: CommonCause;
  readonly results: readonly ResultSpread[];
  /** Share of trials in which all checks of the subject hold; undefined without checks. */
  readonly allHold: number | undefined;
}

/** Trials come in so many batches, each drawn for itself: how far they lie apart shows what the number of trials is worth. */
const batches = 10;

/** Values of one batch: per varied input the value in each trial. */
function draw(question: SpreadQuestion, count: number, random: Random): Float64Array[] {
  const turns = question.varied.map((one) => one.turns ?? 1);
  return shares(count, turns, question.common, random).map((part, i) => {
    const shape = (question.varied[i] as VariedInput).shape;
    return part.map((share) => valueAt(shape, share));
  });
}

/** Numbers in rising order, without those that are none. */
const rising = (values: Float64Array): Float64Array => values.filter((value) => !Number.isNaN(value)).sort();

function merged(a: Float64Array, b: Float64Array): Float64Array {
  const both = new Float64Array(a.length + b.length);
  let [i, k] = [0, 0];
  for (let at = 0; at < both.length; at++) {
    const fromA = k >= b.length || (i < a.length && (a[i] as number) <= (b[k] as number));
    both[at] = (fromA ? a[i++] : b[k++]) as number;
  }
  return both;
}

/** Figures after each batch, and all values in rising order. */
function convergenceOf(values: Float64Array, size: number): { steps: Convergence[]; sorted: Float64Array } {
  const steps: Convergence[] = [];
  const tops: number[] = [];
  let sorted: Float64Array = new Float64Array();
  for (let end = size; end <= values.length; end += size) {
    const batch = rising(values.subarray(end - size, end));
    sorted = merged(sorted, batch);
    tops.push(percentile(batch, 0.8));
    const mean = tops.reduce((sum, one) => sum + one, 0) / tops.length;
    const variance = tops.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (tops.length - 1);
    const error80 = Math.sqrt(variance / tops.length);
    steps.push({ trials: end, p50: percentile(sorted, 0.5), p80: percentile(sorted, 0.8), error80 });
  }
  return { steps, sorted };
}

function summary(result: StudyResult, values: Float64Array, size: number): ResultSpread {
  const { steps, sorted } = convergenceOf(values, size);
  const mean = sorted.reduce((sum, one) => sum + one, 0) / sorted.length;
  const variance = sorted.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (sorted.length - 1);
  const holding = values.reduce((sum, one) => sum + (one >= 0 ? 1 : 0), 0);
  return {
    ...result,
    mean,
    deviation: Math.sqrt(variance),
    percentiles: percentiles.map((share) => percentile(sorted, share)),
    least: sorted[0] ?? Number.NaN,
    most: sorted.at(-1) ?? Number.NaN,
    lost: values.length - sorted.length,
    chance: result.isCheck ? holding / values.length : undefined,
    convergence: steps,
    sorted,
  };
}

/**
 * How the results spread when inputs turn out otherwise: trials with all varied inputs at once, sampled as `shares`
 * says, in ten batches.
 *
 * @throws Refusal for limits that stand the wrong way round.
 */
export function spread(subject: Subject, runner: Runner, question: SpreadQuestion): Study<SpreadAnswer> {
  for (const { input, shape } of question.varied) checkShape(subject.inputs[input]?.name ?? "", shape);
  const size = Math.max(1, Math.ceil(question.trials / batches));
  const trials = size * batches;
  const random = randomOf(question.seed);
  const values: Plain[] = valuesOf(subject);
  const columns = subject.results.map(() => new Float64Array(trials));
  const checks = subject.results.flatMap(({ isCheck }, i) => (isCheck ? [i] : []));
  return (function* () {
    let holding = 0;
    for (let batch = 0; batch < batches; batch++) {
      const drawn = draw(question, size, random);
      for (let k = 0; k < size; k++) {
        question.varied.forEach(({ input }, i) => {
          values[input] = drawn[i]?.[k] ?? null;
        });
        const results = runner.run(values);
        const trial = batch * size + k;
        results.forEach((value, i) => {
          (columns[i] as Float64Array)[trial] = typeof value === "number" ? value : Number.NaN;
        });
        if (checks.every((i) => (columns[i]?.[trial] ?? Number.NaN) >= 0)) holding++;
        yield { done: trial + 1, of: trials };
      }
    }
    return {
      trials,
      seed: question.seed,
      common: question.common,
      results: subject.results.map((result, i) => summary(result, columns[i] as Float64Array, size)),
      allHold: checks.length > 0 ? holding / trials : undefined,
    };
  })();
}
