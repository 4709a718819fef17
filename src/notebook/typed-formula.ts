import { decimalSign } from "../words/decimal-sign";

/**
 * How formulas are typed and read where the decimal sign is a comma: `=MAX(1,5;2)`, `{1;2|3;4}`, as OpenFormula's
 * files part arguments, columns and rows. Files and the engine have `=MAX(1.5,2)` and `{1,2;3,4}` everywhere; texts in
 * quotation marks and names of pages in apostrophes stay. Every sign is changed for one sign, so places stay too.
 */
const partsOf = (sign: string): RegExp =>
  new RegExp(
    String.raw`"(?:[^"]|"")*"?|'(?:[^']|'')*'?|(?<![\p{L}\p{N}_.$])(?:\d+[${sign}]\d+|[${sign}]\d+)|[^"']`,
    "gsu",
  );

const storedParts = partsOf(".");
const typedParts = partsOf(",");

/** What stands between the arguments of a call, as it is typed. */
export const argumentSign = (): string => (decimalSign() === "," ? ";" : ",");

/** A stored formula as the person types it. */
export function formulaAsTyped(stored: string): string {
  if (decimalSign() === ".") return stored;
  let braces = 0;
  return stored.replace(storedParts, (part) => {
    if (part === "{") braces++;
    if (part === "}") braces--;
    if (part === ",") return ";";
    if (part === ";") return braces > 0 ? "|" : ";";
    return /^\d*\.\d+$/.test(part) ? part.replace(".", ",") : part;
  });
}

/** The formula as it is stored, or both of its meanings: a comma between two numbers in a call reads two ways. */
export type ReadFormula = string | { readonly asDecimals: string; readonly asArguments: string };

function stored(typed: string, commaIsDecimal: boolean): string {
  let braces = 0;
  return typed.replace(typedParts, (part) => {
    if (part === "{") braces++;
    if (part === "}") braces--;
    if (part === ";") return ",";
    if (part === "|") return braces > 0 ? ";" : "|";
    return /^\d*,\d+$/.test(part) && commaIsDecimal ? part.replace(",", ".") : part;
  });
}

/** Whether a comma stands between two numbers inside the brackets of a call or an array that no semicolon parts. */
function isDoubtful(typed: string): boolean {
  const calls: boolean[] = [];
  let isFound = false;
  let hasSemicolon = false;
  let before = "";
  for (const [part] of typed.matchAll(typedParts)) {
    if (part === ";") hasSemicolon = true;
    else if (part === "(" || part === "{") calls.push(part === "{" || /[\p{L}\p{N}_.]/u.test(before));
    else if (part === ")" || part === "}") calls.pop();
    else if (/^\d+,\d+$/.test(part) && calls.includes(true)) isFound = true;
    before = part;
  }
  return isFound && !hasSemicolon;
}

/** A typed formula as it is stored. */
export function readFormula(typed: string): ReadFormula {
  if (decimalSign() === ".") return typed;
  const asDecimals = stored(typed, true);
  return isDoubtful(typed) ? { asDecimals, asArguments: stored(typed, false) } : asDecimals;
}

/** A formula that is still being typed, in the signs of a stored one, each at its place. */
export const asStored = (typed: string): string => (decimalSign() === "." ? typed : stored(typed, true));
