import { percentile } from "./percentile";
import { standardError } from "./summary";

/** Trials come in so many batches, each drawn for itself: how far they lie apart shows what the number of trials is worth. */
export const batches = 10;

/** A figure after so many trials, and how far the batches of trials lie apart about it. */
export interface Convergence {
  readonly trials: number;
  readonly p50: number;
  readonly p80: number;
  /** Standard error of the P80 from the batches so far; NaN after the first. */
  readonly error80: number;
}

/** Numbers in rising order, without those that are none. */
export const rising = (values: Float64Array): Float64Array => values.filter((value) => !Number.isNaN(value)).sort();

/** How the figures settle, batch after batch. */
export function convergenceOf({ values }: { readonly values: Float64Array }): readonly Convergence[] {
  const size = values.length / batches;
  const tops: number[] = [];
  return Array.from({ length: batches }, (_, batch) => {
    const trials = size * (batch + 1);
    const sorted = rising(values.subarray(0, trials));
    tops.push(percentile(rising(values.subarray(trials - size, trials)), 0.8));
    const [p50, p80] = [percentile(sorted, 0.5), percentile(sorted, 0.8)];
    return { trials, p50, p80, error80: standardError(tops) };
  });
}
