import { finite, isNumber, type Node, plain, type Relation, type Test } from "./node";
import { kinds } from "./plain";

/** A text that cannot be read as a date or a number. */
const isWords = (node: Node): boolean =>
  node.op === "plain" && typeof node.value === "string" && !/\d/.test(node.value);

/** Whether two values stand so to each other: numbers at once, everything else by the library. */
export function relationTest(relation: Relation, left: Node, right: Node): Test {
  if (isNumber(left) && isNumber(right)) {
    return { test: "compare", relation, left: finite(left), right: finite(right) };
  }
  const [value, words] = isWords(right) ? [left, right] : [right, left];
  if (isWords(words) && (relation === "=" || relation === "<>")) {
    const says: Test = { test: "help", name: "says", args: [finite(value), words] };
    return relation === "=" ? says : { test: "not", of: says };
  }
  return { test: "help", name: "ordered", args: [finite(left), finite(right), plain(relation)] };
}

/** A condition as the engine takes it: flags, numbers other than 0, the words TRUE and FALSE. */
export function asTest(node: Node): Test {
  if (node.op === "flag") return node.test;
  if (node.op === "plain" && typeof node.value === "boolean") return { test: "fixed", value: node.value };
  if (node.kinds === kinds.blank) return { test: "fixed", value: false };
  if (isNumber(node)) return { test: "compare", relation: "<>", left: finite(node), right: plain(0) };
  return { test: "help", name: "truth", args: [node] };
}
