import { isFormula } from "../engine/content";
import { referencesOf } from "../notebook/references";

/** `=Supply!F61` and nothing else. */
export const isLink = (text: string): boolean => {
  const [reference, ...more] = isFormula(text) ? referencesOf(text) : [];
  return (
    reference !== undefined &&
    more.length === 0 &&
    !reference.to &&
    /^=\s*(?:'(?:[^']|'')+'!|[\p{L}_][\p{L}\p{N}_]*!)?\$?[A-Z]{1,3}\$?\d+\s*$/iu.test(text)
  );
};
