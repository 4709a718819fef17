import { say } from "../../words/say";
import { found } from "../finding";
import { callDepth } from "../parts";
import type { Rule } from "../rule";
import { namesOf } from "../subject";

const name = "long-formula";
/** More is not read at a glance; a formula over two lines of the formula bar, or five calls deep. */
const mostLetters = 300;
const mostDeep = 4;

/** A formula that nobody can follow. */
export const longFormula: Rule = {
  name,
  about: say`a formula that is too long or too deeply nested to follow`,
  find: ({ forms }) =>
    forms.flatMap((form) => {
      // A formula of numbers alone is an example or a check value, long by its data.
      if (form.reads.length === 0) return [];
      const deep = form.parsed ? callDepth(form.parsed) : 0;
      const long = form.text.length > mostLetters;
      if (!long && deep <= mostDeep) return [];
      const what = long ? say`${form.text.length} letters long` : say`${deep} calls deep`;
      return namesOf(form).map((cell) =>
        found(name, "note", cell, say`the formula is ${what}; give its parts rows of their own`),
      );
    }),
};
