/** What a cell is to the eye; every shape differs by more than its colour. */
export type Shape =
  | "heading"
  | "title"
  | "note"
  | "label"
  | "caution"
  | "hold"
  | "key"
  | "unit"
  | "formula"
  | "basis"
  | "input"
  | "result"
  | "holds"
  | "short"
  | "open"
  | "error"
  | "text"
  | "number"
  | "blank";

export interface Look {
  readonly shape: Shape;
  readonly text: string;
  /** Stands to the right, as numbers do. */
  readonly isRight?: boolean;
  /** How far inside (positive) or outside its limit a check lies, as a share of it. */
  readonly margin?: number;
  /** Why there is no value, as a full sentence. */
  readonly sentence?: string;
  /** Long words: they run over several lines. */
  readonly isWrapped?: boolean;
  /** Shows part of another cell's result. */
  readonly isSpilled?: boolean;
}
