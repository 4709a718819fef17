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
  return place === below ? low : low + (place - below) * (high - low);
}
