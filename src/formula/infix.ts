import type { Arithmetic, Comparison, Expression, MathName } from "./expression";

/** How the parts of a formula are written; where brackets stand is the same for all. */
export interface Style {
  readonly name: (name: string) => string;
  readonly number: (value: number) => string;
  readonly minus: string;
  readonly arithmetic: Readonly<Record<Arithmetic, string>>;
  readonly comparison: Readonly<Record<Comparison, string>>;
  readonly call: (name: MathName, args: readonly string[]) => string;
  readonly choice: (test: string, then: string, otherwise: string) => string;
  readonly logic: (op: "and" | "or", left: string, right: string, sides: readonly [Expression, Expression]) => string;
}

const strength: Readonly<Record<Arithmetic, number>> = { "+": 1, "-": 1, "*": 2, "/": 2, "^": 3 };

/** Something that no operator beside it can pull apart. */
const isAtom = (expression: Expression): boolean =>
  expression.kind === "name" ||
  expression.kind === "call" ||
  expression.kind === "choice" ||
  expression.kind === "logic" ||
  (expression.kind === "number" && expression.value >= 0 && !Object.is(expression.value, -0));

const bracket = (text: string): string => `(${text})`;

/**
 * Writes a tree as text that reads back as the same tree, whichever way a reader groups: powers of powers,
 * negative bases, and right-hand sides of the same rank always have brackets.
 */
export function infix(expression: Expression, style: Style): string {
  const write = (one: Expression): string => infix(one, style);
  const held = (one: Expression): string => (isAtom(one) ? write(one) : bracket(write(one)));
  switch (expression.kind) {
    case "number":
      return expression.value < 0 || Object.is(expression.value, -0)
        ? `${style.minus}${style.number(-expression.value)}`
        : style.number(expression.value);
    case "name":
      return style.name(expression.name);
    case "minus":
      return `${style.minus}${held(expression.of)}`;
    case "binary": {
      const { op, left, right } = expression;
      const rank = strength[op];
      const loose = left.kind === "binary" && rank < 3 && strength[left.op] >= rank;
      return `${loose ? write(left) : held(left)}${style.arithmetic[op]}${
        right.kind === "binary" && strength[right.op] > rank ? write(right) : held(right)
      }`;
    }
    case "compare": {
      const side = (one: Expression) => (one.kind === "compare" ? bracket(write(one)) : write(one));
      return `${side(expression.left)}${style.comparison[expression.op]}${side(expression.right)}`;
    }
    case "logic":
      return style.logic(expression.op, write(expression.left), write(expression.right), [
        expression.left,
        expression.right,
      ]);
    case "call":
      return style.call(expression.name, expression.args.map(write));
    case "choice":
      return style.choice(write(expression.test), write(expression.then), write(expression.otherwise));
  }
}
