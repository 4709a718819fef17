// Past 150 lines: one reader a kind of row, side by side so that they read alike.
import type { Argument } from "../../formula/arguments";
import type { AnyDefinition, Constant } from "../../formula/definition";
import { mathArity } from "../../formula/expression";
import { Scope } from "../../formula/scope";
import type { Source } from "../../formula/source";
import { prepareStep, type Step } from "../../formula/steps";
import { UnknownName } from "../../formula/unknown-name";
import { isUnitText, type UnitText } from "../../units/names";
import { say } from "../../words/say";
import type { Row } from "../model";
import type { FindFunction } from "../named-function";
import { part } from "./function-page";
import { decimalOf, limitForms, literalOf, numberLimits, textChoices } from "./limits-text";

/** A mistake in one row; its place is known to whoever reads the rows. */
export class RowMistake extends Error {
  override readonly name = "RowMistake";
}

const refuse = (sentence: string): never => {
  throw new RowMistake(sentence);
};

const reserved = new Set([
  "pi",
  "and",
  "or",
  "not",

  "true",
  "false",
  "null",
  ...Object.keys(mathArity),
]);
const numbersByName = new Set(["Infinity", "NaN", "undefined"]);

/** A name that a formula can use. */
function nameOf(row: Row, what: string): string {
  const name = row[part.name] ?? "";
  const why = whyNoName(name);
  if (why === "letters") refuse(say`${what} "${name}": a name is letters, digits and _, and begins with a letter`);
  if (why === "taken") refuse(say`${what} ${name}: this word means something else in a formula; take another`);
  return name;
}

function whyNoName(name: string): "letters" | "taken" | undefined {
  if (!/^[A-Za-z][A-Za-z0-9_]*$/.test(name)) return "letters";
  return reserved.has(name) || numbersByName.has(name) || name in {} ? "taken" : undefined;
}

function unitOf(row: Row, what: string): UnitText | "any" {
  const unit = (row[part.unit] ?? "").trim();
  if (unit === "any" || isUnitText(unit)) return unit;
  return refuse(
    unit === ""
      ? say`${what}: the unit is missing; write it as in mm, m2, kg/m3, or 1 for a plain number`
      : say`${what}: unit "${unit}" is not known; write it as in mm, m2, kg/m3, N m, or 1 for a plain number`,
  );
}

function whyOf(row: Row, what: string): string {
  const why = (row[part.why] ?? "").trim();
  return why === "" ? refuse(say`${what}: say in the column Why what it is`) : why;
}

/** The shipped function that a row points to with `as NAME`; undefined where it says something else. */
function pointed(text: string, find: FindFunction): AnyDefinition | undefined {
  const name = /^as\s+(\S+)$/i.exec(text.trim())?.[1]?.toUpperCase();
  if (name === undefined) return undefined;
  return find(name) ?? refuse(say`there is no shipped function ${name}; see the list of functions`);
}

/** Reads `common practice, no source: …` and `from memory, not confirmed: …`; anything else is a published source. */
export function sourceOf(text: string): Source | undefined {
  const written = text.trim();
  if (written === "") return undefined;
  const [, mark, rest = written] = /^(common practice|from memory)(?:, [a-z ]+)?: (.*)$/.exec(written) ?? [];
  if (mark === "common practice") return { evidence: "common practice", title: rest };
  if (mark === "from memory") return { evidence: "memory", title: rest };
  return { evidence: "published", title: written };
}

function withDefault<A extends Argument>(
  argument: A,
  row: Row,
  kind: "number" | "string" | "boolean",
  name: string,
): A {
  const text = (row[part.formula] ?? "").trim();
  if (text === "") return argument;
  const otherwise = literalOf(text);
  if (typeof otherwise !== kind) {
    const wanted = {
      number: say`a number`,
      string: say`text in quotation marks, as in "port"`,
      boolean: say`TRUE or FALSE`,
    }[kind];
    refuse(say`argument ${name}: "${text}" cannot be what is taken when it is left out; write ${wanted}, or nothing`);
  }
  return { ...argument, otherwise };
}

