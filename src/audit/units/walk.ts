import type { Operator, Parsed } from "../../engine/parsed";
import { isPlain, plain, raised, type Scale, scaleName } from "../../units/scale";
import { say } from "../../words/say";
import { builtIn } from "./built-in";
import { Judge } from "./judge";
import {
  bare,
  bareProduct,
  inverse,
  type Measure,
  plainNumber,
  product,
  type Quantity,
  quantity,
  scaled,
  silent,
} from "./measure";
import { namedCall } from "./named-call";
import { absolute, isAbsolute, temperatures } from "./temperature";
import type { Surroundings, Visit } from "./visit";

const comparisons: ReadonlySet<Operator> = new Set(["=", "<>", "<", "<=", ">", ">="]);

/** Works out the units of a formula from the inside, and says what does not fit. */
export class Walk implements Visit {
  readonly judge = new Judge();

  constructor(readonly around: Surroundings) {}

  words(part: Parsed): string {
    return this.around.words(part);
  }

  measure(part: Parsed): Measure {
    switch (part.kind) {
      case "number":
        return bare(part.value, this.around.conversions);
      case "reference":
        return this.around.cell(part.at);
      case "range":
        return this.range(part);
      case "name":
        return this.around.named(part.name);
      case "brackets":
        return this.measure(part.of);
      case "sign":
        return this.sign(part);
      case "operator":
        return this.operator(part);
      case "call": {
        const definition = this.around.find(part.name);
        return definition ? namedCall(this, part, definition) : builtIn(this, part);
      }
      case "array":
        for (const cell of part.rows.flat()) this.measure(cell);
        return silent;
      default:
        return silent;
    }
  }

  /** The one unit of all cells of a range; silent where they differ, which only some functions mind. */
  private range(part: Extract<Parsed, { kind: "range" }>): Measure {
    const quiet = new Judge();
    return this.around
      .cells(part.from, part.to)
      .flat()
      .map((at) => this.around.cell(at))
      .reduce((all, one) => quiet.alike("", all, one, ["", ""]), silent);
  }

  private sign({ op, of }: Extract<Parsed, { kind: "sign" }>): Measure {
    const measure = this.measure(of);
    if (measure.kind === "bare") {
      return bare(
        op === "-" ? -measure.value : op === "%" ? measure.value / 100 : measure.value,
        this.around.conversions,
      );
    }
    if (op === "-" && measure.kind === "quantity" && isAbsolute(measure)) {
      return absolute(this.judge, "-", this.words(of), measure);
    }
    return op === "%" ? silent : measure;
  }

  private operator(part: Extract<Parsed, { kind: "operator" }>): Measure {
    const { op, left, right } = part;
    const a = this.measure(left);
    const b = this.measure(right);
    const names = [this.words(left), this.words(right)] as const;
    if (op === "&") return silent;
    if (comparisons.has(op)) {
      this.judge.alike(op, a, b, names);
      return silent;
    }
    if (op === "^") return this.power(a, b, names);
    if (op === "*" || op === "/") return this.factor(op, a, b, names);
    return this.sum(op as "+" | "-", a, b, names);
  }

  private sum(op: "+" | "-", a: Measure, b: Measure, names: readonly [string, string]): Measure {
    if (a.kind === "bare" && b.kind === "bare") {
      return bare(op === "+" ? a.value + b.value : a.value - b.value, this.around.conversions);
    }
    const [aHot, bHot] = [a, b].map((one) => one.kind === "quantity" && isAbsolute(one));
    if (a.kind === "quantity" && b.kind === "quantity" && (aHot || bHot))
      return temperatures(this.judge, op, a, b, names);
    return this.judge.alike(op, a, b, names);
  }

  private factor(op: "*" | "/", a: Measure, b: Measure, names: readonly [string, string]): Measure {
    for (const [i, one] of [a, b].entries()) {
      // Times 0 is a way to write "no part of it", and gives no temperature.
      const other = i === 0 ? b : a;
      if (one.kind === "quantity" && isAbsolute(one) && !(other.kind === "bare" && other.value === 0)) {
        return absolute(this.judge, op, names[i] ?? "", one);
      }
    }
    if (a.kind === "silent" || b.kind === "silent") return silent;
    if (a.kind === "bare" && b.kind === "bare") return bareProduct(a, b, op);
    if (a.kind === "bare") return scaled(op === "*" ? (b as Quantity) : inverse(b as Quantity), a, "*");
    return b.kind === "bare" ? scaled(a, b, op) : product(a, b, op);
  }

  power(a: Measure, b: Measure, names: readonly [string, string]): Measure {
    if (a.kind === "bare" && b.kind === "bare") return bare(a.value ** b.value, this.around.conversions);
    if (b.kind === "quantity") this.judge.wanted("^", names[1], b, plain);
    if (a.kind !== "quantity") return a.kind === "bare" && b.kind === "quantity" ? plainNumber : silent;
    if (isAbsolute(a)) return absolute(this.judge, "^", names[0], a);
    if (b.kind === "bare") return quantity(...a.scales.map((scale) => raised(scale, b.value)));
    const pure = a.scales.filter(isPlain);
    if (pure.length > 0) return plainNumber;
    const unit = scaleName(a.scales[0] as Scale);
    this.judge.say(
      "error",
      say`^: the exponent of ${names[0]} (${unit}) is not a typed number, so the result has no unit`,
    );
    return silent;
  }
}
