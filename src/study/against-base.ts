/** How far an option's number lies from the base option's. */
export interface AgainstBase {
  /** Undefined without two numbers. */
  readonly difference: number | undefined;
  /** The same as a share of the base; undefined where such a share says nothing. */
  readonly share: number | undefined;
}

/** A base that is smaller than this share of the row's largest number counts as nearly nothing. */
const nearlyNothing = 0.01;

/**
 * Compares an option with the base. A share of the base is given only where it can be read: both numbers have one
 * sign, the base is not nearly 0, and the row is no margin, which is a share already.
 *
 * @param row the numbers of all options shown.
 */
export function againstBase(
  number: number | undefined,
  base: number | undefined,
  row: readonly (number | undefined)[],
  isMargin: boolean,
): AgainstBase {
  if (number === undefined || base === undefined) return { difference: undefined, share: undefined };
  const difference = number - base;
  const largest = Math.max(...row.map((one) => Math.abs(one ?? 0)));
  const isReadable = !isMargin && number * base >= 0 && Math.abs(base) > nearlyNothing * largest;
  return { difference, share: isReadable ? difference / base : undefined };
}
