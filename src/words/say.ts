import { withDecimalSign } from "./decimal-sign";
import { isolated } from "./isolated";
import { spoken } from "./language";

/** The English text of a template: `plausible {0} to {1}`. */
const keys = new WeakMap<readonly string[], string>();

function keyOf(parts: readonly string[]): string {
  const known = keys.get(parts);
  if (known !== undefined) return known;
  const key = parts.reduce((text, part, i) => `${text}{${i - 1}}${part}`);
  keys.set(parts, key);
  return key;
}

/** A text that is data, such as the title of a function, in the language that is spoken. */
export function said(english: string): string {
  const found = spoken().catalogue[english];
  return typeof found === "string" ? found : (found?.other ?? english);
}

const written = (value: string | number): string =>
  typeof value === "number" ? withDecimalSign(String(value)) : isolated(value);

/**
 * A text in the language that is spoken, written in English where it is used:
 *
 *     say`plausible ${low} to ${high}`
 *
 * Numbers are written with the person's decimal sign; a text that would change the order of what stands beside it is
 * set apart.
 */
export function say(parts: TemplateStringsArray, ...values: readonly (string | number)[]): string {
  const text = said(keyOf(parts));
  return values.length === 0 ? text : text.replace(/\{(\d)\}/g, (_, place: string) => written(values[+place] ?? ""));
}

/** The same around what is more than text, such as a part of the page; in pieces, in the order of the language. */
export const sayAround = <T>(parts: TemplateStringsArray, ...values: readonly T[]): readonly (string | T)[] =>
  said(keyOf(parts))
    .split(/\{(\d)\}/)
    .map((piece, i) => (i % 2 === 1 ? (values[Number(piece)] as T) : piece));

/** `1 row`, `3 rows`: a number of things, in the form that the language has for it. */
export function counted(count: number, one: string, many = `${one}s`): string {
  const { catalogue, plural } = spoken();
  const found = catalogue[`${one} / ${many}`];
  const forms = typeof found === "object" ? found : { one: `{0} ${one}`, other: `{0} ${many}` };
  return (forms[plural.select(count)] ?? forms.other).replace("{0}", written(count));
}
