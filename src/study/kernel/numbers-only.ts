import type { Node, Test } from "./node";
import { kinds } from "./plain";
import type { Program } from "./program";

function* placesInTest(test: Test): Generator<number> {
  switch (test.test) {
    case "compare":
      yield* placesIn(test.left);
      yield* placesIn(test.right);
      break;
    case "help":
      for (const arg of test.args) yield* placesIn(arg);
      break;
    case "all":
    case "some":
      for (const one of test.of) yield* placesInTest(one);
      break;
    case "not":
      yield* placesInTest(test.of);
      break;
    case "fixed":
      break;
  }
}

/** The cells that a node reads. */
function* placesIn(node: Node): Generator<number> {
  switch (node.op) {
    case "cell":
      yield node.place;
      break;
    case "sign":
      yield* placesIn(node.left);
      yield* placesIn(node.right);
      break;
    case "minus":
    case "finite":
      yield* placesIn(node.of);
      break;
    case "math":
    case "help":
    case "named":
      for (const arg of node.args) yield* placesIn(arg);
      break;
    case "list":
      for (const item of node.items) yield* placesIn(item);
      break;
    case "select":
      yield* placesInTest(node.test);
      yield* placesIn(node.then);
      yield* placesIn(node.otherwise);
      yield* placesIn(node.failed);
      break;
    case "flag":
      yield* placesInTest(node.test);
      break;
    case "plain":
      break;
  }
}

/** The steps of a program that a result hangs on which can be a number: texts for reading take a share of the time. */
export function numbersOnly(program: Program): Program {
  const needed = new Set(
    program.wanted.flatMap((node) => ((node.kinds & kinds.number) === 0 ? [] : [...placesIn(node)])),
  );
  const kept: Program["steps"][number][] = [];
  for (const step of [...program.steps].reverse()) {
    if (!needed.has(step.place)) continue;
    for (const place of placesIn(step.node)) needed.add(place);
    kept.push(step);
  }
  return { ...program, steps: kept.reverse() };
}
