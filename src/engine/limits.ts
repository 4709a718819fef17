import { say } from "../words/say";

/** How much a formula may ask for. More than this is a slip of the pen, or somebody means harm. */
export const limits = {
  /** Letters of a formula. */
  formula: 8192,
  /** Brackets inside one another. */
  depth: 64,
  /** Signs and operators of a formula: each is a level of the engine's own calls. */
  operators: 400,
  /** Letters of a cell's text, typed or calculated. */
  text: 100_000,
  /** Cells of one range or of one result. */
  cells: 200_000,
  /** Seconds that a change may calculate, and a whole notebook when it is opened. */
  change: 10,
  opening: 60,
} as const;

const strings = /"(?:[^"]|"")*"?|'(?:[^']|'')*'?/g;

/** How far brackets stand inside one another. */
function depthOf(formula: string): number {
  let depth = 0;
  let most = 0;
  for (const letter of formula) {
    if (letter === "(" || letter === "{") most = Math.max(most, ++depth);
    else if (letter === ")" || letter === "}") depth--;
  }
  return most;
}

/** Why a text cannot stand in a cell, as the end of a sentence that begins with the cell; undefined when it can. */
export function textFault(text: string): string | undefined {
  if (text.length > limits.text)
    return say`the letters of the text are ${text.length} (allowed ${limits.text}); shorten it`;
  if (!text.startsWith("=") || text.length < limits.depth) return undefined;
  if (text.length > limits.formula) {
    return say`the letters of the formula are ${text.length} (allowed ${limits.formula}); do it in several cells`;
  }
  const bare = text.slice(1).replace(strings, "x");
  const depth = depthOf(bare);
  if (depth > limits.depth) {
    return say`the brackets inside one another are ${depth} (allowed ${limits.depth}); do it in several cells`;
  }
  const operators = bare.match(/[-+*/^&=<>%]/g)?.length ?? 0;
  return operators > limits.operators
    ? say`the operators of the formula are ${operators} (allowed ${limits.operators}); do it in several cells`
    : undefined;
}
