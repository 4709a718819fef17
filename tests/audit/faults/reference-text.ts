import { mapReferences, type Reference } from "../../../src/notebook/references";

/** A reference as a formula writes it. */
export const referenceText = (reference: Reference): string => mapReferences("=A1", () => reference).slice(1);

const lost = "#REF!";

/** The names of the calls that stand around a place of a formula, the outermost first. */
export function callsAround(formula: string, place: number): string[] {
  const calls: string[] = [];
  const before = formula.slice(0, place).replace(/"[^"]*"|'[^']*'/g, "");
  for (const [, name, closing] of before.matchAll(/([A-Z][A-Z0-9.]*)?\(|(\))/gi)) {
    if (closing) calls.pop();
    else calls.push((name ?? "").toUpperCase());
  }
  return calls;
}

/** A formula with one of its references written otherwise, and the calls around it. */
export function replaceReference(
  formula: string,
  which: number,
  text: string,
): { readonly text: string; readonly around: readonly string[] } {
  let seen = -1;
  const marked = mapReferences(formula, (one) => (++seen === which ? undefined : one));
  return { text: marked.replace(lost, () => text), around: callsAround(marked, marked.indexOf(lost)) };
}
