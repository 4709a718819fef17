import type { UnitText } from "../units/names";
import type { Source } from "./source";

export interface Column {
  readonly unit: UnitText;
  readonly about: string;
  /** Where this column alone has weaker or other evidence than the table. */
  readonly source?: Source;
}

/**
 * A published table. The first cell of a row is its key (text or number, rows in rising order of size),
 * the others follow the order of `columns`. `null` marks a place that the source leaves empty.
 */
export interface Table<Key extends string = string, Name extends string = string> {
  readonly title: string;
  readonly source: Source;
  readonly key: { readonly name: Key; readonly about: string; readonly unit?: UnitText };
  readonly columns: Readonly<Record<Name, Column>>;
  readonly rows: readonly (readonly [string | number, ...(number | null)[]])[];
  /** Where single rows, by their key, have weaker or other evidence than the table. */
  readonly rowSources?: Readonly<Record<string, Source>>;
}

/** Keeps the column names literal, so that formulas over them are checked by the compiler. */
export function defineTable<const Key extends string, const Name extends string>(
  table: Table<Key, Name>,
): Table<Key, Name> {
  return table;
}

/** Position of a column in a row; 0 is the key. */
export function columnAt(table: Table, name: string): number {
  return name === table.key.name ? 0 : Object.keys(table.columns).indexOf(name) + 1;
}
