import { isFormula, plainNumberOf } from "../../engine/content";
import { firstOption, isOptionPage, type Notebook, type Page, textAt } from "../../notebook/model";
import { functionParts, isFunctionPage, part } from "../../notebook/own/function-page";
import { rowEntry } from "../../notebook/row-entry";
import { formulaAsTyped } from "../../notebook/typed-formula";
import { withDecimalSign } from "../../words/decimal-sign";
import type { Cell } from "../block";
import { rowUnits } from "../shown/row-units";
import { holdsNumbers } from "./reading";

const isNumberPlace = (page: Page, { column }: Cell): boolean => isOptionPage(page) && column >= firstOption;

/** A cell's text in the units that the notebook shows, numbers with a point. */
function textInUnits(notebook: Notebook, page: Page, cell: Cell): string {
  const text = textAt(page, cell.row, cell.column);
  return isNumberPlace(page, cell) ? rowUnits(notebook, page, cell.row).toType(text) : text;
}

/** A cell's text as a person types it: in the units that the notebook shows, with the person's decimal sign. */
export function typedText(notebook: Notebook, page: Page, cell: Cell): string {
  const text = textInUnits(notebook, page, cell);
  if (isFormula(text)) return formulaAsTyped(text);
  const isNumber = holdsNumbers(page, cell.row, cell.column) && plainNumberOf(text) !== undefined;
  return isNumber ? withDecimalSign(text) : text;
}

/**
 * What was typed into a cell as the cell holds it; what reads as before stays as it was, to the last digit.
 *
 * @param read what was typed, with a point.
 */
export function heldText(notebook: Notebook, page: Page, cell: Cell, read: string): string {
  if (!isNumberPlace(page, cell)) return read;
  return read === textInUnits(notebook, page, cell)
    ? textAt(page, cell.row, cell.column)
    : rowUnits(notebook, page, cell.row).toHold(read);
}

/** The values of a row that is picked from a list, for its option cells, as they are typed; the parts of a function. */
export function choicesAt(notebook: Notebook, page: Page, cell: Cell): readonly string[] {
  if (isFunctionPage(page)) return cell.column === part.part ? functionParts : [];
  if (!isNumberPlace(page, cell)) return [];
  const { toType } = rowUnits(notebook, page, cell.row);
  return (rowEntry(notebook, page, cell.row)?.choices ?? []).map((choice) => {
    const text = toType(String(choice));
    return plainNumberOf(text) === undefined ? text : withDecimalSign(text);
  });
}
