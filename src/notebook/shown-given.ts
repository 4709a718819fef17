import type { ExplainedArgument } from "../formula/explanation";
import type { Given, Value } from "../formula/value";
import { say } from "../words/say";

/** Why nothing comes out at a place of a working. */
export interface Stop {
  readonly sentence: string;
  /** False in a branch that is not taken, where nothing has to come out. */
  readonly isError: boolean;
}

/** What is said where the function refuses; undefined where it does not. */
export function stopOf(refusal: string | undefined, used: boolean): Stop | undefined {
  if (refusal === undefined) return undefined;
  return used
    ? { sentence: refusal, isError: true }
    : { sentence: say`not worked out: this branch is not taken`, isError: false };
}

/** An argument as a working shows it. */
export interface ShownGiven {
  readonly value: Value | Given;
  /** Why the function does not take it. */
  readonly refusal: string | undefined;
}

/**
 * What a function was given is known whatever it makes of it, so it is shown as it is; that it is refused counts only
 * where the function is worked out.
 */
export const shownGiven = ({ value, given, refusal }: ExplainedArgument, used: boolean): ShownGiven => ({
  value: value ?? given,
  refusal: used ? refusal : undefined,
});
