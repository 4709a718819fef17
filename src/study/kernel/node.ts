import type { AnyDefinition } from "../../formula/definition";
import { type Kinds, kindOf, kinds, type Plain } from "./plain";

export type Sign = "+" | "-" | "*" | "/" | "^";
export type Relation = "<" | "<=" | ">" | ">=" | "=" | "<>";
export type MathName =
  | "abs"
  | "acos"
  | "asin"
  | "atan"
  | "atan2"
  | "ceil"
  | "cos"
  | "cosh"
  | "exp"
  | "floor"
  | "log"
  | "log10"
  | "max"
  | "min"
  | "round"
  | "sin"
  | "sinh"
  | "sqrt"
  | "tan"
  | "tanh";

/**
 * One step of a kernel's calculation, the form between a cell formula and what runs. Two writers turn it into
 * closures or JavaScript text; everything that the engine does in its own way has been decided before.
 *
 * A node whose kinds are `number` alone gives a JavaScript number, where anything not finite is an error. All
 * other nodes give a `Plain`.
 */
export type Node =
  | { readonly op: "plain"; readonly value: Plain; readonly kinds: Kinds }
  /** A cell worked out before, by its place among the kernel's cells. */
  | { readonly op: "cell"; readonly place: number; readonly kinds: Kinds }
  | { readonly op: "sign"; readonly sign: Sign; readonly left: Node; readonly right: Node; readonly kinds: 1 }
  | { readonly op: "minus"; readonly of: Node; readonly kinds: 1 }
  /** The same number, NaN unless it is finite, and never minus zero. */
  | { readonly op: "finite"; readonly of: Node; readonly kinds: 1 }
  | { readonly op: "math"; readonly name: MathName; readonly args: readonly Node[]; readonly kinds: 1 }
  | {
      readonly op: "select";
      readonly test: Test;
      readonly then: Node;
      readonly otherwise: Node;
      /** When the test is an error. */
      readonly failed: Node;
      readonly kinds: Kinds;
    }
  | { readonly op: "flag"; readonly test: Test; readonly kinds: 4 }
  /** Several values for one `help`. */
  | { readonly op: "list"; readonly items: readonly Node[]; readonly kinds: Kinds }
  /** A function of the library, by name. */
  | { readonly op: "help"; readonly name: string; readonly args: readonly Node[]; readonly kinds: Kinds }
  | { readonly op: "named"; readonly definition: AnyDefinition; readonly args: readonly Node[]; readonly kinds: Kinds };

/** A condition: holds, does not hold, or is an error. */
export type Test =
  /** Both sides are finite numbers or NaN. */
  | { readonly test: "compare"; readonly relation: Relation; readonly left: Node; readonly right: Node }
  /** A library function that answers 1, 0 or NaN. */
  | { readonly test: "help"; readonly name: string; readonly args: readonly Node[] }
  | { readonly test: "fixed"; readonly value: boolean }
  | { readonly test: "all" | "some"; readonly of: readonly Test[] }
  | { readonly test: "not"; readonly of: Test };

export const plain = (value: Plain): Node => ({ op: "plain", value, kinds: kindOf(value) });
/** Every error is one. */
export const failure: Node = plain(Number.NaN);
export const blank: Node = plain(null);

export const isNumber = (node: Node): boolean => node.kinds === kinds.number;

/** Nodes that are finite or NaN as they stand, and never minus zero. */
const settled = (node: Node): boolean =>
  node.op === "cell" ||
  node.op === "finite" ||
  node.op === "named" ||
  (node.op === "help" && node.name === "number") ||
  (node.op === "plain" && !Object.is(node.value, -0));

/** A number that cannot hide an overflow. */
export function finite(node: Node): Node {
  if (!isNumber(node) || settled(node)) return node;
  if (node.op === "select" && [node.then, node.otherwise, node.failed].every(settled)) return node;
  return { op: "finite", of: node, kinds: kinds.number };
}

export const help = (name: string, args: readonly Node[], kind: Kinds): Node => ({
  op: "help",
  name,
  args: args.map((arg) => (arg.op === "list" ? arg : finite(arg))),
  kinds: kind,
});

export const list = (items: readonly Node[]): Node => ({ op: "list", items: items.map(finite), kinds: kinds.any });

export const math = (name: MathName, ...args: readonly Node[]): Node => ({
  op: "math",
  name,
  args: args.map(finite),
  kinds: kinds.number,
});

/** A power. Anything to the power of 0 is 1 in JavaScript, an error too: only a fixed exponent rules that out. */
export function power(base: Node, exponent: Node): Node {
  if (exponent.op !== "plain" || exponent.value === 0) return help("power", [base, exponent], kinds.number);
  return { op: "sign", sign: "^", left: finite(base), right: exponent, kinds: kinds.number };
}

/** One of two nodes; where only one kind can come out, the result is of that kind. */
export function select(test: Test, then: Node, otherwise: Node, failed: Node = failure): Node {
  if (test.test === "fixed") return test.value ? then : otherwise;
  const together =
    then.kinds | otherwise.kinds | (Number.isNaN((failed as { value?: Plain }).value) ? 0 : failed.kinds);
  const settle = together === kinds.number ? (node: Node) => node : finite;
  return {
    op: "select",
    test,
    then: settle(then),
    otherwise: settle(otherwise),
    failed: settle(failed),
    kinds: together,
  };
}

/** A number of any node, by the engine's rules: blank 0, flags 0 and 1, text by what it says. */
export function asNumber(node: Node): Node {
  if (isNumber(node)) return node;
  if (node.op === "plain" && node.value === null) return plain(0);
  if (node.op === "plain" && typeof node.value === "boolean") return plain(Number(node.value));
  if (node.op === "flag") return select(node.test, plain(1), plain(0));
  return help("number", [node], kinds.number);
}
