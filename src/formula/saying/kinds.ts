import type { Source } from "../source";
import type { Standing, Written } from "./standing";

/** What a kind of step has to say of itself. */
export interface Said {
  /** Right side of `symbol = ...`, or the whole condition of a guard. */
  readonly symbols: Written;
  /** The same with the numbers put in. */
  readonly numbers: Written | undefined;
  /** What was done, in a sentence; empty where the mathematics says it. */
  readonly words: string;
  readonly source?: Source | undefined;
}

/** Explains one step; `after` is the call once the step has run, or undefined when it has not. */
export type Explain<S> = (step: S, after: Standing | undefined) => Said;
