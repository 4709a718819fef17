import { isFormula } from "../../engine/content";
import { nameOnPage } from "../../notebook/cell-name";
import { displayNumber } from "../../notebook/display";
import { firstOption, isOptionPage, lead, type Page } from "../../notebook/model";
import { say } from "../../words/say";
import { type Finding, found } from "../finding";
import type { Rule } from "../rule";

const name = "scale-slip";

/** Boats that are compared differ by less; what stands further apart is hardly one boat beside another. */
const apart = 100;
/** What the other options have among themselves; where they differ by more, nothing is usual. */
const alike = 10;

const sizesOf = (cells: readonly string[]): readonly { readonly column: number; readonly size: number }[] =>
  cells.flatMap((text, column) => {
    const size = column < firstOption || text === "" || isFormula(text) ? 0 : Math.abs(Number(text));
    return size > 0 && Number.isFinite(size) ? [{ column, size }] : [];
  });

/** The least and the largest of the other options, when a number stands far from them and they near each other. */
function farFrom(sizes: ReturnType<typeof sizesOf>, column: number): readonly [number, number] | undefined {
  const own = sizes.find((one) => one.column === column)?.size ?? 0;
  const others = sizes.flatMap((one) => (one.column === column ? [] : [one.size]));
  const [least, most] = [Math.min(...others), Math.max(...others)];
  if (others.length < 2 || most > least * alike) return undefined;
  return own * apart < least || own > most * apart ? [least, most] : undefined;
}

function inRow(page: Page, row: number): Finding[] {
  const cells = page.rows[row] ?? [];
  const unit = cells[lead.unit] ?? "";
  const sizes = row > 0 && unit !== "" && unit !== "1" ? sizesOf(cells) : [];
  return sizes.flatMap(({ column }) => {
    const others = farFrom(sizes, column);
    if (!others) return [];
    const usual = [...new Set(others)].map((one) => displayNumber(one)).join(say` to `);
    const message = say`${cells[column] ?? ""} ${unit} beside ${usual} ${unit} in the other options; was it meant in another unit?`;
    return [found(name, "warning", nameOnPage(page, row, column), message)];
  });
}

/** A number that is a hundred times larger or smaller than in all other options: millimetres typed as metres. */
export const scaleSlip: Rule = {
  name,
  about: say`an input that is a hundred times larger or smaller than in the other options`,
  find: ({ notebook }) =>
    notebook.pages.filter(isOptionPage).flatMap((page) => page.rows.flatMap((_, row) => inRow(page, row))),
};
