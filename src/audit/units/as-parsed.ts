import type { Parsed } from "../../engine/parsed";
import type { Expression } from "../../formula/expression";

/** A formula of a step in the shape of a cell's, so that one audit serves both. */
export function asParsed(expression: Expression): Parsed {
  switch (expression.kind) {
    case "number":
    case "name":
      return expression.kind === "name" && expression.name === "pi"
        ? { kind: "call", name: "PI", args: [] }
        : expression;
    case "minus":
      return { kind: "sign", op: "-", of: asParsed(expression.of) };
    case "binary":
      return {
        kind: "operator",
        op: expression.op,
        left: asParsed(expression.left),
        right: asParsed(expression.right),
      };
    case "compare": {
      const op = expression.op === "==" ? "=" : expression.op === "!=" ? "<>" : expression.op;
      return { kind: "operator", op, left: asParsed(expression.left), right: asParsed(expression.right) };
    }
    case "logic":
      return {
        kind: "call",
        name: expression.op.toUpperCase(),
        args: [asParsed(expression.left), asParsed(expression.right)],
      };
    case "call": {
      const name = { ceil: "CEILING", floor: "FLOOR" }[expression.name as string] ?? expression.name.toUpperCase();
      return { kind: "call", name, args: expression.args.map(asParsed) };
    }
    case "choice":
      return {
        kind: "call",
        name: "IF",
        args: [asParsed(expression.test), asParsed(expression.then), asParsed(expression.otherwise)],
      };
  }
}
