import { nameOnPage } from "../../notebook/cell-name";
import { type Page, textAt } from "../../notebook/model";
import { say } from "../../words/say";
import { found } from "../finding";
import { isLink } from "../is-link";
import type { Rule } from "../rule";
import { namesOf } from "../subject";

const name = "link-chain";

/** A link to a link: the reader follows twice what one step would show. */
export const linkChain: Rule = {
  name,
  about: say`a link to a cell that is itself a mere link`,
  readsParts: true,
  find: ({ forms, notebook }) =>
    forms.flatMap((form) => {
      if (form.parsed?.kind !== "reference") return [];
      const { sheet, row, column } = form.parsed.at;
      const page = notebook.pages[sheet] as Page;
      const text = textAt(page, row, column);
      if (!isLink(text)) return [];
      const message = say`a link to ${nameOnPage(page, row, column).cell}, which is itself a link (${text}); point to where the value is worked out`;
      return namesOf(form).map((cell) => found(name, "note", cell, message));
    }),
};
