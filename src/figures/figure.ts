import { Fault } from "../formula/fault";
import { say } from "../words/say";

/** A figure as SVG text, and the same numbers in words. */
export interface Drawing {
  readonly title: string;
  /** The text alternative: everything that the drawing says, in sentences. */
  readonly says: string;
  readonly svg: string;
}

/** Why there is no drawing. */
export interface NotDrawn {
  readonly title: string;
  readonly sentence: string;
}

export type Figure = Drawing | NotDrawn;

export const isDrawn = (figure: Figure): figure is Drawing => "svg" in figure;

/**
 * Makes a figure, or says in one sentence why it cannot be made.
 *
 * @param make throws a Fault for input that has no drawing.
 */
export function figure(title: string, make: () => Omit<Drawing, "title">): Figure {
  try {
    return { title, ...make() };
  } catch (problem) {
    if (!(problem instanceof Fault)) throw problem;
    return { title, sentence: say`Not drawn. ${problem.sentence}.` };
  }
}
