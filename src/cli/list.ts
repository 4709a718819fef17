import { allowed, defaultOf, words } from "../formula/arguments";
import { type AnyDefinition, resultUnit } from "../formula/definition";
import { mathematicsOf } from "../formula/explain";
import { sourceLine } from "../formula/source";
import { symbolText } from "../formula/symbol-name";
import { families } from "../functions";
import { familiesOf } from "../notebook/function-families";
import { foundIn } from "../notebook/functions-found";
import { exampleFormula } from "../notebook/proof-page";
import { withDecimalSign } from "../words/decimal-sign";
import { said, say } from "../words/say";
import { readFolder } from "./folder";
import { Misuse, type Output } from "./output";

function jsonFunction(family: string, definition: AnyDefinition) {
  return {
    name: definition.name,
    family,
    title: definition.title,
    ...(definition.ownOf && { page: definition.ownOf }),
    unit: resultUnit(definition),
    arguments: Object.entries(definition.args).map(([name, argument]) => ({
      name: words(name),
      unit: "unit" in argument ? argument.unit : "text",
      about: argument.about,
      allowed: allowed(argument),
      ...(defaultOf(argument) !== undefined && { default: defaultOf(argument) }),
    })),
    mathematics: mathematicsOf(definition).map(({ symbol, symbols, unit, why }) => ({
      symbol,
      text: symbols.text,
      unit,
      why,
    })),
    constants: Object.entries(definition.constants ?? {}).map(([name, { value, unit, about, source }]) => ({
      name: symbolText(name),
      value,
      unit,
      about,
      source: sourceLine(source),
    })),
    examples: definition.examples.map(({ given, expect, within, source }) => ({
      formula: exampleFormula(definition, given),
      expect,
      within,
      source: sourceLine(source),
    })),
    valid: definition.valid,
    ...(definition.caution && { caution: definition.caution }),
    sources: definition.sources.map((source) => ({ ...source, text: sourceLine(source) })),
  };
}

function functionText(definition: AnyDefinition): string {
  const { arguments: args, mathematics, constants, examples, valid, caution, sources } = jsonFunction("", definition);
  const call = args.map(({ name, default: otherwise }) => (otherwise === undefined ? name : `${name} = ${otherwise}`));
  const unit = resultUnit(definition);
  const [example] = examples;
  return [
    `${definition.name}(${call.join(", ")})  ->  ${unit === "1" ? say`plain number` : unit}`,
    `    ${said(definition.title)}`,
    ...args.map(
      ({ name, unit: own, about, allowed: limits }) =>
        `    ${name} [${own}]: ${say`${said(about)}; allowed ${limits}`}`,
    ),
    ...mathematics.map(({ text, why }) => `    ${text}   (${why})`),
    ...constants.map(
      ({ name, value, unit: own, about, source }) =>
        `    ${name} = ${withDecimalSign(String(value))} ${own}: ${said(about)}; ${source}`,
    ),
    `    ${say`holds: ${said(valid)}`}`,
    ...(caution ? [`    ${say`caution: ${said(caution)}`}`] : []),
    ...sources.map(({ text }) => `    ${say`source: ${text}`}`),
    ...(example
      ? [`    ${say`example: ${`${example.formula} = ${withDecimalSign(String(example.expect))}; ${example.source}`}`}`]
      : []),
  ].join("\n");
}

/**
 * Prints the named functions with arguments, units, mathematics, limits, sources and a worked example.
 *
 * @param wanted words that must all stand in what is said of a function; all functions when there are none.
 * @param folder the notebook whose own functions come before the shipped ones.
 * @throws Misuse when no function says them.
 */
export function list(output: Output, wanted: readonly string[], json: boolean, folder?: string): void {
  const all =
    folder === undefined
      ? Object.entries(families).map(([name, functions]) => ({ name, functions }))
      : familiesOf(readFolder(output.path(folder)));
  const found = foundIn(all, wanted.join(" "));
  if (found.length === 0) {
    throw new Misuse(say`No function says "${wanted.join(" ")}"; try one word of it, or a quantity such as drop.`);
  }
  if (json) {
    const data = found.flatMap(({ name, functions }) => functions.map((one) => jsonFunction(name, one)));
    output.write(`${JSON.stringify(data, undefined, 2)}\n`);
    return;
  }
  const text = found.map(
    ({ name, functions }) =>
      `${said(name)}\n${"=".repeat(said(name).length)}\n${functions.map(functionText).join("\n")}\n`,
  );
  output.write(text.join("\n"));
}
