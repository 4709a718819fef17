import { allowed, defaultOf, words } from "../formula/arguments";
import { type AnyDefinition, resultUnit } from "../formula/definition";
import { sourceLine } from "../formula/source";
import { families } from "../functions";
import type { Output } from "./output";

function jsonFunction(family: string, definition: AnyDefinition) {
  return {
    name: definition.name,
    family,
    title: definition.title,
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

/** Prints every named function with its arguments, units and sources. */
export function list(output: Output, json: boolean): void {
  if (json) {
    const all = Object.entries(families).flatMap(([family, of]) => of.map((one) => jsonFunction(family, one)));
    output.write(`${JSON.stringify(all, undefined, 2)}\n`);
    return;
  }
  const text = Object.entries(families).map(
    ([family, of]) => `${family}\n${"=".repeat(family.length)}\n${of.map(functionText).join("\n")}\n`,
  );
  output.write(text.join("\n"));
}
