import type { Operator, Parsed } from "../../engine/parsed";
import { say } from "../../words/say";
import { lowerCall } from "./calls";
import { blockCells } from "./chain";
import { relationTest } from "./condition";
import { asNumber, blank, failure, finite, help, type Node, plain, power, type Relation, type Sign } from "./node";
import { type Home, NotTaken, type Part, spread } from "./part";
import { kinds } from "./plain";

const arithmetic: ReadonlySet<Operator> = new Set(["+", "-", "*", "/", "^"]);

function operator(op: Operator, left: Node, right: Node): Node {
  if (op === "&") return help("join", [left, right], kinds.text);
  if (!arithmetic.has(op)) {
    return { op: "flag", test: relationTest(op as Relation, left, right), kinds: kinds.flag };
  }
  const [a, b] = [asNumber(left), asNumber(right)];
  if (op === "^") return power(a, b);
  // A divisor could swallow an overflow, which is an error for the engine.
  return { op: "sign", sign: op as Sign, left: a, right: op === "/" ? finite(b) : b, kinds: kinds.number };
}

function sign(op: "-" | "+" | "%", of: Node): Node {
  if (op === "+") return of;
  if (op === "-") return { op: "minus", of: asNumber(of), kinds: kinds.number };
  return { op: "sign", sign: "/", left: asNumber(of), right: plain(100), kinds: kinds.number };
}

/**
 * A formula as nodes, with everything decided that the engine does in its own way.
 *
 * @throws NotTaken with the reason for what the kernel does not take in.
 */
export function lower(tree: Parsed, cell: Home["cell"], own: Home["own"]): Part {
  const part = (one: Parsed): Part => lower(one, cell, own);
  switch (tree.kind) {
    case "number":
      return plain(tree.value);
    case "text":
      return plain(tree.text);
    case "flag":
      return plain(tree.value);
    case "blank":
      return blank;
    case "reference":
      return cell(tree.at);
    case "range": {
      const rows = blockCells(tree.from, tree.to).map((row) => row.map(cell));
      return rows.length === 1 && rows[0]?.length === 1 && rows[0][0] ? rows[0][0] : { rows };
    }
    case "brackets":
      return part(tree.of);
    case "sign":
      return spread([part(tree.of)], ([of = blank]) => sign(tree.op, of));
    case "operator":
      return spread([part(tree.left), part(tree.right)], ([left = blank, right = blank]) =>
        operator(tree.op, left, right),
      );
    case "call":
      return lowerCall(tree, { cell, part, own });
    case "name":
    case "unreadable":
      return failure;
    case "array":
      throw new NotTaken(say`a block in braces is not taken in`);
  }
}
