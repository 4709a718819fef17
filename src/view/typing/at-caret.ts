import { endOfQuote, scanCalls, type TypedCall } from "../../notebook/scan-calls";
import { asStored } from "../../notebook/typed-formula";

/** Whether the caret stands inside a text in quotation marks or a page's name in apostrophes. */
function isQuoted(text: string, caret: number): boolean {
  for (let i = 0; i < caret; i++) {
    if (text[i] !== '"' && text[i] !== "'") continue;
    i = endOfQuote(text, i);
    if (i >= caret) return true;
  }
  return false;
}

/** The beginning of a function's name that ends at the caret: at least one letter, nothing of a reference or number. */
export function nameAtCaret(text: string, caret: number): string | undefined {
  if (!text.startsWith("=") || isQuoted(text, caret)) return undefined;
  const before = text.slice(0, caret);
  const name = /(?<![\p{L}\p{N}_.!$'])\p{L}[\p{L}\p{N}_.]*$/u.exec(before)?.[0];
  // In the middle of a word nothing is offered: it would be cut in two.
  return name !== undefined && !/^[\p{L}\p{N}_.]/u.test(text.slice(caret)) ? name : undefined;
}

/** The beginning of a name at the caret, in a formula of a function page: it has no equals sign. */
export function wordAtCaret(text: string, caret: number): string | undefined {
  const word = /(?<![A-Za-z0-9_.])[A-Za-z][A-Za-z0-9_]*$/.exec(text.slice(0, caret))?.[0];
  return word !== undefined && !/^[A-Za-z0-9_]/.test(text.slice(caret)) ? word : undefined;
}

export interface ArgumentAtCaret {
  readonly call: TypedCall;
  /** Which argument, from 0. */
  readonly argument: number;
}

/** The innermost call whose brackets hold the caret. */
export function argumentAtCaret(text: string, caret: number): ArgumentAtCaret | undefined {
  if (!text.startsWith("=")) return undefined;
  const around = scanCalls(asStored(text)).filter((call) => call.open <= caret && (call.close ?? text.length) >= caret);
  const call = around.reduce<TypedCall | undefined>(
    (deepest, one) => (deepest && deepest.depth > one.depth ? deepest : one),
    undefined,
  );
  return call && { call, argument: call.commas.filter((comma) => comma < caret).length };
}

/** Whether a reference to a cell can be put in at the caret: a formula, after an operator, a bracket or a comma. */
export function takesReference(text: string, caret: number): boolean {
  if (!text.startsWith("=") || caret < 1 || isQuoted(text, caret)) return false;
  return /[=+\-*/^&(,<>:;]\s*$/.test(text.slice(0, caret)) && !/^\s*[\p{L}\p{N}_.$"'(]/u.test(text.slice(caret));
}
