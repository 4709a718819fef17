/** The one tree that every formula text is read into; run, shown, unfolded and audited from here. */
export type Expression =
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "name"; readonly name: string }
  | { readonly kind: "minus"; readonly of: Expression }
  | { readonly kind: "binary"; readonly op: Arithmetic; readonly left: Expression; readonly right: Expression }
  | { readonly kind: "compare"; readonly op: Comparison; readonly left: Expression; readonly right: Expression }
  | { readonly kind: "logic"; readonly op: "and" | "or"; readonly left: Expression; readonly right: Expression }
  | { readonly kind: "call"; readonly name: MathName; readonly args: readonly Expression[] }
  | {
      readonly kind: "choice";
      readonly test: Expression;
      readonly then: Expression;
      readonly otherwise: Expression;
    };

export type Arithmetic = "+" | "-" | "*" | "/" | "^";
export type Comparison = "<" | "<=" | ">" | ">=" | "==" | "!=";

/** The functions that a formula text may call, with their number of arguments. */
export const mathArity = {
  sqrt: 1,
  abs: 1,
  ceil: 1,
  floor: 1,
  exp: 1,
  ln: 1,
  log10: 1,
  sin: 1,
  cos: 1,
  tan: 1,
  asin: 1,
  acos: 1,
  atan: 1,
  radians: 1,
  degrees: 1,
  min: 2,
  max: 2,
} as const;

export type MathName = keyof typeof mathArity;
