import type { AnyDefinition } from "./definition";
import { argumentScript, type Form } from "./script/arguments";
import { Draft, type DraftStyle } from "./script/draft";
import { numberScript } from "./script/expression";
import { stepScript } from "./script/steps";

export type { Form };

/** A named function written into a longer text. */
export interface WrittenCall {
  /** Data that the lines read; belongs before them, once. */
  readonly tables: readonly string[];
  readonly lines: readonly string[];
  /** Text of the answer after the lines: a number, text or flag; a number that is not finite is a refusal. */
  readonly answer: string;
}

/**
 * The steps of a named function as lines of JavaScript over texts that stand for the given values.
 *
 * Nothing that a person types becomes code: names are replaced by numbered variables, numbers are printed by
 * their value, words are JSON strings. The lines take two names from outside: `convertUnit`, and `readSurface` from
 * `surface/read-surface.ts`, which throws a Fault where the text answers NaN.
 *
 * @param given texts of the values in the order of the definition, without side effects; left out means blank.
 * @param forms what is known of each value; `any` when left out.
 * @throws Error when a step cannot be read.
 */
export function writeCall(
  definition: AnyDefinition,
  given: readonly string[],
  forms: readonly Form[],
  style: DraftStyle,
): WrittenCall {
  const draft = new Draft(style);
  try {
    Object.entries(definition.args).forEach(([name, argument], i) => {
      argumentScript(name, argument, given[i] ?? "null", given[i] === undefined ? "any" : (forms[i] ?? "any"), draft);
    });
    for (const [name, { value }] of Object.entries(definition.constants ?? {})) draft.stand(name, numberScript(value));
    for (const step of definition.steps) stepScript(step, draft);
    const last = definition.steps.findLast((step) => step.kind !== "require");
    if (!last || !("symbol" in last)) throw new Error("no step gives a result");
    return { tables: draft.tables, lines: draft.lines, answer: draft.at(last.symbol) };
  } catch (cause) {
    throw new Error(`${definition.name}: ${cause instanceof Error ? cause.message : String(cause)}`);
  }
}

/**
 * A named function as the text of one JavaScript expression whose value is a plain function of the arguments in
 * the order of the definition. It answers what `callFunction` answers, bit for bit, and NaN where that throws a
 * Fault; what is given beyond the definition's arguments is for the caller to refuse. See `writeCall` for what the
 * text is made of.
 *
 * @param forms what is known of each argument; `number` leaves out the check of its kind.
 */
export function functionText(definition: AnyDefinition, forms: readonly Form[] = []): string {
  const names = Object.keys(definition.args).map((_, i) => `a${i}`);
  const { tables, lines, answer } = writeCall(definition, names, forms, { prefix: "", refuse: "return NaN;" });
  // Minus itself tells a number that is not finite; a cell has no minus zero.
  const result = `typeof ${answer}==="number"?${answer}-${answer}+${answer}:${answer}`;
  return `(()=>{${tables.join("")}return (${names.join(",")})=>{\n${lines.join("\n")}\nreturn ${result};};})()`;
}
