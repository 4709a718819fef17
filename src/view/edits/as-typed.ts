import { firstOption, isOptionPage, type Notebook, type Page, textAt } from "../../notebook/model";
import { rowEntry } from "../../notebook/row-entry";
import type { Cell } from "../block";
import { rowUnits } from "../shown/row-units";

const isNumberPlace = (page: Page, { column }: Cell): boolean => isOptionPage(page) && column >= firstOption;

/** A cell's text as a person types it, in the units that the notebook shows. */
export function typedText(notebook: Notebook, page: Page, cell: Cell): string {
  const text = textAt(page, cell.row, cell.column);
  return isNumberPlace(page, cell) ? rowUnits(notebook, page, cell.row).toType(text) : text;
}

/** What was typed into a cell as the cell holds it; what reads as before stays as it was, to the last digit. */
export function heldText(notebook: Notebook, page: Page, cell: Cell, typed: string): string {
  if (!isNumberPlace(page, cell)) return typed;
  return typed === typedText(notebook, page, cell)
    ? textAt(page, cell.row, cell.column)
    : rowUnits(notebook, page, cell.row).toHold(typed);
}

/** The values of a row that is picked from a list, for its option cells, as they are typed. */
export function choicesAt(notebook: Notebook, page: Page, cell: Cell): readonly string[] {
  if (!isNumberPlace(page, cell)) return [];
  const { toType } = rowUnits(notebook, page, cell.row);
  return (rowEntry(notebook, page, cell.row)?.choices ?? []).map((choice) => toType(String(choice)));
}
