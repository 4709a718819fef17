import type { Position } from "./model";

/** What an edit, an undo or a redo changed. */
export interface Change {
  /** A new step, the last one taken back, or one of these done again. */
  readonly way: "step" | "undo" | "redo";
  readonly label: string;
  /** Pages, rows, columns or options came, went or moved: positions noted before are void. */
  readonly structure: boolean;
  /** Cells whose text or value changed; empty with `structure`, when everything may have. */
  readonly cells: readonly Position[];
  /** Where the change was made, for the selection to follow. */
  readonly at: readonly Position[];
}
