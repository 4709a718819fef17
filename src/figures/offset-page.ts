import type { LiveNotebook } from "../notebook/live";
import { columnsOf, isOptionPage, type Page, pageByName } from "../notebook/model";
import { offsetsNames } from "../notebook/offsets-name";
import { say } from "../words/say";

/** Offsets as a free sheet holds them. */
export interface OffsetPage {
  readonly stations: readonly number[];
  readonly heights: readonly number[];
  readonly offsets: readonly number[];
}

/** The free sheet with the offsets of an option: `Offsets Cruiser`, or `Offsets` for all options alike. */
export const offsetPageOf = (live: LiveNotebook, option: string): Page | undefined =>
  offsetsNames(option)
    .map((name) => pageByName(live.notebook, name))
    .find((page) => page !== undefined && !isOptionPage(page));

/**
 * Reads a sheet of offsets: stations along its first row, heights down its first column, half-breadths between them;
 * both end at the first cell without a number.
 *
 * @returns one clause instead, naming the first offset that is no number.
 */
export function readOffsets(live: LiveNotebook, page: Page): OffsetPage | string {
  const number = (row: number, column: number): number | undefined => {
    const value = live.value({ page: page.id, row, column });
    return value.kind === "number" ? value.value : undefined;
  };
  const run = (length: number, read: (i: number) => number | undefined): number[] => {
    const list: number[] = [];
    for (let i = 1; i < length; i++) {
      const value = read(i);
      if (value === undefined) break;
      list.push(value);
    }
    return list;
  };
  const stations = run(columnsOf(page), (column) => number(0, column));
  const heights = run(page.rows.length, (row) => number(row, 0));
  const offsets: number[] = [];
  for (const [row, height] of heights.entries()) {
    for (const [column, station] of stations.entries()) {
      const offset = number(row + 1, column + 1);
      if (offset === undefined)
        return say`${page.name}: no number at station ${station} mm, height ${height} mm; write 0 where there is no hull`;
      offsets.push(offset);
    }
  }
  return { stations, heights, offsets };
}
