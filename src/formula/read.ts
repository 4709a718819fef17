import type { MathNode } from "mathjs";
import { create, parseDependencies } from "mathjs/number";
import { counted, say } from "../words/say";
import { type Arithmetic, type Comparison, type Expression, type MathName, mathArity } from "./expression";

const { parse } = create({ ...parseDependencies });

const arithmetic: Readonly<Record<string, Arithmetic>> = {
  add: "+",
  subtract: "-",
  multiply: "*",
  divide: "/",
  pow: "^",
};
const comparison: Readonly<Record<string, Comparison>> = {
  smaller: "<",
  smallerEq: "<=",
  larger: ">",
  largerEq: ">=",
  equal: "==",
  unequal: "!=",
};

interface Node {
  readonly type: string;
  readonly fn?: string | { readonly name: string };
  readonly name?: string;
  readonly value?: unknown;
  readonly implicit?: boolean;
  readonly args?: readonly Node[];
  readonly content?: Node;
  readonly condition?: Node;
  readonly trueExpr?: Node;
  readonly falseExpr?: Node;
  readonly conditionals?: readonly string[];
  readonly params?: readonly Node[];
}

/**
 * Reads the text of a formula.
 *
 * Allowed: `+ - * / ^`, comparisons, `and`, `or`, `a ? b : c`, names, plain numbers and the functions of
 * `mathArity`. The parser knows far more (implicit products, `mod`, matrices, assignments); all of that is
 * refused, because its meaning would differ from what a cell formula means.
 *
 * @throws Error with the text and what is not allowed in it; definitions are read once, when they are defined.
 */
export function readExpression(text: string): Expression {
  const refuse = (what: string): never => {
    throw new Error(say`formula "${text}": ${what}`);
  };

  const two = (node: Node): [Expression, Expression] => {
    const [left, right] = node.args ?? [];
    return left && right ? [walk(left), walk(right)] : refuse(say`an operator needs two sides`);
  };

  const operator = (node: Node): Expression => {
    const name = String(node.fn);
    if (node.implicit) return refuse(say`write the product sign *`);
    const only = node.args?.[0];
    if (name === "unaryMinus" && only) return { kind: "minus", of: walk(only) };
    const sum = arithmetic[name];
    if (sum) {
      const [left, right] = two(node);
      return { kind: "binary", op: sum, left, right };
    }
    const relation = comparison[name];
    if (relation) {
      const [left, right] = two(node);
      return { kind: "compare", op: relation, left, right };
    }
    if (name === "and" || name === "or") {
      const [left, right] = two(node);
      return { kind: "logic", op: name, left, right };
    }
    return refuse(say`${name} is not allowed`);
  };

  const call = (node: Node): Expression => {
    const name = typeof node.fn === "object" ? node.fn.name : String(node.fn);
    if (!Object.hasOwn(mathArity, name)) return refuse(say`function ${name} is not known`);
    const args = (node.args ?? []).map(walk);
    const wanted = mathArity[name as MathName];
    if (args.length !== wanted) return refuse(say`${name} takes ${counted(wanted, "argument")}, got ${args.length}`);
    return { kind: "call", name: name as MathName, args };
  };

  const walk = (node: Node): Expression => {
    switch (node.type) {
      case "ConstantNode":
        return typeof node.value === "number"
          ? { kind: "number", value: node.value }
          : refuse(say`${String(node.value)} is not a number`);
      case "SymbolNode":
        return { kind: "name", name: node.name ?? "" };
      case "ParenthesisNode":
        return node.content ? walk(node.content) : refuse(say`brackets with nothing in them`);
      case "OperatorNode":
        return operator(node);
      case "FunctionNode":
        return call(node);
      case "ConditionalNode":
        return node.condition && node.trueExpr && node.falseExpr
          ? {
              kind: "choice",
              test: walk(node.condition),
              then: walk(node.trueExpr),
              otherwise: walk(node.falseExpr),
            }
          : refuse(say`a choice needs what holds and what else, as in a > b ? c : d`);
      default:
        return refuse(say`${node.type} is not allowed`);
    }
  };

  let tree: MathNode;
  try {
    tree = parse(text);
  } catch (cause) {
    return refuse(
      cause instanceof Error && "char" in cause && typeof cause.char === "number"
        ? say`it cannot be read at character ${cause.char}; look for a sign or a bracket too many or too few`
        : say`it cannot be read; look for a sign or a bracket too many or too few`,
    );
  }
  return walk(tree as unknown as Node);
}
