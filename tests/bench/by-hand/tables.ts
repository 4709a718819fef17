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
const byColumn = (table: Table): ReadonlyMap<string, ReadonlyMap<string | number, number>> =>
  new Map(Object.keys(table.columns).map((column) => [column, byKey(table, column)]));
const points = (table: Table): readonly (readonly [number, number])[] =>
  table.rows.map((row) => [row[0] as number, row[1] as number]);

export const upperWind = byKey(beaufort, "upper");
export const flexible = byKey(conductorResistance, "flexible");
export const gaugeAmps = byColumn(carryingCurrent);
export const engineFactor = byKey(engineSpaceFactors, "factor");
export const shipAmps = byColumn(shipCableCurrent);
export const fractions = byColumn(fibreFraction);
export const fuses: ReadonlyMap<string, readonly number[]> = new Map([
  ["NEC", fuseRatingsNec.rows.map(([rating]) => Number(rating))],
  ["R10", fuseRatingsR10.rows.map(([rating]) => Number(rating))],
]);
export const drag = points(crossFlow);
export const entry = points(entryLoss);
export const viscosity = points(seaViscosity);

/** Straight line between two points of a table; the last value beyond its end. */
export function between(table: readonly (readonly [number, number])[], x: number): number {
  for (let i = 1; i < table.length; i++) {
    const [x0, y0] = table[i - 1] as readonly [number, number];
    const [x1, y1] = table[i] as readonly [number, number];
    if (x <= x1) return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
  }
  return (table.at(-1) as readonly [number, number])[1];
}
