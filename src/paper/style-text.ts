/**
 * Words as a string of a style sheet. Everything but letters, digits and spaces is written by its number, so that no
 * text of a notebook can end the string or the style sheet.
 */
export const styleText = (text: string): string =>
  `"${[...text].map((sign) => (/[A-Za-z0-9 ]/.test(sign) ? sign : `\\${(sign.codePointAt(0) ?? 0).toString(16)} `)).join("")}"`;
