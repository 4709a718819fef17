import { numberParts } from "./number-text";
import { symbolName } from "./symbol-name";

/** Escapes text for markup, so that no name or sentence can become an element. */
const escapeMarkup = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

/** An element with content that is markup already. */
export const element = (name: string, ...content: readonly string[]): string =>
  `<${name}>${content.join("")}</${name}>`;

export const mathRow = (...content: readonly string[]): string => element("mrow", ...content);
export const mathOperator = (sign: string): string => element("mo", escapeMarkup(sign));
export const mathWords = (text: string): string => element("mtext", escapeMarkup(text));
/** The whole element; `display` sets fractions and sums at full size. */
export const math = (...content: readonly string[]): string => `<math display="block">${content.join("")}</math>`;

export function mathName(name: string): string {
  const { base, below } = symbolName(name);
  // A space inside an identifier is dropped by most programs that set formulas.
  const letters = element("mi", escapeMarkup(base.replaceAll(" ", "\u00A0")));
  if (!below) return letters;
  return element("msub", letters, element(/^\d+$/.test(below) ? "mn" : "mi", escapeMarkup(below)));
}

export function mathNumber(value: number): string {
  const { digits, power } = numberParts(Math.abs(value));
  const size = power
    ? mathRow(
        element("mn", digits),
        mathOperator("×"),
        element("msup", "<mn>10</mn>", element("mn", `${power}`.replace("-", "−"))),
      )
    : element("mn", digits);
  return value < 0 ? mathRow(mathOperator("−"), size) : size;
}

export const fenced = (content: string): string => mathRow(mathOperator("("), content, mathOperator(")"));

/** A brace with one line a case: the value, and when it is taken. */
export function mathCases(cases: readonly { readonly value: string; readonly when: string | undefined }[]): string {
  const lines = cases.map(({ value, when }) =>
    element(
      "mtr",
      element("mtd", value),
      element("mtd", when === undefined ? mathWords("otherwise") : mathRow(mathWords("if\u00A0"), when)),
    ),
  );
  return mathRow(mathOperator("{"), element("mtable", ...lines));
}
