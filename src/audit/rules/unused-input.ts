import { nameOnPage } from "../../notebook/cell-name";
import { columnsOf, firstOption, isOptionPage, lead, type Page } from "../../notebook/model";
import { rowKind } from "../../notebook/rows";
import { say } from "../../words/say";
import { found } from "../finding";
import { onlyCounts } from "../form";
import type { Rule } from "../rule";
import { readsAny, type Subject } from "../subject";

const name = "unused-input";

/** Which cells of each page some formula uses, as row times width plus column. */
function usedCells({ forms }: Subject): ReadonlyMap<Page, ReadonlySet<number>> {
  const used = new Map<Page, Set<number>>();
  for (const form of forms) {
    if (onlyCounts(form.text)) continue;
    for (const column of form.columns) {
      readsAny(form, column, (page, row, at) => {
        const cells = used.get(page) ?? new Set();
        used.set(page, cells.add(row * columnsOf(page) + at));
        return false;
      });
    }
  }
  return used;
}

/** A number that is asked for and changes nothing. */
export const unusedInput: Rule = {
  name,
  about: say`an input that no formula uses`,
  find: (subject) => {
    const used = usedCells(subject);
    return subject.notebook.pages.filter(isOptionPage).flatMap((page) =>
      page.rows.flatMap((cells, row) => {
        if (rowKind(page, row) !== "input" || !cells[lead.unit]) return [];
        const filled = cells.flatMap((text, column) => (column >= firstOption && text !== "" ? [column] : []));
        if (filled.length === 0 || filled.some((column) => used.get(page)?.has(row * columnsOf(page) + column)))
          return [];
        const { quantity, ...place } = nameOnPage(page, row, lead.quantity);
        const message = say`no formula uses ${quantity}; use it, or say in its basis what it is kept for`;
        return [found(name, "note", { ...place, quantity }, message)];
      }),
    );
  },
};
