import { said, say } from "../../words/say";
import { allowed, words } from "../arguments";
import { cellText } from "../cell-text";
import type { AnyDefinition } from "../definition";
import { readExpression } from "../read";
import { sourceLine } from "../source";
import type { Step } from "../steps";
import { symbolText } from "../symbol-name";
import { guardOf } from "./guard";

/** The reference that stands for a name of the function, in one column. */
export type CellOf = (name: string) => string;

/** A step of a named function as a row of plain formulas. */
export interface UnfoldedRow {
  /** By this name later rows speak of it. */
  readonly name: string;
  readonly title: string;
  /** Empty for a condition. */
  readonly unit: string;
  readonly basis: string;
  /** The formula without `=`. */
  readonly formula: (cellOf: CellOf) => string;
}

export interface Unfolded {
  readonly rows: readonly UnfoldedRow[];
  /** What stands in the place of the call. */
  readonly result: (cellOf: CellOf) => string;
}

/** A formula of more letters is not read at a glance; conditions go on in a row of their own. */
const mostLetters = 160;

const capital = (sentence: string): string => sentence.charAt(0).toUpperCase() + sentence.slice(1);
const algebra = (formula: string, cellOf: CellOf): string => cellText(readExpression(formula), cellOf);
const all = (conditions: readonly string[]): string =>
  conditions.length === 1 ? (conditions[0] as string) : `AND(${conditions.join(",")})`;

function constantRows(definition: AnyDefinition): UnfoldedRow[] {
  return Object.entries(definition.constants ?? {}).map(([name, { value, unit, about, source }]) => ({
    name,
    title: capital(said(about)),
    unit,
    basis: sourceLine(source),
    formula: () => String(value),
  }));
}

/** The limits of the arguments, as few rows as can be read. */
function limitRows(definition: AnyDefinition): UnfoldedRow[] {
  const groups: string[][] = [];
  let letters = 0;
  for (const [name, argument] of Object.entries(definition.args)) {
    const size = guardOf(argument, "AA100").join(",").length;
    letters += size;
    if (groups.length === 0 || letters > mostLetters) {
      groups.push([]);
      letters = size;
    }
    groups.at(-1)?.push(name);
  }
  return groups.map((names, i) => ({
    name: `limits ${i + 1}`,
    title: say`Inside the limits of ${definition.name}${groups.length > 1 ? say`, ${i + 1} of ${groups.length}` : ""}`,
    unit: "",
    basis: names.map((name) => `${words(name)} ${allowed(definition.args[name] as never)}`).join("; "),
    formula: (cellOf) => all(names.flatMap((name) => guardOf(definition.args[name] as never, cellOf(name)))),
  }));
}

/** A root is one row for its start and one for each improvement, the last of which bears its name. */
function rootRows(step: Extract<Step, { kind: "root" }>, of: string): UnfoldedRow[] {
  const nameOf = (time: number): string => (time === step.times ? step.symbol : `${step.symbol} ${time}`);
  return Array.from({ length: step.times + 1 }, (_, time) => ({
    name: nameOf(time),
    title: `${capital(said(step.why))}: ${time === 0 ? say`start` : say`improved ${time} of ${step.times}`}`,
    unit: step.unit,
    basis: say`step ${symbolText(step.symbol)} of ${of}`,
    formula: (cellOf) =>
      time === 0
        ? algebra(step.start, cellOf)
        : algebra(step.next, (name) => cellOf(name === step.symbol ? nameOf(time - 1) : name)),
  }));
}

function stepRows(step: Step, guard: string, definition: AnyDefinition): UnfoldedRow[] {
  const row = { unit: "unit" in step ? step.unit : "", basis: "" };
  switch (step.kind) {
    case "algebra":
    case "choose":
      return [
        {
          ...row,
          name: step.symbol,
          title: capital(said(step.why)),
          basis: say`step ${symbolText(step.symbol)} of ${definition.name}`,
          formula: (cellOf) =>
            step.kind === "algebra"
              ? algebra(step.formula, cellOf)
              : Object.entries(step.cases).reduceRight(
                  (otherwise, [word, formula]) =>
                    `IF(EXACT(${cellOf(step.by)},"${word}"),${algebra(formula, cellOf)},${otherwise})`,
                  "NA()",
                ),
        },
      ];
    case "root":
      return rootRows(step, definition.name);
    case "require":
      return [
        {
          ...row,
          name: guard,
          title: say`${definition.name} answers only where this holds`,
          basis: say`otherwise: ${said(step.says).replace(/\{(\w+)\}/g, (_, name) => symbolText(name))}`,
          formula: (cellOf) => algebra(step.holds, cellOf),
        },
      ];
    default:
      throw new Error(`a step of kind ${step.kind} cannot be unfolded`);
  }
}

/**
 * The steps of a named function as rows of plain formulas that give the same bits, and an error where the function
 * refuses: constants, limits, steps. The arguments are the caller's rows.
 *
 * @throws Error for a function of which `whyNotUnfolded` says that it cannot be.
 */
export function unfold(definition: AnyDefinition): Unfolded {
  const guards: string[] = [];
  const steps = definition.steps.flatMap((step) => {
    // No symbol holds a blank.
    if (step.kind === "require") guards.push(`must hold ${guards.length + 1}`);
    return stepRows(step, guards.at(-1) ?? "", definition);
  });
  const limits = limitRows(definition);
  const rows = [...constantRows(definition), ...limits, ...steps];
  const last = definition.steps.findLast((step) => step.kind !== "require");
  const symbol = last && "symbol" in last ? last.symbol : "";
  return {
    rows,
    result: (cellOf) => `IF(${all([...limits.map(({ name }) => name), ...guards].map(cellOf))},${cellOf(symbol)},NA())`,
  };
}
