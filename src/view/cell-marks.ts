/** Something that a cell is marked with beside its value: a class, and the words that say it again. */
export interface CellMark {
  readonly kind: string;
  readonly words: string;
}

/** Marks by `markKey`. */
export type Marks = ReadonlyMap<string, CellMark>;

/** A cell, or a whole row where no column is named. Rows count as the page counts them. */
export const markKey = (page: string, row: number, column?: number): string => `${page} ${row} ${column ?? "row"}`;

/** A whole page. */
export const pageKey = (page: string): string => `${page} page`;

const none: readonly CellMark[] = [];

export type Layer = "findings" | "reviews" | "feeds";

/** What lies over the cells, layer by layer: findings, ticks, and what feeds the selected cell. */
export class CellMarks {
  private readonly layers = new Map<Layer, Marks>();
  private readonly listeners = new Set<(layer: Layer) => void>();
  private isBare = true;

  subscribe(listener: (layer: Layer) => void): void {
    this.listeners.add(listener);
  }

  /** Lays marks over the cells in the place of those that the layer had. */
  set(layer: Layer, marks: Marks): void {
    const old = this.layers.get(layer);
    if ((old?.size ?? 0) === 0 && marks.size === 0) return;
    this.layers.set(layer, marks);
    this.isBare = [...this.layers.values()].every(({ size }) => size === 0);
    for (const listener of this.listeners) listener(layer);
  }

  /** What is said of a whole page. */
  ofPage(page: string): readonly CellMark[] {
    return this.under(pageKey(page));
  }

  /** Every cell that is drawn asks for it. */
  at(page: string, row: number, column?: number): readonly CellMark[] {
    return this.isBare ? none : this.under(markKey(page, row, column));
  }

  private under(key: string): readonly CellMark[] {
    return [...this.layers.values()].flatMap((marks) => marks.get(key) ?? []);
  }
}
