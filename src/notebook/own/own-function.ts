import type { AnyDefinition } from "../../formula/definition";
import { say } from "../../words/say";

/** A mistake in a row of a function page, as one sentence without its place. */
export interface OwnMistake {
  /** Line of the page from 0. */
  readonly row: number;
  readonly sentence: string;
}

/** A function of the notebook's own, as its page defines it. */
export interface OwnFunction {
  readonly name: string;
  /** Name of the page, and the line of its first row from 0. */
  readonly page: string;
  readonly row: number;
  /** Undefined where a mistake keeps it from being used. */
  readonly definition: AnyDefinition | undefined;
  /** One a row at most, in the order of the rows; none that only follows from another. */
  readonly mistakes: readonly OwnMistake[];
  /** Lines of the examples, in the order of the definition's. */
  readonly exampleRows: readonly number[];
  /** Lines that should name a source and do not. */
  readonly withoutSource: readonly number[];
}

/** `Own functions, row 5: step r: rum is not defined before its use` */
export const mistakeSentence = (page: string, { row, sentence }: OwnMistake): string =>
  say`${page}, row ${row + 1}: ${sentence}`;
