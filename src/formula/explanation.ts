import type { FaultCode } from "./fault";
import type { Source } from "./source";
import type { Step } from "./steps";
import type { Answer, Given, Value } from "./value";

/** One piece of mathematics, twice: for a screen that sets formulas, and for anything that shows plain text. */
export interface Mathematics {
  /** Plain text with the usual signs: `R = r / metres per km × run`. */
  readonly text: string;
  /** A whole `<math>` element. Made of names and numbers alone; everything else in it is escaped. */
  readonly mathml: string;
}

/** A source with the line in which it is said. */
export interface NamedSource {
  readonly source: Source;
  readonly line: string;
}

export interface ExplainedArgument {
  /** As in the definition: `halfBreadth`. */
  readonly name: string;
  /** As a person reads it: `half breadth`. */
  readonly words: string;
  readonly about: string;
  /** Unit text; `text` for words, keys and flags; `any` where every unit may stand. */
  readonly unit: string;
  /** What the cell gave, before defaults. */
  readonly given: Given;
  /** What the steps work with; undefined when the argument is refused. */
  readonly value: Value | undefined;
  readonly by: "given" | "default";
  /** What is allowed, in words: `0 to 5000 A`. */
  readonly allowed: string;
  /** Inside what is allowed. */
  readonly inside: boolean;
  /** Why it is refused, where it is. */
  readonly refusal: string | undefined;
}

export interface ExplainedConstant {
  readonly name: string;
  readonly words: string;
  readonly about: string;
  readonly value: number;
  readonly unit: string;
  readonly source: NamedSource;
}

export interface ExplainedStep {
  readonly kind: Step["kind"];
  /** Empty for a condition that only guards. */
  readonly symbol: string;
  /** What is done, in symbols: `U = R × current`. */
  readonly symbols: Mathematics;
  /** The same with the numbers put in; undefined when the call stops before. */
  readonly numbers: Mathematics | undefined;
  /** Undefined when the call stops here or before, and for a guard. */
  readonly value: Value | undefined;
  /** Unit text, `1` for a plain number, `text` for words, `any`. */
  readonly unit: string;
  readonly why: string;
  /** What was done, as a sentence, where the mathematics does not say it all; empty for plain algebra. */
  readonly words: string;
  /** Of the table that was read. */
  readonly source: NamedSource | undefined;
  /** False when the call stops before this step; then only its mathematics in symbols is known. */
  readonly reached: boolean;
  /** The call stops at this step, with this sentence. */
  readonly refusal: string | undefined;
}

/** Everything there is to say of one call of a named function, as data. */
export interface Explanation {
  readonly name: string;
  readonly title: string;
  /** Name of the notebook's page that defines it; undefined for a shipped function. */
  readonly ownOf: string | undefined;
  readonly arguments: readonly ExplainedArgument[];
  /** Sentence when more arguments are written than the function takes. */
  readonly surplus: string | undefined;
  readonly constants: readonly ExplainedConstant[];
  readonly steps: readonly ExplainedStep[];
  readonly result: Answer | undefined;
  readonly unit: string;
  readonly refusal: { readonly code: FaultCode; readonly sentence: string } | undefined;
  readonly valid: string;
  readonly caution: string | undefined;
  readonly sources: readonly NamedSource[];
}
