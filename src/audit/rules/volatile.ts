import { say } from "../../words/say";
import { found } from "../finding";
import { everyPart } from "../parts";
import type { Rule } from "../rule";
import { namesOf } from "../subject";

const name = "volatile";
const changing = new Set(["RAND", "RANDBETWEEN", "NOW", "TODAY"]);

/** A result that is another one tomorrow, although nobody changed anything. */
export const volatile: Rule = {
  name,
  about: say`a function whose result changes by itself`,
  readsParts: true,
  find: ({ forms }) =>
    forms.flatMap((form) => {
      const used = form.parsed
        ? everyPart(form.parsed).flatMap(({ part }) =>
            part.kind === "call" && changing.has(part.name) ? [part.name] : [],
          )
        : [];
      if (used.length === 0) return [];
      const message = say`${[...new Set(used)].join(", ")} gives another result each time; type the value or the date instead`;
      return namesOf(form).map((cell) => found(name, "warning", cell, message));
    }),
};
