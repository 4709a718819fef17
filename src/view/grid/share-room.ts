/** Widths in px that a column may have: what it needs, and what it wants. */
export interface Range {
  readonly least: number;
  readonly wanted: number;
}

export const range = (least: number, wanted: number, most: number): Range => ({
  least,
  wanted: Math.round(Math.max(least, Math.min(wanted, most))),
});

/** Px without which the columns together do not have what they need. */
export const least = (ranges: readonly Range[]): number => ranges.reduce((sum, one) => sum + one.least, 0);

/** Each column as wide as it wants to be, or less in the same measure, down to what it needs. */
export function fitted(ranges: readonly Range[], room: number): number[] {
  const wanted = ranges.reduce((sum, one) => sum + one.wanted, 0);
  const give = ranges.reduce((sum, one) => sum + one.wanted - one.least, 0);
  const share = wanted <= room || give === 0 ? 0 : Math.min(1, (wanted - room) / give);
  return ranges.map(({ least, wanted: own }) => Math.floor(own - share * (own - least)));
}
