import type { UnitText } from "../../units/names";
import { said, say } from "../../words/say";
import { words } from "../arguments";
import { Fault } from "../fault";
import type { Act, Scope } from "../scope";
import { columnAt, type Table } from "../table";
import { type Pick, picker } from "./pick";

/** The value of a published table at an exact key; no reading between rows. */
export interface Lookup {
  readonly kind: "lookup";
  readonly symbol: string;
  readonly table: Table;
  /** The argument or symbol that holds the key. */
  readonly key: string;
  readonly column: Pick<string>;
  readonly unit: UnitText;
  readonly why: string;
}

function refusal(step: Lookup, key: unknown): Fault {
  const unit = step.table.key.unit ? ` ${step.table.key.unit}` : "";
  const next = step.table.rows.find(([size]) => typeof size === "number" && typeof key === "number" && size > key);
  const first = step.table.rows[0]?.[0];
  const last = step.table.rows.at(-1)?.[0];
  const advice = next ? say`next is ${next[0]}${unit}` : say`it holds ${first ?? ""} to ${last ?? ""}${unit}`;
  return new Fault(
    "missing",
    say`${words(step.key)}: ${typeof key === "number" ? key : String(key)}${unit} is not in ${said(step.table.title)}; ${advice}`,
  );
}

export function lookup(step: Lookup, scope: Scope): Act {
  const { table } = step;
  const rows = new Map(table.rows.map((row) => [row[0], row]));
  const key = scope.at(step.key);
  const column = picker(step.column, scope, (name) => columnAt(table, name));
  const own = scope.add(step.symbol);
  return (slots) => {
    const row = rows.get(slots[key] as string | number);
    if (!row) throw refusal(step, slots[key]);
    const value = row[column(slots)];
    if (value === null || value === undefined) {
      throw new Fault(
        "missing",
        say`${said(step.table.title)} has no value for ${words(step.key)} ${String(slots[key])} there`,
      );
    }
    slots[own] = value;
  };
}
