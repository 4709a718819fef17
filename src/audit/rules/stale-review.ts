import { say } from "../../words/say";
import type { Finding } from "../finding";
import { reviewsOf } from "../review";
import type { Rule } from "../rule";

const name = "stale-review";

/** `Supply.drop@Cruiser`, `Supply.drop`, `Supply.*` or `Free!B3` in parts. */
function parts(place: string): Pick<Finding, "page" | "key" | "option" | "cell"> {
  const cell = /^'?(.+?)'?!([A-Z]+\d+)$/.exec(place);
  if (cell) return { page: cell[1] ?? "", key: "", option: "", cell: cell[2] ?? "" };
  const [, page = "", key = "", option = ""] = /^([^.@]+)\.([^@]+?)(?:@(.+))?$/.exec(place) ?? [];
  return { page, key: key === "*" ? "" : key, option, cell: "" };
}

/** A tick for something that has changed since. */
export const staleReview: Rule = {
  name,
  about: say`a review of something that has changed since`,
  find: ({ notebook, find }) =>
    reviewsOf(notebook, find).flatMap(({ place, who, when, stale, lost }): Finding[] => {
      if (!stale) return [];
      const message = lost
        ? say`${place} was reviewed by ${who} on ${when} and is no longer there; take the tick back`
        : say`${place} was reviewed by ${who} on ${when}; a formula, a function or an input behind it has changed since`;
      return [{ rule: name, severity: "warning", ...parts(place), message }];
    }),
};
