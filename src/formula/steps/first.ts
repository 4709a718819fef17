import type { UnitText } from "../../units/names";
import { Fault } from "../fault";
import type { Act, Scope } from "../scope";
import { columnAt, type Table } from "../table";
import type { Value } from "../value";
import { choicesOf, columnNames, type Pick, picker } from "./pick";

/** The first row of a table, from the small end or from the large one, that satisfies a condition. */
export interface First {
  readonly kind: "first";
  readonly symbol: string;
  readonly table: Pick<Table>;
  /** Condition over earlier names and the table's own column names. */
  readonly where: string;
  readonly from?: "start" | "end";
  /** The column whose value is the result. */
  readonly take: string;
  /** What to say when no row satisfies it. */
  readonly none: string;
  readonly unit: UnitText | "text";
  readonly why: string;
}

export function first(step: First, scope: Scope): Act {
  const names = columnNames(choicesOf(step.table)[0] as Table);
  const places = names.map((name) => scope.add(name));
  const test = scope.test(step.where);
  const own = scope.add(step.symbol);
  const table = picker(step.table, scope, (one) => ({
    rows: step.from === "end" ? [...one.rows].reverse() : one.rows,
    take: columnAt(one, step.take),
  }));
  return (slots) => {
    const { rows, take } = table(slots);
    for (const row of rows) {
      for (let i = 0; i < places.length; i++) slots[places[i] as number] = row[i] as Value;
      if (test(slots)) {
        slots[own] = row[take] as Value;
        return;
      }
    }
    throw new Fault("missing", step.none);
  };
}
