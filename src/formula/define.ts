import type { AnyDefinition, Arguments, Constants, Definition, Some } from "./definition";
import type { MathName } from "./expression";
import type { Step } from "./steps";
import type { Table } from "./table";

// The compiler reads the formula texts: a name that is no argument, constant or earlier symbol is an error there.

type Cut<S extends string, D extends string, Acc = never> = S extends `${infer A}${D}${infer B}`
  ? Cut<B, D, Acc | A>
  : Acc | S;

type Split<S extends string> = S extends string ? Cut<CutAll<S>, "?"> : never;
type CutAll<S extends string> = Cut4<Cut<Cut<Cut<Cut<S & string, " ">, "(">, ")">, ",">>;
type Cut4<S> = S extends string ? Cut8<Cut<Cut<Cut<Cut<S, "+">, "-">, "*">, "/">> : never;
type Cut8<S> = S extends string ? Cut<Cut<Cut<Cut<Cut<Cut<S, "^">, "<">, ">">, "=">, "!">, ":"> : never;

type Plain = "" | `${number}` | `${number}e` | MathName | "and" | "or" | "pi";
type Unknown<S extends string, Names> = Exclude<Split<S>, Plain | Names>;

type Checked<S, Names> = S extends string
  ? [Unknown<S, Names>] extends [never]
    ? S
    : { readonly NOT_DEFINED: Unknown<S, Names> }
  : S;

/** Keys of a step whose text is a formula or a name. */
type FormulaKey = "formula" | "holds" | "where" | "start" | "next" | "count" | "term" | "weight" | "from" | "to" | "at";

type TableNames<T> =
  T extends Table<infer K, infer N>
    ? K | N
    : T extends { of: Readonly<Record<string, infer U>> }
      ? TableNames<U>
      : never;

/** Names that exist inside a step only. */
type Local<S> = S extends { kind: "first"; table: infer T }
  ? TableNames<T> | "start" | "end"
  : S extends { kind: "sum"; index: infer I }
    ? I
    : S extends { kind: "total"; each: infer E }
      ? E
      : S extends { kind: "mean"; angle: infer A }
        ? A
        : S extends { kind: "root"; symbol: infer Y }
          ? Y
          : never;

type CheckStep<S, Names> = {
  readonly [K in keyof S]: K extends FormulaKey
    ? Checked<S[K], Names | Local<S>>
    : K extends "cases"
      ? { readonly [C in keyof S[K]]: Checked<S[K][C], Names> }
      : S[K];
};

type SymbolOf<S> = S extends { symbol: infer Y } ? Y : never;

type CheckSteps<S, Names> = S extends readonly [infer H, ...infer R]
  ? readonly [CheckStep<H, Names>, ...CheckSteps<R, Names | SymbolOf<H>>]
  : readonly [];

/**
 * Defines a named function. The compiler refuses a missing unit, source or example, a misspelt name in a
 * formula and a symbol used before its step.
 */
export function defineFunction<
  const A extends Arguments,
  const S extends Some<Step>,
  const C extends Constants = Record<never, never>,
>(
  definition: Omit<Definition<A, C>, "steps"> & {
    readonly steps: S & CheckSteps<S, (keyof A & string) | (keyof C & string)>;
  },
): AnyDefinition {
  return definition as unknown as AnyDefinition;
}
