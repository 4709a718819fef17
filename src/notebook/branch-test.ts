import { asksFailure, isBranch } from "./branches";
import { argumentTexts, endOfQuote, scanCalls, type TypedCall } from "./scan-calls";

/** These answer otherwise in another cell or at another time, or with more than one value. */
const apart: ReadonlySet<string> = new Set(["RAND", "RANDBETWEEN", "NOW", "TODAY", "ROW", "SEQUENCE"]);
/** These make one value of a block. */
const gathering: ReadonlySet<string> = new Set(
  "AND OR XOR SUM MIN MAX AVERAGE MEDIAN PRODUCT COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS SUMIF SUMIFS".split(" "),
);

/** Whether a formula gives the same single value in another cell of its column. */
function standsAnywhere(formula: string): boolean {
  const calls = scanCalls(formula);
  if (calls.some(({ name }) => apart.has(name))) return false;
  const isGathered = (at: number) =>
    calls.some(({ name, open, close = formula.length }) => gathering.has(name) && open <= at && at < close);
  for (let i = 0; i < formula.length; i++) {
    const mark = formula[i];
    if (mark === '"' || mark === "'") i = endOfQuote(formula, i);
    else if (mark === "{" || (mark === ":" && !isGathered(i))) return false;
  }
  return true;
}

/** A choice with the question about its branch in the place of the branch, and FALSE in all others. */
function asked({ name }: TypedCall, args: readonly string[], place: number, question: string): string {
  const failure = asksFailure.get(name);
  if (failure) return `IF(NOT(${failure}(${args[0]})),FALSE(),${question})`;
  const marked = args.map((arg, i) => (i === place ? question : isBranch(name, i, args.length) ? "FALSE()" : arg));
  return `${name}(${marked.join(",")})`;
}

/**
 * The question whether a part of a formula stands in a branch that is taken, as a formula without `=` that can stand
 * in another cell of the column: `IF(E2=1,TRUE(),FALSE())`. An error that decides about the branch is its error.
 *
 * @param text the whole formula.
 * @param start where the part begins.
 * @returns undefined for a part that is worked out in any case, and where another cell might answer otherwise.
 */
export function branchTest(text: string, start: number): string | undefined {
  const around = scanCalls(text).filter(({ open, close }) => close !== undefined && open <= start && start < close);
  const question = around.reduceRight((inner, call) => {
    const args = argumentTexts(text, call);
    const place = call.commas.filter((comma) => comma < start).length;
    return isBranch(call.name, place, args.length) ? asked(call, args, place, inner) : inner;
  }, "TRUE()");
  return question === "TRUE()" || !standsAnywhere(question) ? undefined : question;
}
