import { say } from "../words/say";
import type { Explanation } from "./explanation";

/** Whether what a function was given is inside what it holds for, in a sentence. */
export function insideSentence({ arguments: args, refusal, surplus }: Explanation): string {
  const outside = args.filter(({ inside }) => !inside).map(({ words }) => words);
  if (outside.length > 0) return say`Outside what is allowed: ${outside.join(", ")}.`;
  if (surplus) return surplus;
  return refusal
    ? say`Each input is inside what is allowed, and they do not fit together.`
    : say`All inputs are inside what is allowed.`;
}
