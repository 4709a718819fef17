import { betweenNumbers } from "../words/decimal-sign";
import { say } from "../words/say";
import type { Expression } from "./expression";
import { infix, type Style } from "./infix";
import { numberText } from "./number-text";
import { symbolText } from "./symbol-name";

const readerFunctions: Readonly<Record<string, string>> = { sqrt: "√", ceil: say`round up`, floor: say`round down` };

const logicSide = (text: string, side: Expression): string => (side.kind === "logic" ? `(${text})` : text);

const style: Style = {
  name: symbolText,
  number: numberText,
  minus: "−",
  arithmetic: { "+": " + ", "-": " − ", "*": " × ", "/": " / ", "^": "^" },
  comparison: { "<": " < ", "<=": " ≤ ", ">": " > ", ">=": " ≥ ", "==": " = ", "!=": " ≠ " },
  call: (fn, args) => `${readerFunctions[fn] ?? fn}(${args.join(betweenNumbers())})`,
  choice: (test, then, otherwise) => say`(${then} if ${test}, otherwise ${otherwise})`,
  logic: (op, left, right, [one, other]) => `${logicSide(left, one)} ${op} ${logicSide(right, other)}`,
};

/** A formula as one line for a reader; it need not be read back by a program. */
export const readerText = (expression: Expression): string => infix(expression, style);
