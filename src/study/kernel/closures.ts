// Past 150 lines: one closure a kind of node, side by side so that they read alike.
import { library } from "./library";
import { namedCall } from "./named";
import type { MathName, Node, Relation, Sign, Test } from "./node";
import { kinds, type Plain } from "./plain";
import type { Program } from "./program";
import { put, type Store } from "./store";

type Get = () => Plain;
type GetNumber = () => number;
/** 1 holds, 0 does not, NaN is an error. */
type Truth = () => number;
type AnyHelper = (...args: readonly unknown[]) => Plain;

const signs: Readonly<Record<Sign, (left: GetNumber, right: GetNumber) => GetNumber>> = {
  "+": (left, right) => () => left() + right(),
  "-": (left, right) => () => left() - right(),
  "*": (left, right) => () => left() * right(),
  "/": (left, right) => () => left() / right(),
  "^": (left, right) => () => left() ** right(),
};

const relations: Readonly<Record<Relation, (a: number, b: number) => number>> = {
  "<": (a, b) => (a < b ? 1 : a >= b ? 0 : Number.NaN),
  "<=": (a, b) => (a <= b ? 1 : a > b ? 0 : Number.NaN),
  ">": (a, b) => (a > b ? 1 : a <= b ? 0 : Number.NaN),
  ">=": (a, b) => (a >= b ? 1 : a < b ? 0 : Number.NaN),
  "=": (a, b) => (a === b ? 1 : a < b || a > b ? 0 : Number.NaN),
  "<>": (a, b) => (a === b ? 0 : a < b || a > b ? 1 : Number.NaN),
};

class Closures {
  constructor(private readonly store: Store) {}

  private numbers(nodes: readonly Node[]): GetNumber[] {
    return nodes.map((node) => this.number(node));
  }

  /** A node of kind number. */
  private number(node: Node): GetNumber {
    switch (node.op) {
      case "plain": {
        const value = node.value as number;
        return () => value;
      }
      case "cell": {
        const { numbers } = this.store;
        const { place } = node;
        return () => numbers[place] as number;
      }
      case "sign":
        return signs[node.sign](this.number(node.left), this.number(node.right));
      case "minus": {
        const of = this.number(node.of);
        return () => -of();
      }
      case "finite": {
        const of = this.number(node.of);
        return () => {
          const value = of();
          return value - value + value;
        };
      }
      case "math":
        return this.math(node.name, node.args);
      default:
        return this.get(node) as GetNumber;
    }
  }

  private math(name: MathName, args: readonly Node[]): GetNumber {
    const fn = Math[name] as (...args: readonly number[]) => number;
    const gets = this.numbers(args);
    const [first, second] = gets;
    if (first && gets.length === 1) return () => fn(first());
    if (first && second && gets.length === 2) return () => fn(first(), second());
    return () => fn(...gets.map((get) => get()));
  }

  /** Any node. */
  get(node: Node): Get {
    switch (node.op) {
      case "plain": {
        const { value } = node;
        return () => value;
      }
      case "cell": {
        if (node.kinds === kinds.number) return this.number(node);
        const { others } = this.store;
        const { place } = node;
        return () => others[place] as Plain;
      }
      case "select": {
        const [test, then, otherwise, failed] = [
          this.truth(node.test),
          this.get(node.then),
          this.get(node.otherwise),
          this.get(node.failed),
        ];
        return () => {
          const truth = test();
          return truth === 1 ? then() : truth === 0 ? otherwise() : failed();
        };
      }
      case "flag": {
        const test = this.truth(node.test);
        return () => {
          const truth = test();
          return truth === 1 ? true : truth === 0 ? false : truth;
        };
      }
      case "help":
        return this.help(node.name, node.args);
      case "named":
        return namedCall(
          node.definition,
          node.args.map((arg) => this.given(arg)),
          node.args.map((arg) => arg.kinds === kinds.number),
        );
      case "list":
        throw new Error("a list stands where one value is due");
      default:
        return this.number(node);
    }
  }

  /** An argument: a value, or all values of a list. */
  private given(node: Node): () => Plain | readonly Plain[] {
    if (node.op !== "list") return this.get(node);
    const items = node.items.map((item) => this.get(item));
    return () => items.map((item) => item());
  }

  private help(name: string, args: readonly Node[]): Get {
    const fn = library[name as keyof typeof library] as unknown as AnyHelper;
    const gets = args.map((arg) => this.given(arg));
    return () => fn(...gets.map((get) => get()));
  }

  private truth(test: Test): Truth {
    switch (test.test) {
      case "compare": {
        const relate = relations[test.relation];
        const [left, right] = [this.number(test.left), this.number(test.right)];
        return () => relate(left(), right());
      }
      case "help":
        return this.help(test.name, test.args) as Truth;
      case "fixed": {
        const truth = test.value ? 1 : 0;
        return () => truth;
      }
      case "not": {
        const of = this.truth(test.of);
        return () => 1 - of();
      }
      default: {
        const of = test.of.map((one) => this.truth(one));
        const fold = test.test === "all" ? Math.min : Math.max;
        return () => of.reduce((sum, one) => fold(sum, one()), test.test === "all" ? 1 : 0);
      }
    }
  }
}

/** A program as closures over a store: works wherever scripts run, whatever the page's content policy. */
export function closures(program: Program, store: Store): () => void {
  const writer = new Closures(store);
  const acts = program.steps.map(({ place, node }) => {
    const get = writer.get(node);
    return () => put(store, place, node.kinds, get());
  });
  return () => {
    for (const act of acts) act();
  };
}
