import { callFunction, inOrder } from "../../formula/call";
import type { AnyDefinition } from "../../formula/definition";
import { Fault } from "../../formula/fault";
import { say } from "../../words/say";
import { literalText } from "./limits-text";

type Example = AnyDefinition["examples"][number];

/** What an example gives that is not what it says, as a sentence without its place; undefined where it agrees. */
export function whyItFails(definition: AnyDefinition, { given, expect, within }: Example): string | undefined {
  try {
    const answer = callFunction(definition, inOrder(definition, given));
    const agrees = typeof expect === "number" ? Math.abs(Number(answer) - expect) <= within : answer === expect;
    if (agrees) return undefined;
    const wanted = `${literalText(expect)}${within > 0 ? ` ± ${within}` : ""}`;
    return say`the example gives ${literalText(answer)} and says ${wanted}; mend the formula or the example`;
  } catch (problem) {
    if (!(problem instanceof Fault)) throw problem;
    return say`the example is refused: ${problem.sentence}`;
  }
}
