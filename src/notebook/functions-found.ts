import { words } from "../formula/arguments";
import type { AnyDefinition } from "../formula/definition";
import { sourceLine } from "../formula/source";
import { said } from "../words/say";
import type { Family } from "./function-families";

const texts = new WeakMap<AnyDefinition, string>();

/** Everything by which a function is looked for. */
function textOf(family: string, definition: AnyDefinition): string {
  const known = texts.get(definition);
  if (known !== undefined) return known;
  const { name, title, args, steps, valid, sources, caution } = definition;
  const text = [
    name,
    title,
    said(title),
    family,
    said(family),
    ...Object.entries(args).flatMap(([argument, { about }]) => [words(argument), about, said(about)]),
    ...steps.map((step) => ("why" in step ? step.why : "")),
    valid,
    said(valid),
    caution ?? "",
    ...sources.map(sourceLine),
  ]
    .join("\n")
    .toLowerCase();
  texts.set(definition, text);
  return text;
}

/** The functions in which every word stands; those that carry the words in name or title come first in their family. */
export function foundIn(families: readonly Family[], wanted: string): readonly Family[] {
  const parts = wanted.toLowerCase().split(/\s+/).filter(Boolean);
  if (parts.length === 0) return families;
  const isInName = ({ name, title }: AnyDefinition) =>
    parts.every((part) => `${name} ${title} ${said(title)}`.toLowerCase().includes(part));
  return families
    .map(({ name, functions }) => {
      const fitting = functions.filter((one) => parts.every((part) => textOf(name, one).includes(part)));
      return { name, functions: [...fitting.filter(isInName), ...fitting.filter((one) => !isInName(one))] };
    })
    .filter(({ functions }) => functions.length > 0);
}
