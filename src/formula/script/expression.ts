import type { Arithmetic, Comparison, Expression, MathName } from "../expression";

/** JavaScript text of a value by the name that a formula gives it. */
export type Variables = ReadonlyMap<string, string>;

/** A number as text that reads back to the same bits. */
export const numberScript = (value: number): string =>
  Object.is(value, -0) ? "(-0)" : value < 0 ? `(${value})` : String(value);

const plain = (name: string) => (args: readonly string[]) => `Math.${name}(${args.join(",")})`;

const mathScripts: Readonly<Record<MathName, (args: readonly string[]) => string>> = {
  sqrt: plain("sqrt"),
  abs: plain("abs"),
  ceil: plain("ceil"),
  floor: plain("floor"),
  exp: plain("exp"),
  ln: plain("log"),
  log10: plain("log10"),
  sin: plain("sin"),
  cos: plain("cos"),
  tan: plain("tan"),
  asin: plain("asin"),
  acos: plain("acos"),
  atan: plain("atan"),
  // The quotients of `run.ts`, worked out once.
  radians: ([a]) => `(${a}*${numberScript(Math.PI / 180)})`,
  degrees: ([a]) => `(${a}*${numberScript(180 / Math.PI)})`,
  min: plain("min"),
  max: plain("max"),
};

const arithmetic: Readonly<Record<Arithmetic, (left: string, right: string) => string>> = {
  "+": (left, right) => `(${left}+${right})`,
  "-": (left, right) => `(${left}-${right})`,
  "*": (left, right) => `(${left}*${right})`,
  "/": (left, right) => `(${left}/${right})`,
  // The sign ** may not stand behind a minus; the function is the same calculation.
  "^": (left, right) => `Math.pow(${left},${right})`,
};

const comparison: Readonly<Record<Comparison, string>> = {
  "<": "<",
  "<=": "<=",
  ">": ">",
  ">=": ">=",
  "==": "===",
  "!=": "!==",
};

function variable(name: string, variables: Variables): string {
  const found = variables.get(name);
  if (found === undefined) throw new Error(`${name} is not defined before its use`);
  return found;
}

/**
 * A tree as JavaScript text with the bits of `runnable`: the same operations in the same order, every one in brackets.
 *
 * @throws Error for a name that is not defined before its use, or a comparison where a number is due.
 */
export function expressionScript(expression: Expression, variables: Variables): string {
  const write = (one: Expression): string => expressionScript(one, variables);
  switch (expression.kind) {
    case "number":
      return numberScript(expression.value);
    case "name":
      return expression.name === "pi" ? "Math.PI" : variable(expression.name, variables);
    case "minus":
      return `(-${write(expression.of)})`;
    case "binary":
      return arithmetic[expression.op](write(expression.left), write(expression.right));
    case "call":
      return mathScripts[expression.name](expression.args.map(write));
    case "choice":
      return `(${testScript(expression.test, variables)}?${write(expression.then)}:${write(expression.otherwise)})`;
    default:
      throw new Error("a condition stands where a number is due");
  }
}

/** A condition as JavaScript text with the outcome of `testable`; a bare name is read as a flag. */
export function testScript(expression: Expression, variables: Variables): string {
  switch (expression.kind) {
    case "compare": {
      const [left, right] = [expression.left, expression.right].map((side) => expressionScript(side, variables));
      return `(${left}${comparison[expression.op]}${right})`;
    }
    case "logic": {
      const [left, right] = [expression.left, expression.right].map((side) => testScript(side, variables));
      return `(${left}${expression.op === "and" ? "&&" : "||"}${right})`;
    }
    case "name":
      return `(${variable(expression.name, variables)}===true)`;
    default:
      throw new Error("a number stands where a condition is due");
  }
}
