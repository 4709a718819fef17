import type { Node } from "./node";
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

/** The value of a cell or a fixed value. */
export function get(store: Store, node: Node): Plain {
  if (node.op === "plain") return node.value;
  if (node.op !== "cell") throw new Error("only cells and fixed values are asked for");
  return node.kinds === kinds.number ? (store.numbers[node.place] as number) : (store.others[node.place] ?? null);
}
