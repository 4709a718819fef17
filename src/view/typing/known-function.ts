/** What the page knows of an argument when it helps with typing. */
export interface KnownArgument {
  readonly name: string;
  readonly about: string;
  /** Unit as printed; empty for texts and plain numbers. */
  readonly unit: string;
  /** What is allowed, in words; empty where anything goes. */
  readonly allowed: string;
  readonly isOptional: boolean;
  /** What is taken when it is left out, in words. */
  readonly otherwise: string;
}

/** A function that can be typed: a named one of this notebook or one of the open formula language. */
export interface KnownFunction {
  readonly name: string;
  readonly title: string;
  /** Undefined where nobody has described them. */
  readonly args: readonly KnownArgument[] | undefined;
  /** The last argument may be given again and again. */
  readonly repeats: boolean;
  readonly isNamed: boolean;
}

/** Those that begin with the letters before those that hold them; among these the named first, then the described. */
export function suggestionsFor(functions: readonly KnownFunction[], letters: string, most = 12): KnownFunction[] {
  const wanted = letters.toUpperCase();
  const rank = ({ name, isNamed, args }: KnownFunction) =>
    (name.startsWith(wanted) ? 0 : name.includes(`.${wanted}`) ? 1 : 2) * 3 + (isNamed ? 0 : args ? 1 : 2);
  return functions
    .filter(
      ({ name }) =>
        name.startsWith(wanted) || name.includes(`.${wanted}`) || (wanted.length > 2 && name.includes(wanted)),
    )
    .sort((a, b) => rank(a) - rank(b) || a.name.localeCompare(b.name))
    .slice(0, most);
}
