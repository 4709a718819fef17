import { type Argument, defaultOf } from "../../formula/arguments";
import type { AnyDefinition } from "../../formula/definition";
import type { Source } from "../../formula/source";
import type { Step } from "../../formula/steps";
import { say } from "../../words/say";
import type { Row } from "../model";
import { limitsText, literalText } from "./limits-text";

/** A source as its cell holds it: the words for its evidence are the file's and not those of the language spoken. */
function sourceText({ evidence, title, clause, edition, note }: Source): string {
  const place = [title, clause, edition].filter(Boolean).join(", ");
  const mark = evidence === "memory" ? "from memory, not confirmed: " : "common practice, no source: ";
  const isMarked = evidence === "memory" || evidence === "common practice";
  return `${isMarked ? mark : ""}${place}${note ? ` (${note})` : ""}`;
}

type Cells = { readonly [K in "formula" | "unit" | "limits" | "why" | "source"]?: string };

const row = (
  part: string,
  name: string,
  { formula = "", unit = "", limits = "", why = "", source = "" }: Cells,
): Row => [part, name, formula, unit, limits, why, source];

function argumentRow(name: string, argument: Argument, from: string): Row {
  const otherwise = defaultOf(argument);
  const limits = limitsText(argument);
  if (limits === undefined) return row("argument", name, { limits: `as ${from}`, why: argument.about });
  return row("argument", name, {
    formula: otherwise === undefined ? "" : literalText(otherwise),
    unit: "unit" in argument ? argument.unit : (argument.kind ?? ""),
    limits,
    why: argument.about,
  });
}

/** What algebra cannot say stays a step of the shipped function. */
function stepRow(step: Step, isResult: boolean, from: string): Row {
  if (step.kind === "require") return row("require", "", { formula: step.holds, why: step.says });
  const { symbol, unit, why } = step;
  const formula = step.kind === "algebra" ? step.formula : `as ${from}`;
  return row(isResult ? "result" : "step", symbol, { formula, unit, why });
}

function exampleRow(
  definition: AnyDefinition,
  { given, expect, within, source }: AnyDefinition["examples"][number],
): Row {
  const names = Object.keys(definition.args);
  const last = names.findLastIndex((name) => given[name] !== undefined);
  const values = names.slice(0, last + 1).map((name) => {
    const value = given[name];
    if (value === undefined) return "";
    return Array.isArray(value) ? `{${value.map(literalText).join(",")}}` : literalText(value);
  });
  return row("example", "", {
    formula: values.join(", "),
    limits: `${literalText(expect)}${within > 0 ? ` ± ${within}` : ""}`,
    source: sourceText(source),
  });
}

/**
 * The rows by which a function page defines the same function under another name. What rows cannot say (tables, roots,
 * sums) is pointed to in the shipped function, as in `as CONDUCTOR.DROP`.
 */
export function rowsOfFunction(definition: AnyDefinition, name: string): readonly Row[] {
  const { title, args, constants = {}, steps, valid, caution, sources, examples } = definition;
  const result = steps.findLast((step) => step.kind !== "require");
  const [first, ...more] = sources.map(sourceText);
  return [
    row("function", name, { why: title, source: first ?? "" }),
    ...Object.entries(args).map(([argument, one]) => argumentRow(argument, one, definition.name)),
    ...Object.entries(constants).map(([constant, { value, unit, about, source }]) =>
      row("constant", constant, { formula: String(value), unit, why: about, source: sourceText(source) }),
    ),
    ...steps.map((step) => stepRow(step, step === result, definition.name)),
    row("valid", "", { why: valid }),
    ...(caution ? [row("caution", "", { why: caution })] : []),
    ...more.map((source) => row("source", "", { source })),
    ...examples.map((example) => exampleRow(definition, example)),
  ];
}

/** A small function to begin with: two arguments, a constant, a step, a result, an example. */
export function rowsToBeginWith(name: string): readonly Row[] {
  const source = `common practice, no source: ${say`to be replaced`}`;
  return [
    row("function", name, { why: say`What it gives, in the words of the trade`, source }),
    row("argument", "length", { unit: "m", limits: "0 to 100", why: say`length of the run` }),
    row("argument", "loss", { formula: "0.05", unit: "1", limits: "0 to 1", why: say`share that is cut away` }),
    row("constant", "kgPerMetre", { formula: "1.2", unit: "kg/m", why: say`mass of one metre`, source }),
    row("step", "L", { formula: "length * (1 + loss)", unit: "m", why: say`what is bought` }),
    row("result", "m", { formula: "L * kgPerMetre", unit: "kg", why: say`mass of what is bought` }),
    row("valid", "", { why: say`Where it may be used, and what it leaves out.` }),
    row("example", "", { formula: "10, 0.1", limits: "13.2 ± 1e-9", source: `${say`own arithmetic`}: 10 * 1.1 * 1.2` }),
  ];
}
