/** The value that lies so far between the two nearest, counted from 0; the last value has no next one. */
function between(place: number, low: number, high: number): number {
  const share = place - Math.floor(place);
  return share === 0 ? low : low + share * (high - low);
}

/**
 * The value that a share of the sorted values lies below: a straight line between the two nearest, the first value
 * for share 0 and the last for share 1 (definition 7 of Hyndman and Fan, The American Statistician 50:361, 1996).
 *
 * @returns NaN when there is no value.
 */
export function percentile(sorted: ArrayLike<number>, share: number): number {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below] ?? Number.NaN;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] ?? Number.NaN;
  return between(place, low, high);
}

/** So few are sorted as fast as they are counted. */
const fewValues = 100;
const bins = 1024;

/**
 * The same percentiles of numbers in any order. Sorting all of them would be most of a study's time: they are counted
 * into bins instead, and only the bins that hold a wanted place are sorted.
 */
export class Percentiles {
  private readonly binOf: Uint16Array;
  private readonly counts = new Uint32Array(bins);
  private readonly isWanted = new Uint8Array(bins);

  /** @param most how many numbers there are at most. */
  constructor(most: number) {
    this.binOf = new Uint16Array(most);
  }

  /**
   * @param numbers in any order, none of them NaN.
   * @param shares rising, from 0 to 1.
   */
  of(numbers: Float64Array, shares: readonly number[]): readonly number[] {
    const { length } = numbers;
    if (length === 0) return shares.map(() => Number.NaN);
    let [least, most] = [numbers[0] as number, numbers[0] as number];
    for (let i = 1; i < length; i++) {
      const value = numbers[i] as number;
      if (value < least) least = value;
      else if (value > most) most = value;
    }
    if (least === most) return shares.map(() => least);
    const perUnit = bins / (most - least);
    if (length < fewValues || !(perUnit > 0 && perUnit < Number.POSITIVE_INFINITY)) {
      const sorted = numbers.slice().sort();
      return shares.map((share) => percentile(sorted, share));
    }
    this.count(numbers, least, perUnit);
    const places = shares.map((share) => share * (length - 1));
    const before = this.want(places);
    const sorted = this.wantedOf(numbers);
    return places.map((place, i) => {
      const at = Math.floor(place) - (before[i] as number);
      return between(place, sorted[at] as number, sorted[Math.min(at + 1, sorted.length - 1)] as number);
    });
  }

  private count(numbers: Float64Array, least: number, perUnit: number): void {
    const { binOf, counts } = this;
    counts.fill(0);
    for (let i = 0; i < numbers.length; i++) {
      const bin = Math.min(bins - 1, ((numbers[i] as number) - least) * perUnit) | 0;
      binOf[i] = bin;
      counts[bin] = (counts[bin] as number) + 1;
    }
  }

  /** Marks the bins that hold each place or the one after it; gives how many numbers stand before it in others. */
  private want(places: readonly number[]): number[] {
    const { counts, isWanted } = this;
    isWanted.fill(0);
    let [bin, passed, left] = [0, 0, 0];
    const goTo = (place: number): void => {
      while (bin < bins - 1 && passed + (counts[bin] as number) <= place) {
        passed += counts[bin] as number;
        if (isWanted[bin] === 0) left += counts[bin] as number;
        bin++;
      }
      isWanted[bin] = 1;
    };
    return places.map((place) => {
      goTo(Math.floor(place));
      const before = left;
      goTo(Math.floor(place) + 1);
      return before;
    });
  }

  private wantedOf(numbers: Float64Array): Float64Array {
    const { binOf, isWanted } = this;
    let count = 0;
    for (let i = 0; i < numbers.length; i++) count += isWanted[binOf[i] as number] as number;
    const wanted = new Float64Array(count);
    let at = 0;
    for (let i = 0; i < numbers.length; i++) {
      if (isWanted[binOf[i] as number] === 1) wanted[at++] = numbers[i] as number;
    }
    return wanted.sort();
  }
}
