import { nameOnPage } from "../../notebook/cell-name";
import { displayNumber } from "../../notebook/display";
import { firstOption, isOptionPage, lead } from "../../notebook/model";
import { rowEntry } from "../../notebook/row-entry";
import { say } from "../../words/say";
import { found } from "../finding";
import type { Rule } from "../rule";

const name = "implausible";

/** A number outside the plausible limits that the notebook keeps for its row. */
export const implausible: Rule = {
  name,
  about: say`a number outside the plausible limits of its row`,
  find: (subject) =>
    subject.notebook.pages.filter(isOptionPage).flatMap((page) =>
      page.rows.flatMap((cells, row) => {
        const { low, high } = rowEntry(subject.notebook, page, row) ?? {};
        if (low === undefined && high === undefined) return [];
        return cells.flatMap((_, column) => {
          const value = column < firstOption ? undefined : subject.value(page, row, column);
          if (value?.kind !== "number") return [];
          const inside =
            value.value >= (low ?? Number.NEGATIVE_INFINITY) && value.value <= (high ?? Number.POSITIVE_INFINITY);
          if (inside) return [];
          const unit = cells[lead.unit] === "1" ? "" : ` ${cells[lead.unit] ?? ""}`;
          const message = say`${displayNumber(value.value)}${unit} is outside the plausible ${low ?? "…"} to ${high ?? "…"}${unit}; measure again or widen the limits`;
          return [found(name, "warning", nameOnPage(page, row, column), message)];
        });
      }),
    ),
};
