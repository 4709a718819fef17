import type { UnitText } from "../units/names";
import type { Argument } from "./arguments";
import type { Source } from "./source";
import type { Step } from "./steps";

/** At least one. */
export type Some<T> = readonly [T, ...T[]];

export type Arguments = Readonly<Record<string, Argument>>;

/** A number that a rule fixes, with the text that fixes it. */
export interface Constant {
  readonly value: number;
  readonly unit: UnitText;
  readonly about: string;
  readonly source: Source;
}

export type Constants = Readonly<Record<string, Constant>>;

type ValueOf<A extends Argument> = A extends { kind: "text" | "key" }
  ? string
  : A extends { kind: "flag" }
    ? boolean
    : A extends { kind: "range" }
      ? readonly number[]
      : number;

type Optional<A extends Arguments> = { [K in keyof A]: A[K] extends { otherwise: unknown } ? K : never }[keyof A];

/** Arguments by name; those with a default may be left out. */
export type GivenTo<A extends Arguments> = { readonly [K in Exclude<keyof A, Optional<A>>]: ValueOf<A[K]> } & {
  readonly [K in Optional<A>]?: ValueOf<A[K]>;
};

/** A worked case with the text it comes from; run for every function by one test, shown on Proof. */
export interface Example<A extends Arguments = Arguments> {
  readonly given: GivenTo<A>;
  readonly expect: number | string | boolean;
  /** Half a unit of the last digit that the source prints; 0 for text and whole numbers. */
  readonly within: number;
  readonly source: Source;
}

/** A named function of the notebook, as data. */
export interface Definition<A extends Arguments = Arguments, C extends Constants = Constants> {
  readonly name: `${Uppercase<string>}.${Uppercase<string>}` | "CONVERT";
  readonly title: string;
  readonly args: A;
  readonly constants?: C;
  readonly steps: Some<Step>;
  /** Where it may be used, what it leaves out, and what it must not be taken for. */
  readonly valid: string;
  readonly sources: Some<Source>;
  readonly examples: Some<Example<NoInfer<A>>>;
  /** The usual caution, where work that follows the number can hurt someone. */
  readonly caution?: string;
  /** Name of the notebook's page that defines it; left out for a shipped function. */
  readonly ownOf?: string;
}

/** The definition without its literal types, as everything outside its own file sees it. */
export type AnyDefinition = Omit<Definition, "args" | "constants" | "examples"> & {
  readonly args: Arguments;
  readonly constants?: Constants;
  readonly examples: Some<Omit<Example, "given"> & { readonly given: Readonly<Record<string, unknown>> }>;
};

/** Unit of the result: that of the last step that gives a value. */
export function resultUnit(definition: AnyDefinition): UnitText | "any" | "text" {
  const last = definition.steps.findLast((step) => step.kind !== "require");
  return last && "unit" in last ? last.unit : "1";
}
