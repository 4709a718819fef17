// Past 150 lines: one text a kind of node, side by side so that they read alike.
import { numberScript } from "../../formula/script/expression";
import { readSurface } from "../../formula/surface/read-surface";
import { type Form, functionText, writeCall } from "../../formula/text";
import { convertUnit } from "../../units/convert";
import { library } from "./library";
import type { Node, Relation, Test } from "./node";
import { kinds, type Plain } from "./plain";
import type { Program } from "./program";
import type { Store } from "./store";

const plainScript = (value: Plain): string =>
  typeof value === "number" ? (Number.isNaN(value) ? "NaN" : numberScript(value)) : JSON.stringify(value);

type Both = (a: string, b: string) => readonly [holds: string, fails: string];
const differ = (a: string, b: string) => `${a}<${b}||${a}>${b}`;
const relations: Readonly<Record<Relation, Both>> = {
  "<": (a, b) => [`${a}<${b}`, `${a}>=${b}`],
  "<=": (a, b) => [`${a}<=${b}`, `${a}>${b}`],
  ">": (a, b) => [`${a}>${b}`, `${a}<=${b}`],
  ">=": (a, b) => [`${a}>=${b}`, `${a}<${b}`],
  "=": (a, b) => [`${a}===${b}`, differ(a, b)],
  "<>": (a, b) => [differ(a, b), `${a}===${b}`],
};

type NamedNode = Extract<Node, { op: "named" }>;

const formsOf = (node: NamedNode): readonly Form[] =>
  node.args.map((arg): Form => (arg.kinds === kinds.number ? "number" : "any"));

/** The named functions of a program, each written once for every form of its arguments. */
class Functions {
  readonly texts: string[] = [];
  private readonly names = new Map<string, string>();

  /** Whether a function is short and plain enough to be written where it is called. */
  inPlace(node: NamedNode): boolean {
    if (node.kinds !== kinds.number || !node.args.every((arg) => arg.kinds === kinds.number)) return false;
    const { definition } = node;
    if (node.args.length < Object.keys(definition.args).length) return false;
    return definition.steps.every(({ kind }) => kind === "algebra" || kind === "require");
  }

  name(node: NamedNode): string {
    const forms = formsOf(node);
    const key = `${node.definition.name} ${forms.join(" ")}`;
    const known = this.names.get(key);
    if (known) return known;
    const name = `f${this.texts.length}`;
    this.texts.push(`const ${name}=${functionText(node.definition, forms)};`);
    this.names.set(key, name);
    return name;
  }
}

/** A run of steps in one JavaScript function; small functions are what the machine compiles best. */
class Piece {
  readonly lines: string[] = [];
  private readonly known = new Set<number>();
  private temporaries = 0;
  private calls = 0;

  constructor(private readonly functions: Functions) {}

  step(place: number, node: Node): void {
    const text = this.node(node);
    this.known.add(place);
    this.lines.push(`const c${place}=${text};${node.kinds === kinds.number ? "s" : "m"}[${place}]=c${place};`);
  }

  get text(): string {
    const names = Array.from({ length: this.temporaries }, (_, i) => `t${i}`);
    return `${names.length > 0 ? `let ${names.join(",")};` : ""}\n${this.lines.join("\n")}`;
  }

  private temporary(): string {
    return `t${this.temporaries++}`;
  }

  private cell(place: number, isNumber: boolean): string {
    if (!this.known.has(place)) {
      this.known.add(place);
      this.lines.push(`const c${place}=${isNumber ? "s" : "m"}[${place}];`);
    }
    return `c${place}`;
  }

  private nodes(nodes: readonly Node[]): string {
    return nodes.map((node) => this.node(node)).join(",");
  }

