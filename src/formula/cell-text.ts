import type { Expression, MathName } from "./expression";
import { infix, type Style } from "./infix";

/** The engine's names; where it has none of one argument, the form that gives the same bits. */
const cellFunctions: Readonly<Record<MathName, (args: readonly string[]) => string>> = {
  sqrt: (args) => `SQRT(${args})`,
  abs: (args) => `ABS(${args})`,
  ceil: (args) => `CEILING(${args},1)`,
  floor: (args) => `FLOOR(${args},1)`,
  exp: (args) => `EXP(${args})`,
  ln: (args) => `LN(${args})`,
  log10: (args) => `LOG10(${args})`,
  sin: (args) => `SIN(${args})`,
  cos: (args) => `COS(${args})`,
  tan: (args) => `TAN(${args})`,
  asin: (args) => `ASIN(${args})`,
  acos: (args) => `ACOS(${args})`,
  atan: (args) => `ATAN(${args})`,
  radians: (args) => `RADIANS(${args})`,
  degrees: (args) => `DEGREES(${args})`,
  min: (args) => `MIN(${args})`,
  max: (args) => `MAX(${args})`,
};

/** Nothing in it can fail, so that it may be worked out although its neighbour has decided already. */
const cannotFail = (expression: Expression): boolean => {
  switch (expression.kind) {
    case "number":
    case "name":
      return true;
    case "compare":
    case "logic":
      return cannotFail(expression.left) && cannotFail(expression.right);
    default:
      return false;
  }
};

const style = (name: (name: string) => string): Style => ({
  // The engine's own PI() has fifteen digits only.
  name: (one) => (one === "pi" ? String(Math.PI) : name(one)),
  number: String,
  minus: "-",
  arithmetic: { "+": "+", "-": "-", "*": "*", "/": "/", "^": "^" },
  comparison: { "<": "<", "<=": "<=", ">": ">", ">=": ">=", "==": "=", "!=": "<>" },
  call: (fn, args) => cellFunctions[fn](args),
  choice: (test, then, otherwise) => `IF(${test},${then},${otherwise})`,
  logic: (op, left, right, [, second]) => {
    if (cannotFail(second)) return `${op === "and" ? "AND" : "OR"}(${left},${right})`;
    // AND and OR work out both sides; a branch of IF that is not taken may fail without harm.
    return op === "and" ? `IF(${left},${right},FALSE())` : `IF(${left},TRUE(),${right})`;
  },
});

/**
 * The formula of a cell (without `=`) that gives the same bits as the tree run as a program.
 *
 * @param name the reference that stands for a name; it must be one cell.
 */
export const cellText = (expression: Expression, name: (name: string) => string): string =>
  infix(expression, style(name));
