import { isFormula } from "../../engine/content";
import { firstOption, isOptionPage, lead, type Page, textAt } from "../../notebook/model";
import { isFunctionPage, part } from "../../notebook/own/function-page";
import type { Meaning } from "../../notebook/table-cells";
import { readTyped, readTypedFormula, type Typed } from "../typing/typed-text";

/** Of a function page only constants and what is taken for an argument that is left out; all else is read as it stands. */
const holdsFunctionNumber = (page: Page, row: number, column: number): boolean =>
  column === part.formula && ["constant", "argument"].includes(textAt(page, row, part.part));

/** Whether what is typed here is read as a number where it can be: not in the columns of words, nor in rows without a unit. */
export const holdsNumbers = (page: Page, row: number, column: number): boolean =>
  isFunctionPage(page)
    ? holdsFunctionNumber(page, row, column)
    : !isOptionPage(page) || (column >= firstOption && textAt(page, row, lead.unit) !== "");

/** What a typing becomes in this cell. */
export const readFor = (page: Page, row: number, column: number, typed: string): Typed =>
  isFormula(typed)
    ? readTypedFormula(typed)
    : holdsNumbers(page, row, column)
      ? readTyped(typed)
      : { kind: "text", text: typed };

/** The text for a cell once it is known how its comma or point is meant. */
export function settled(typed: Typed, written: string, meaning: Meaning): string {
  if (typed.kind === "text") return typed.text;
  return meaning === "point" ? typed.asPoint : meaning === "groups" ? typed.asGroups : written;
}
