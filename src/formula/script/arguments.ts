import { type Argument, defaultOf, type KeyArgument, type NumberArgument, type RangeArgument } from "../arguments";
import type { Draft } from "./draft";
import { numberScript } from "./expression";

/** What is known of a value before it is looked at: surely a number (an error counts as one that is none), or not. */
export type Form = "number" | "any";

const literal = (value: number | string | boolean): string =>
  typeof value === "number" ? numberScript(value) : JSON.stringify(value);

/** The limits of a number as one condition that no NaN and no infinity passes. */
function insideScript(argument: NumberArgument | RangeArgument, value: string): string {
  const { min, max } = argument;
  const above = "aboveMin" in argument ? ">" : ">=";
  const parts = [
    min === undefined ? `${value}>-Infinity` : `${value}${above}${numberScript(min)}`,
    max === undefined ? `${value}<Infinity` : `${value}<=${numberScript(max)}`,
  ];
  if ("oneOf" in argument && argument.oneOf) {
    parts.push(`(${argument.oneOf.map((one) => `${value}===${numberScript(one)}`).join("||")})`);
  }
  if ("whole" in argument) parts.push(`Math.floor(${value})===${value}`);
  return parts.join("&&");
}

function rangeScript(argument: RangeArgument, given: string, own: string, draft: Draft): void {
  const each = draft.spare();
  draft.line(`const ${own}=typeof ${given}==="object"?${given}:[${given}];`);
  draft.line(`for(const ${each} of ${own})if(!(typeof ${each}==="number"&&${insideScript(argument, each)}))`);
  draft.line(`{${draft.style.refuse}}`);
}

function keyScript(argument: KeyArgument, own: string, draft: Draft): void {
  const keys = draft.table(JSON.stringify(argument.keys));
  draft.line(`if(typeof ${own}==="number")${own}=String(${own});`);
  draft.refuseUnless(`${keys}.includes(${own})`);
}

function valueScript(argument: Exclude<Argument, RangeArgument>, own: string, draft: Draft): void {
  switch (argument.kind) {
    case "text":
      draft.refuseUnless(`typeof ${own}==="string"`);
      if (argument.choices) draft.refuseUnless(`${draft.table(JSON.stringify(argument.choices))}.includes(${own})`);
      break;
    case "key":
      keyScript(argument, own, draft);
      break;
    case "flag":
      draft.refuseUnless(`typeof ${own}==="boolean"`);
      break;
    default:
      draft.refuseUnless(`typeof ${own}==="number"&&${insideScript(argument, own)}`);
  }
}

const blankScript = (value: string): string => `${value}===null||${value}===undefined||${value}===""`;

/** Writes the check of one argument as `checkArgument` makes it; `given` is the text of what the cell hands over. */
export function argumentScript(name: string, argument: Argument, given: string, form: Form, draft: Draft): void {
  const own = draft.add(name);
  if (form === "number" && (argument.kind === undefined || argument.kind === "number")) {
    draft.line(`const ${own}=${given};`);
    draft.refuseUnless(insideScript(argument, own));
  } else if (argument.kind === "range") {
    draft.line(`if(${blankScript(given)}){${draft.style.refuse}}`);
    rangeScript(argument, given, own, draft);
  } else {
    const otherwise = defaultOf(argument);
    // A default needs no check, as in `checkArgument`.
    const filled = otherwise === undefined ? draft.style.refuse : `${own}=${literal(otherwise)};`;
    draft.line(`let ${own}=${given};`);
    draft.line(`if(${blankScript(own)}){${filled}}else{`);
    valueScript(argument, own, draft);
    draft.line("}");
  }
}
