import { allowed, defaultOf, words } from "../formula/arguments";
import { type AnyDefinition, resultUnit } from "../formula/definition";
import { sourceLine } from "../formula/source";
import { families } from "../functions";
import { familiesOf } from "../notebook/function-families";
import { readFolder } from "./folder";
import type { Output } from "./output";

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
    valid: definition.valid,
    ...(definition.caution && { caution: definition.caution }),
    sources: definition.sources.map((source) => ({ ...source, text: sourceLine(source) })),
  };
}

function functionText(definition: AnyDefinition): string {
  const { arguments: args } = jsonFunction("", definition);
  const call = args.map(({ name, default: otherwise }) => (otherwise === undefined ? name : `${name} = ${otherwise}`));
  const unit = resultUnit(definition);
  return [
    `${definition.name}(${call.join(", ")})  ->  ${unit === "1" ? "plain number" : unit}`,
    `    ${definition.title}`,
    ...args.map(({ name, unit: own, about, allowed: limits }) => `    ${name} [${own}]: ${about}; allowed ${limits}`),
    ...definition.sources.map((source) => `    source: ${sourceLine(source)}`),
  ].join("\n");
}

/**
 * Prints every named function with its arguments, units and sources.
 *
 * @param folder the notebook whose own functions come before the shipped ones.
 */
export function list(output: Output, json: boolean, folder?: string): void {
  const all =
    folder === undefined
      ? Object.entries(families).map(([name, functions]) => ({ name, functions }))
      : familiesOf(readFolder(output.path(folder)));
  if (json) {
    const data = all.flatMap(({ name, functions }) => functions.map((one) => jsonFunction(name, one)));
    output.write(`${JSON.stringify(data, undefined, 2)}\n`);
    return;
  }
  const text = all.map(
    ({ name, functions }) => `${name}\n${"=".repeat(name.length)}\n${functions.map(functionText).join("\n")}\n`,
  );
  output.write(text.join("\n"));
}
