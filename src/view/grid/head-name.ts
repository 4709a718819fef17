import { firstOption, isOptionPage, type Page } from "../../notebook/model";
import { functionColumns, hasHeader } from "../../notebook/own/function-page";
import { said } from "../../words/say";

/** The name in the head of a column; the names that every such page has are said in the language that is spoken. */
export function headName(page: Page, column: number): string {
  const name = hasHeader(page) ? (page.rows[0]?.[column] ?? "") : "";
  const shared = isOptionPage(page) ? firstOption : functionColumns.length;
  return name !== "" && column < shared ? said(name) : name;
}
