import type { StudyResult } from "../subject";
import { Percentiles } from "./percentile";

export const percentiles = [0.1, 0.5, 0.8, 0.9] as const;

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
  /** Standard error of the P80, from how far the batches lie apart; NaN where there is one batch. */
  readonly error80: number;
  /** Every trial's result in the order of the trials, NaN where there is none. */
  readonly values: Float64Array;
}

/** The numbers among the trials, at the beginning of `into`. */
function numbersOf(values: Float64Array, into: Float64Array): Float64Array {
  let count = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (!Number.isNaN(value)) into[count++] = value;
  }
  return into.subarray(0, count);
}

/** Mean and standard deviation. */
function middle(numbers: ArrayLike<number>): readonly [number, number] {
  let sum = 0;
  for (let i = 0; i < numbers.length; i++) sum += numbers[i] as number;
  const mean = sum / numbers.length;
  let squares = 0;
  for (let i = 0; i < numbers.length; i++) squares += ((numbers[i] as number) - mean) ** 2;
  return [mean, Math.sqrt(squares / (numbers.length - 1))];
}

/** How good a figure is that comes from all batches together: its figures of single batches, and how far they lie apart. */
export const standardError = (batches: readonly number[]): number => middle(batches)[1] / Math.sqrt(batches.length);

/** Sums up one result after the other, with room that is made once. */
export class Summary {
  private readonly room: Float64Array;
  private readonly find: Percentiles;

  /** @param size trials in a batch. */
  constructor(
    private readonly size: number,
    trials: number,
  ) {
    this.room = new Float64Array(trials);
    this.find = new Percentiles(trials);
  }

  /** @param values one a trial, NaN where there is no result. */
  of(result: StudyResult, values: Float64Array): ResultSpread {
    const numbers = numbersOf(values, this.room);
    const [least = Number.NaN, ...found] = this.find.of(numbers, [0, ...percentiles, 1]);
    const most = found.pop() ?? Number.NaN;
    const [mean, deviation] = middle(numbers);
    const holding = result.isCheck ? numbers.reduce((sum, one) => sum + (one >= 0 ? 1 : 0), 0) : 0;
    return {
      ...result,
      mean,
      deviation,
      percentiles: found,
      least,
      most,
      lost: values.length - numbers.length,
      chance: result.isCheck ? holding / values.length : undefined,
      error80: standardError(this.tops(values)),
      values,
    };
  }

  /** The P80 of each batch by itself. */
  private tops(values: Float64Array): number[] {
    const tops: number[] = [];
    for (let end = this.size; end <= values.length; end += this.size) {
      const numbers = numbersOf(values.subarray(end - this.size, end), this.room);
      tops.push(this.find.of(numbers, [0.8])[0] as number);
    }
    return tops;
  }
}
