import { type Scale, sameQuantity, scaleName } from "../../units/scale";
import { say } from "../../words/say";
import { type Measure, type Quantity, quantity, shared, silent } from "./measure";

export type UnitLevel = "error" | "warning";

/** What the audit of units found in one formula. */
export interface UnitFinding {
  readonly level: UnitLevel;
  readonly message: string;
}

/** `, 1000 times` between two units of one quantity; nothing between different quantities. */
export function factorWords(from: Scale, to: Scale): string {
  if (!sameQuantity(from, to) || from.zero !== to.zero) return "";
  const ratio = from.factor / to.factor;
  return say` (factor ${Number((ratio < 1 ? 1 / ratio : ratio).toPrecision(6))})`;
}

/** The two readings that lie nearest to each other: of one quantity, if there are any. */
export function nearest(a: Quantity, b: Quantity): readonly [Scale, Scale] {
  const pairs = a.scales.flatMap((x) => b.scales.map((y) => [x, y] as const));
  return pairs.find(([x, y]) => sameQuantity(x, y)) ?? (pairs[0] as readonly [Scale, Scale]);
}

/** Collects findings while a formula is walked. */
export class Judge {
  readonly findings: UnitFinding[] = [];

  say(level: UnitLevel, message: string): void {
    if (!this.findings.some((one) => one.message === message)) this.findings.push({ level, message });
  }

  /** A typed number beside a quantity that is more than a plain number; 0 fits everywhere. */
  private beside(value: number, other: Quantity, sign: string): void {
    if (value === 0 || other.scales.some((scale) => scaleName(scale) === "1")) return;
    const unit = scaleName(other.scales[0] as Scale);
    this.say("warning", say`${sign}: ${value} is typed without a unit beside ${unit}; give it a row with its unit`);
  }

  /**
   * Two parts that must have one unit: sides of a sum or a comparison, branches of a choice.
   *
   * @returns what they have in common; silent after a finding, so that one mistake is told once.
   */
  alike(sign: string, a: Measure, b: Measure, names: readonly [string, string]): Measure {
    if (a.kind === "silent") return b.kind === "quantity" ? b : silent;
    if (b.kind === "silent") return a.kind === "quantity" ? a : silent;
    if (a.kind === "bare" && b.kind === "bare") return a;
    if (a.kind === "bare") {
      this.beside(a.value, b as Quantity, sign);
      return b;
    }
    if (b.kind === "bare") {
      this.beside(b.value, a, sign);
      return a;
    }
    const both = shared(a, b);
    if (both) return both;
    const [x, y] = nearest(a, b);
    this.say(
      "error",
      say`${sign}: ${names[0]} is in ${scaleName(x)}, ${names[1]} in ${scaleName(y)}${factorWords(x, y)}; they need one unit`,
    );
    return silent;
  }

  /** A part that must have a given unit. @param what how the sentence begins: `CONDUCTOR.DROP, run`. */
  wanted(what: string, name: string, given: Measure, unit: Scale): void {
    if (given.kind !== "quantity" || shared(given, quantity(unit))) return;
    const [x] = nearest(given, quantity(unit));
    this.say("error", say`${what}: wants ${scaleName(unit)}, ${name} is in ${scaleName(x)}${factorWords(x, unit)}`);
  }
}
