import type { Table } from "../../../src/formula/table";
import { beaufort } from "../../../src/tables/beaufort";
import { carryingCurrent } from "../../../src/tables/carrying-current";
import { conductorResistance } from "../../../src/tables/conductor-resistance";
import { crossFlow } from "../../../src/tables/cross-flow";
import { engineSpaceFactors } from "../../../src/tables/engine-space";
import { entryLoss } from "../../../src/tables/entry-loss";
import { fibreFraction } from "../../../src/tables/fibre-fraction";
import { fuseRatingsNec } from "../../../src/tables/fuse-ratings-nec";
import { fuseRatingsR10 } from "../../../src/tables/fuse-ratings-r10";
import { seaViscosity } from "../../../src/tables/sea-viscosity";
import { shipCableCurrent } from "../../../src/tables/ship-cable";

/** The published tables in the form that a program written by hand would keep them in. */

const byKey = (table: Table, column: string): ReadonlyMap<string | number, number> => {
  const at = Object.keys(table.columns).indexOf(column) + 1;
  return new Map(table.rows.map((row) => [row[0], row[at] as number]));
};
const byColumn = <Key>(
  table: Table,
  key: (column: string) => Key,
): ReadonlyMap<Key, ReadonlyMap<string | number, number>> =>
  new Map(Object.keys(table.columns).map((column) => [key(column), byKey(table, column)]));
/** Points of a curve, x and y apart. */
interface Curve {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
}
const points = (table: Table): Curve => ({
  xs: table.rows.map((row) => row[0] as number),
  ys: table.rows.map((row) => row[1] as number),
});

export const upperWind = byKey(beaufort, "upper");
export const flexible = byKey(conductorResistance, "flexible");
export const gaugeAmps = byColumn(carryingCurrent, Number);
export const engineFactor = byKey(engineSpaceFactors, "factor");
export const shipAmps = byColumn(shipCableCurrent, Number);
export const fractions = byColumn(fibreFraction, String);
export const fuses: ReadonlyMap<string, readonly number[]> = new Map([
  ["NEC", fuseRatingsNec.rows.map(([rating]) => Number(rating))],
  ["R10", fuseRatingsR10.rows.map(([rating]) => Number(rating))],
]);
export const drag = points(crossFlow);
export const entry = points(entryLoss);
export const viscosity = points(seaViscosity);

/** Straight line between two points of a curve; the last value beyond its end. */
export function between({ xs, ys }: Curve, x: number): number {
  const last = xs.length - 1;
  if (x > (xs[last] as number)) return ys[last] as number;
  let i = 1;
  while (i < last && x > (xs[i] as number)) i++;
  const x0 = xs[i - 1] as number;
  const y0 = ys[i - 1] as number;
  return y0 + ((x - x0) / ((xs[i] as number) - x0)) * ((ys[i] as number) - y0);
}
