/** Something that a cell is marked with beside its value: a class, and the words that say it again. */
export interface CellMark {
  readonly kind: string;
  readonly words: string;
}

/** Marks by `markKey`. */
export type Marks = ReadonlyMap<string, CellMark>;

/** A cell, or a whole row where no column is named. Rows count as the page counts them. */
export const markKey = (page: string, row: number, column?: number): string => `${page} ${row} ${column ?? "row"}`;

type Layer = "findings" | "reviews" | "feeds";

/** What lies over the cells, layer by layer: findings, ticks, and what feeds the selected cell. */
export class CellMarks {
  private readonly layers = new Map<Layer, Marks>();
  private readonly listeners = new Set<() => void>();

  subscribe(listener: () => void): void {
    this.listeners.add(listener);
  }

  /** Lays marks over the cells in the place of those that the layer had. */
  set(layer: Layer, marks: Marks): void {
    const old = this.layers.get(layer);
    if ((old?.size ?? 0) === 0 && marks.size === 0) return;
    this.layers.set(layer, marks);
    for (const listener of this.listeners) listener();
  }

  at(page: string, row: number, column?: number): readonly CellMark[] {
    const key = markKey(page, row, column);
    return [...this.layers.values()].flatMap((marks) => marks.get(key) ?? []);
  }
}
