/**
 * How a cell's text is understood. The rules are ours, not the engine's, so that a file means the same
 * wherever it is opened.
 *
 * Formula: begins with `=`. Number: plain decimal with a point, at most 15 significant digits (or those
 * with which a fraction was printed), no leading zeros (`007` is a name, not seven). Flag: TRUE or FALSE. Anything else is text, dates and `10%` included; a
 * leading apostrophe makes text of the rest.
 */
export type Content =
  | { readonly kind: "blank" }
  | { readonly kind: "formula"; readonly formula: string }
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "flag"; readonly value: boolean }
  | { readonly kind: "text"; readonly text: string };

const plainNumber = /^[+-]?(?:0|[1-9]\d*|(?=\.\d))(?:\.\d*)?(?:[eE][+-]?\d+)?$/;
const mostDigits = 15;

/** The number that a text stands for by the rules above, or undefined. */
export function plainNumberOf(text: string): number | undefined {
  if (!plainNumber.test(text)) return undefined;
  const digits = text
    .replace(/[eE].*$/, "")
    .replace(/[^\d]/g, "")
    .replace(/^0+/, "");
  const value = Number(text);
  // A calculated number may be printed with more digits; where it is the same number again, none of them is lost.
  if (digits.length > mostDigits && !(/[.e]/.test(text) && String(value) === text)) return undefined;
  return Number.isFinite(value) ? value + 0 : undefined;
}

export function contentOf(text: string): Content {
  if (text === "") return { kind: "blank" };
  if (text.startsWith("=") && text.length > 1) return { kind: "formula", formula: text };
  const value = plainNumberOf(text);
  if (value !== undefined) return { kind: "number", value };
  if (text === "TRUE" || text === "FALSE") return { kind: "flag", value: text === "TRUE" };
  return { kind: "text", text: text.startsWith("'") ? text.slice(1) : text };
}

export const isFormula = (text: string): boolean => text.startsWith("=") && text.length > 1;

/** The engine reads `1e-5` but not `1E-5`; strings and sheet names keep their letters. */
export const readableFormula = (formula: string): string =>
  formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'|(?<![\w.])(\d+\.?\d*|\.\d+)E([+-]?\d+)/g, (whole, number, power) =>
    number === undefined ? whole : `${number}e${power}`,
  );

/** What the engine is given for a text: text is marked as such, so that the engine guesses nothing. */
export function engineContent(text: string): string | number | boolean | null {
  const content = contentOf(text);
  switch (content.kind) {
    case "blank":
      return null;
    case "formula":
      return readableFormula(content.formula);
    case "text":
      return `'${content.text}`;
    default:
      return content.value;
  }
}
