import { isFormula } from "../../engine/content";
import { isOptionPage, type Notebook, optionsOf } from "../../notebook/model";
import { counted, say } from "../../words/say";

/** An unexpected error, as often as it happened. */
export interface Fault {
  readonly what: string;
  /** Where in the program, as the browser tells it. */
  readonly trace: string;
  readonly when: Date;
  readonly times: number;
}

/** Where it happened. */
export interface Scene {
  readonly version: string;
  readonly browser: string;
  readonly window: string;
  readonly notebook: Notebook;
  /** Number of the page that is shown, from 1. */
  readonly page: number;
  readonly safety: string;
}

/** What was thrown, in words. */
export function faultOf(problem: unknown, when: Date): Fault {
  const isError = problem instanceof Error;
  return {
    what: isError ? `${problem.name}: ${problem.message}` : String(problem),
    trace: isError ? (problem.stack ?? "") : "",
    when,
    times: 1,
  };
}

/** Lines of a trace with the names of the program's files; where the program lies is nobody's business. */
const places = (trace: string): string =>
  trace
    .split("\n")
    .filter((line) => /:\d+:\d+/.test(line))
    .map((line) => line.trim().replace(/[a-z-]+:\/\/\S*\//gi, ""))
    .slice(0, 12)
    .join("\n  ") || say`not told`;

function sizeOf({ pages }: Notebook): string {
  const cells = pages.flatMap(({ rows }) => rows.flat()).filter((text) => text !== "");
  const options = pages.filter(isOptionPage).length;
  return say`${pages.length} pages, ${options} of them with options, ${cells.length} cells, ${cells.filter(isFormula).length} formulas`;
}

/**
 * What helps to find the error, and nothing of what the notebook says: sizes and counts alone. The words of the error
 * itself may quote a cell.
 */
export const reportOf = ({ what, trace, when, times }: Fault, scene: Scene): string =>
  `${say`Report of an error in Athwart ${scene.version}`}

${say`What happened`}
  ${what}
  ${say`${times === 1 ? say`once` : say`${times} times`}, at ${when.toISOString()}`}

${say`Where in the program`}
  ${places(trace)}

${say`Around it`}
  ${say`browser: ${scene.browser}`}
  ${say`window: ${scene.window}`}
  ${say`notebook: ${sizeOf(scene.notebook)}, ${counted(optionsOf(scene.notebook).length, "option")}; page ${scene.page} was shown`}
  ${say`keeping: ${scene.safety}`}

${say`Of the notebook's names, texts and numbers nothing is in here, unless the line under "What happened" quotes a cell.`}
`;
