import type { Parsed } from "../../engine/parsed";
import { cellFormula } from "../../notebook/formula-words";
import { say } from "../../words/say";
import { found } from "../finding";
import { everyPart } from "../parts";
import type { Rule } from "../rule";
import { namesOf } from "../subject";

const name = "swallowed-error";

/** The part whose error would be replaced, and what would stand in its place. */
function swallowing(part: Parsed): { readonly inner: Parsed; readonly instead: Parsed | undefined } | undefined {
  if (part.kind !== "call") return undefined;
  const [first, second] = part.args;
  if (first && (part.name === "IFERROR" || part.name === "IFNA")) return { inner: first, instead: second };
  if (first?.kind === "call" && part.name === "IF" && /^IS(ERROR|ERR|NA)$/.test(first.name) && first.args[0]) {
    return { inner: first.args[0], instead: second };
  }
  return undefined;
}

const looksLikeResult = (instead: Parsed | undefined): boolean =>
  instead === undefined || instead.kind === "number" || instead.kind === "blank";

/** An error that is replaced by a number, so that nobody sees that there is no result. */
export const swallowedError: Rule = {
  name,
  about: say`an error that is replaced by a number`,
  readsParts: true,
  find: ({ forms, notebook }) =>
    forms.flatMap((form) => {
      const hidden = form.parsed
        ? everyPart(form.parsed).flatMap(({ part }) => {
            const found = swallowing(part);
            return found && looksLikeResult(found.instead) ? [cellFormula(notebook, found.inner)] : [];
          })
        : [];
      return hidden.flatMap((inner) =>
        namesOf(form).map((cell) =>
          found(
            name,
            "warning",
            cell,
            say`an error in ${inner} would look like a result; let it show, or put words in its place`,
          ),
        ),
      );
    }),
};
