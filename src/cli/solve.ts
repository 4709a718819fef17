import { finish } from "../study/carry-out";
import type { Range } from "../study/range";
import { smallest } from "../study/smallest";
import { solve } from "../study/solve";
import { say } from "../words/say";
import { Misuse, type Output } from "./output";
import { inputPlace, numberFrom, openStudy, whyLine } from "./study";

export interface SolveWishes {
  /** The input that is looked for: `Supply.run`. */
  readonly by: string | undefined;
  readonly low: string | undefined;
  readonly high: string | undefined;
  readonly atMost: boolean;
  readonly json: boolean;
}

function rangeFrom({ low, high }: SolveWishes): { readonly range?: Partial<Range> } {
  const [from, to] = [numberFrom("--low", low), numberFrom("--high", high)];
  if (from === undefined && to === undefined) return {};
  return { range: { ...(from !== undefined && { low: from }), ...(to !== undefined && { high: to }) } };
}

/** `solve FOLDER Supply.drop@Cruiser=0.5 --by Supply.run`, or `solve FOLDER checks@Cruiser --by Supply.area`. */
export function solveBack(output: Output, args: readonly string[], wishes: SolveWishes): void {
  const [folder, question, ...more] = args;
  if (folder === undefined || question === undefined || more.length > 0 || wishes.by === undefined) {
    throw new Misuse(
      say`solve takes a folder, a result with the value that is wanted, and the input to change, for example solve sheets/three-hulls Supply.drop@Cruiser=0.5 --by Supply.run.`,
    );
  }
  const split = question.lastIndexOf("=");
  const forChecks = question === "checks" || question.startsWith("checks@");
  if (split < 0 && !forChecks) {
    throw new Misuse(say`${question}: write the value that is wanted, for example ${question}=0.5, or checks@Option.`);
  }
  const open = openStudy(output, folder, forChecks ? question : question.slice(0, split));
  const input = inputPlace(open, wishes.by);
  const { subject, runner } = open;
  if (forChecks) {
    const answer = finish(smallest(subject, runner, { input, ...rangeFrom(wishes) }));
    output.write(wishes.json ? `${JSON.stringify(answer, undefined, 2)}\n` : `${whyLine(runner)}${answer.sentence}\n`);
    return;
  }
  if (subject.results.length !== 1) throw new Misuse(say`${question}: name one result, not ${subject.results.length}.`);
  const wanted = numberFrom(say`The value that is wanted,`, question.slice(split + 1)) ?? 0;
  const enough = wishes.atMost ? "at most" : "at least";
  const answer = finish(solve(subject, runner, { input, result: 0, wanted, enough, ...rangeFrom(wishes) }));
  output.write(wishes.json ? `${JSON.stringify(answer, undefined, 2)}\n` : `${whyLine(runner)}${answer.sentence}\n`);
}
