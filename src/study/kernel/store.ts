import { type Kinds, kinds, type Plain } from "./plain";

/** Where a running kernel keeps its cells: numbers by themselves, everything else beside them, by place. */
export interface Store {
  readonly numbers: Float64Array;
  readonly others: Plain[];
}

export const newStore = (places: number): Store => ({
  numbers: new Float64Array(places),
  others: Array.from({ length: places }, () => null),
});

export function put(store: Store, place: number, kind: Kinds, value: Plain): void {
  if (kind === kinds.number) store.numbers[place] = value as number;
  else store.others[place] = value;
}

/** A cell holds no zero with a sign. */
export const asHeld = (value: Plain): Plain => (typeof value === "number" ? value + 0 : value);