/** `argument`: name, unit or text or flag, limits, what is taken when it is left out, what it is. */
export function readArgument(row: Row, find: FindFunction): readonly [string, Argument] {
  const name = nameOf(row, "argument");
  const limits = row[part.limits] ?? "";
  const shipped = pointed(limits, find);
  if (shipped) {
    const argument = Object.hasOwn(shipped.args, name) ? shipped.args[name] : undefined;
    return [name, argument ?? refuse(say`argument ${name}: ${shipped.name} has no argument of this name`)];
  }
  const about = whyOf(row, `argument ${name}`);
  const unit = (row[part.unit] ?? "").trim();
  const wrongLimits = (): never =>
    refuse(say`argument ${name}: limits "${limits}" cannot be read; write them as in ${limitForms}`);
  if (unit === "flag") return [name, withDefault({ kind: "flag", about }, row, "boolean", name)];
  if (unit === "text") {
    const choices = textChoices(limits) ?? wrongLimits();
    return [name, withDefault({ kind: "text", about, ...(choices.length > 0 && { choices }) }, row, "string", name)];
  }
  const read = numberLimits(limits) ?? wrongLimits();
  return [name, withDefault({ about, unit: unitOf(row, `argument ${name}`), ...read }, row, "number", name)];
}

/** `constant`: name, number, unit, what it is, source. */
export function readConstant(row: Row, source: Source): readonly [string, Constant] {
  const name = nameOf(row, "constant");
  const text = (row[part.formula] ?? "").trim();
  const value = decimalOf(text) ?? refuse(say`constant ${name}: "${text}" is not a number with a decimal point`);
  const unit = unitOf(row, `constant ${name}`);
  if (unit === "any")
    refuse(say`constant ${name}: a constant has one unit; write it as in mm, or 1 for a plain number`);
  return [name, { value, unit: unit as UnitText, about: whyOf(row, `constant ${name}`), source }];
}

/** `step` and `result`: symbol, formula or `as NAME`, unit, why. `require`: condition, and what to say otherwise. */
export function readStep(row: Row, find: FindFunction): Step {
  const formula = (row[part.formula] ?? "").trim();
  const kind = row[part.part];
  const what = kind === "require" ? say`condition` : `${kind} ${row[part.name] ?? ""}`;
  if (formula === "") refuse(say`${what}: the formula is missing`);
  if (formula.startsWith("="))
    refuse(say`${what}: write the formula without the equals sign; it speaks of names and not of cells`);
  if (kind === "require") return { kind: "require", holds: formula, says: whyOf(row, what) };
  const symbol = nameOf(row, String(kind));
  const shipped = pointed(formula, find);
  if (shipped) {
    const step = shipped.steps.find((one) => "symbol" in one && one.symbol === symbol);
    return step ?? refuse(say`${what}: ${shipped.name} has no step of this name`);
  }
  return { kind: "algebra", symbol, formula, unit: unitOf(row, what), why: whyOf(row, what) };
}

/** Holds each step against the names before it; a mistake is told with the step that makes it. */
export class StepCheck {
  private readonly scope = new Scope();
  private isBlind = false;

  name(name: string, what: string): void {
    this.run(what, () => this.scope.add(name));
  }

  /**
   * Takes the name of a row with a mistake as known, so that the rows which use it are not blamed for that. Where the
   * name itself is the mistake it is not known which was meant: from then on names that are not known are let pass.
   */
  excuse(name: string): void {
    if (whyNoName(name) || this.scope.has(name)) this.isBlind = true;
    else this.scope.add(name);
  }

  step(step: Step): void {
    this.run("symbol" in step ? `step ${step.symbol}` : say`condition`, () => prepareStep(step, this.scope));
    if ("symbol" in step && !this.scope.has(step.symbol)) this.scope.add(step.symbol);
  }

  private run(what: string, act: () => unknown): void {
    try {
      act();
    } catch (cause) {
      if (this.isBlind && cause instanceof UnknownName) return;
      refuse(`${what}: ${cause instanceof Error ? cause.message : String(cause)}`);
    }
  }
}
