import { Refusal } from "../notebook/refusal";
import { say } from "../words/say";
import type { StudyInput } from "./subject";

/** Where a study looks for values of one input; both ends belong to it. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/**
 * The plausible range of an input: what is asked for, else the limits in the notebook, else from half to twice its
 * value.
 *
 * @throws Refusal when there is neither, or the limits stand the wrong way round.
 */
export function rangeOf(input: StudyInput, asked: Partial<Range> = {}): Range {
  const value = typeof input.value === "number" ? input.value : undefined;
  const ends = value === undefined || value === 0 ? [] : [value / 2, value * 2].sort((a, b) => a - b);
  const low = asked.low ?? input.low ?? ends[0];
  const high = asked.high ?? input.high ?? ends[1];
  if (low === undefined || high === undefined) {
    throw new Refusal(say`${input.name} has no plausible range in the notebook; give a low and a high value.`);
  }
  if (!(low < high)) {
    throw new Refusal(
      say`${input.name}: the range from ${low} to ${high} is empty; give a low value below the high one.`,
    );
  }
  return { low, high };
}

/**
 * Points over a range, ends included: evenly spaced, or by equal factors where the range spans more than a power of
 * fifty, so that small values are looked at as closely as large ones.
 */
export function pointsOver({ low, high }: Range, parts: number): number[] {
  const byFactor = low > 0 && high / low > 50;
  return Array.from({ length: parts + 1 }, (_, i) => {
    if (i === 0) return low;
    if (i === parts) return high;
    return byFactor ? low * (high / low) ** (i / parts) : low + ((high - low) * i) / parts;
  });
}