  private node(node: Node): string {
    switch (node.op) {
      case "plain":
        return plainScript(node.value);
      case "cell":
        return this.cell(node.place, node.kinds === kinds.number);
      case "sign": {
        const [left, right] = [this.node(node.left), this.node(node.right)];
        return node.sign === "^" ? `Math.pow(${left},${right})` : `(${left}${node.sign}${right})`;
      }
      case "minus":
        return `(-${this.node(node.of)})`;
      case "finite": {
        const [of, t] = [this.node(node.of), this.temporary()];
        return `(${t}=${of},${t}-${t}+${t})`;
      }
      case "math":
        return `Math.${node.name}(${this.nodes(node.args)})`;
      case "select":
        return this.choice(node.test, this.node(node.then), this.node(node.otherwise), this.node(node.failed));
      case "flag":
        return this.choice(node.test, "true", "false", "NaN");
      case "list":
        return `[${this.nodes(node.items)}]`;
      case "help":
        return `h.${node.name}(${this.nodes(node.args)})`;
      case "named":
        return this.named(node);
    }
  }

  private named(node: NamedNode): string {
    const call = this.functions.inPlace(node) ? this.inPlace(node) : undefined;
    return call ?? `${this.functions.name(node)}(${this.nodes(node.args)})`;
  }

  /** A short function written where it is called: numbers need not be packed for a call. */
  private inPlace(node: NamedNode): string {
    const own = `r${this.calls++}`;
    const style = { prefix: own, refuse: `break ${own}b;` };
    const given = node.args.map((arg) => this.node(arg));
    const { lines, answer } = writeCall(node.definition, given, formsOf(node), style);
    this.lines.push(`let ${own}=NaN;${own}b:{${lines.join("\n")}\n${own}=${answer}-${answer}+${answer};}`);
    return own;
  }

  /** A side of a comparison, which is written twice: a name or a number as it stands, all else kept first. */
  private side(node: Node): readonly [first: string, again: string] {
    const text = this.node(node);
    if (node.op === "cell" || node.op === "plain") return [text, text];
    const t = this.temporary();
    return [`(${t}=${text})`, t];
  }

  private choice(test: Test, then: string, otherwise: string, failed: string): string {
    if (test.test === "fixed") return test.value ? then : otherwise;
    if (test.test === "not") return this.choice(test.of, otherwise, then, failed);
    if (test.test === "compare") {
      const [[left, a], [right, b]] = [this.side(test.left), this.side(test.right)];
      const [holds, fails] = relations[test.relation](a, b);
      const kept = [left, right].filter((text) => text.startsWith("(t"));
      return `(${kept.map((text) => `${text},`).join("")}${holds}?${then}:${fails}?${otherwise}:${failed})`;
    }
    const t = this.temporary();
    return `((${t}=${this.truth(test)})===1?${then}:${t}===0?${otherwise}:${failed})`;
  }

  /** 1 holds, 0 does not, NaN is an error. */
  private truth(test: Test): string {
    switch (test.test) {
      case "help":
        return `h.${test.name}(${this.nodes(test.args)})`;
      case "all":
        return `Math.min(1,${test.of.map((one) => this.truth(one)).join(",")})`;
      case "some":
        return `Math.max(0,${test.of.map((one) => this.truth(one)).join(",")})`;
      default:
        return this.choice(test, "1", "0", "NaN");
    }
  }
}

const stepsInPiece = 16;

/**
 * A program as JavaScript text: a function of `s` (numbers), `m` (other values), `h` (the library), `convertUnit`
 * and `readSurface` that gives the function to run. It holds places, numbers by their digits and words as JSON, nothing else.
 */
function programScript(program: Program): string {
  const functions = new Functions();
  const pieces: Piece[] = [];
  program.steps.forEach(({ place, node }, i) => {
    if (i % stepsInPiece === 0) pieces.push(new Piece(functions));
    pieces.at(-1)?.step(place, node);
  });
  const texts = pieces.map(({ text }, i) => `function p${i}(s,m){${text}\n}`);
  const calls = pieces.map((_, i) => `p${i}(s,m);`).join("");
  return `"use strict";\n${functions.texts.join("\n")}\n${texts.join("\n")}\nreturn ()=>{${calls}};`;
}

/** Compiles the text. @throws EvalError where the content policy does not allow text to become code. */
export const script = (program: Program, store: Store): (() => void) =>
  new Function("s", "m", "h", "convertUnit", "readSurface", programScript(program))(
    store.numbers,
    store.others,
    library,
    convertUnit,
    readSurface,
  );
