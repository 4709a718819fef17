import { say } from "../words/say";

/** A cell by sheet number, row and column, all from 0. */
export interface ParsedCell {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
}

export type Operator = "+" | "-" | "*" | "/" | "^" | "&" | "=" | "<>" | "<" | "<=" | ">" | ">=";

/**
 * A cell formula as the engine reads it, with absolute positions.
 *
 * `^` goes from left to right and a minus sign binds before it, as the engine calculates.
 */
export type Parsed =
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "flag"; readonly value: boolean }
  /** An argument that is left empty. */
  | { readonly kind: "blank" }
  | { readonly kind: "reference"; readonly at: ParsedCell }
  /** Both ends belong to it; whole columns and rows reach to the engine's limits. */
  | { readonly kind: "range"; readonly from: ParsedCell; readonly to: ParsedCell }
  | { readonly kind: "call"; readonly name: string; readonly args: readonly Parsed[] }
  | { readonly kind: "operator"; readonly op: Operator; readonly left: Parsed; readonly right: Parsed }
  | { readonly kind: "sign"; readonly op: "-" | "+" | "%"; readonly of: Parsed }
  | { readonly kind: "brackets"; readonly of: Parsed }
  | { readonly kind: "array"; readonly rows: readonly (readonly Parsed[])[] }
  | { readonly kind: "name"; readonly name: string }
  /** A lost reference, an error value, or text that is no formula. */
  | { readonly kind: "unreadable"; readonly text: string };

/** Said wherever the formula's parts would be shown, when the engine does not give them. */
export const noParse = say`This version of the calculation engine does not show how it reads a formula; results are not touched by that.`;

/** The formulas of which one is made, from left to right; none for a single number, text or reference. */
export function partsOf(parsed: Parsed): readonly Parsed[] {
  switch (parsed.kind) {
    case "call":
      return parsed.args;
    case "operator":
      return [parsed.left, parsed.right];
    case "sign":
    case "brackets":
      return [parsed.of];
    case "array":
      return parsed.rows.flat();
    default:
      return [];
  }
}
