/** What a cell shows, as the rest of the program sees it; no type of the engine goes further. */
export type CellValue =
  | { readonly kind: "blank" }
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "flag"; readonly value: boolean }
  | CellFailure;

export interface CellFailure {
  readonly kind: "error";
  /** `#VALUE!`, `#NUM!`, `#N/A` ... */
  readonly code: string;
  /** One sentence for the person at the cell. */
  readonly sentence: string;
  /** Where it began: `Supply!F9`; empty when it began in this very cell. */
  readonly from: string;
}

export const blank: CellValue = { kind: "blank" };

/** Same kind and same content. */
export function sameValue(a: CellValue, b: CellValue): boolean {
  switch (a.kind) {
    case "blank":
      return b.kind === "blank";
    case "number":
      return b.kind === "number" && Object.is(a.value, b.value);
    case "text":
      return b.kind === "text" && a.text === b.text;
    case "flag":
      return b.kind === "flag" && a.value === b.value;
    case "error":
      return b.kind === "error" && a.code === b.code && a.sentence === b.sentence;
  }
}
