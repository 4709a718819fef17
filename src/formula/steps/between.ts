import type { UnitText } from "../../units/names";
import { say } from "../../words/say";
import { Fault } from "../fault";
import type { Act, Scope } from "../scope";
import { columnAt, type Table } from "../table";

/** Straight-line reading between the points of a table, or of two ranges of cells. */
export interface Between {
  readonly kind: "between";
  readonly symbol: string;
  readonly points: { readonly table: Table; readonly column: string } | { readonly xs: string; readonly ys: string };
  readonly at: string;
  /** Past the last point: its value is held where the source says so, otherwise the reading is refused. */
  readonly beyond?: "hold";
  readonly unit: UnitText | "any";
  readonly why: string;
}

type Points = (slots: readonly unknown[]) => { readonly xs: readonly number[]; readonly ys: readonly number[] };

function pointsOf(step: Between, scope: Scope): Points {
  const { points } = step;
  if ("table" in points) {
    const column = columnAt(points.table, points.column);
    const xs = points.table.rows.map((row) => row[0] as number);
    const ys = points.table.rows.map((row) => row[column] as number);
    return () => ({ xs, ys });
  }
  const xs = scope.at(points.xs);
  const ys = scope.at(points.ys);
  return (slots) => ({ xs: slots[xs] as readonly number[], ys: slots[ys] as readonly number[] });
}

function check(xs: readonly number[], ys: readonly number[], names: { xs: string; ys: string }): void {
  if (xs.length !== ys.length) {
    throw new Fault("kind", say`${names.xs} has ${xs.length} cells and ${names.ys} ${ys.length}, they must match`);
  }
  if (xs.length < 2) throw new Fault("kind", say`${names.xs}: one cell, needs at least two`);
  for (let i = 1; i < xs.length; i++) {
    if ((xs[i] as number) <= (xs[i - 1] as number)) {
      throw new Fault("range", say`${names.xs}: cell ${i + 1} is ${xs[i] ?? ""}, it must be above ${xs[i - 1] ?? ""}`);
    }
  }
}

export function between(step: Between, scope: Scope): Act {
  const points = pointsOf(step, scope);
  const names = "xs" in step.points ? step.points : undefined;
  const at = scope.run(step.at);
  const own = scope.add(step.symbol);
  return (slots) => {
    const { xs, ys } = points(slots);
    if (names) check(xs, ys, names);
    const x = at(slots);
    const last = xs.length - 1;
    const low = xs[0] as number;
    const high = xs[last] as number;
    if (x > high && step.beyond === "hold") {
      slots[own] = ys[last] as number;
      return;
    }
    if (!(x >= low && x <= high)) {
      throw new Fault("missing", say`${step.at}: ${x} is outside the table (allowed ${low} to ${high})`);
    }
    // The last interval also holds its right end, so that an exact end point is read from the table.
    let i = 0;
    while (i < last - 1 && x >= (xs[i + 1] as number)) i++;
    const x0 = xs[i] as number;
    const x1 = xs[i + 1] as number;
    const y0 = ys[i] as number;
    const y1 = ys[i + 1] as number;
    slots[own] = y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
  };
}
