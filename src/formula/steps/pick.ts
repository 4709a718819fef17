import type { Slots } from "../run";
import type { Scope } from "../scope";
import type { Table } from "../table";

/** One thing, or one of several picked by an argument's value. */
export type Pick<T> = T | { readonly by: string; readonly of: Readonly<Record<string, T>> };

const isChoice = <T>(pick: Pick<T>): pick is { readonly by: string; readonly of: Readonly<Record<string, T>> } =>
  typeof pick === "object" && pick !== null && "by" in pick && "of" in pick;

/** All that a pick can give. */
export const choicesOf = <T>(pick: Pick<T>): readonly T[] => (isChoice(pick) ? Object.values(pick.of) : [pick]);

/**
 * Makes a pick ready: `prepare` runs once a choice, when the definition is read.
 *
 * @throws Error at run time for a value without a choice, which argument limits must rule out.
 */
export function picker<T, P>(pick: Pick<T>, scope: Scope, prepare: (one: T) => P): (slots: Slots) => P {
  if (!isChoice(pick)) {
    const only = prepare(pick);
    return () => only;
  }
  const by = scope.at(pick.by);
  const ready = new Map(Object.entries(pick.of).map(([word, one]) => [word, prepare(one)]));
  return (slots) => {
    const one = ready.get(String(slots[by]));
    if (one === undefined) throw new Error(`no choice for ${pick.by} ${String(slots[by])}`);
    return one;
  };
}

/** Names in a table that a formula may use. */
export const columnNames = (table: Table): readonly string[] => [table.key.name, ...Object.keys(table.columns)];
