import { isFormula } from "../engine/content";
import { cellsOf } from "../notebook/feeds";
import { type Notebook, type Page, pageById, textAt } from "../notebook/model";
import { referencesOf } from "../notebook/references";
import { isLink } from "./is-link";

/** Links behind links are followed no further than this. */
const mostSteps = 10;

/**
 * Whether a cell shows how many cells are blank or filled, here or where it points to: a yes or no in numbers, which is
 * no more of a block of measured ones.
 */
export function isCount(notebook: Notebook, page: Page, row: number, column: number): boolean {
  let [at, text] = [page, textAt(page, row, column)];
  for (let steps = 0; steps < mostSteps; steps++) {
    if (!isLink(text)) return isFormula(text) && onlyCounts(text);
    const [reference] = referencesOf(text);
    const [cell] = reference ? cellsOf(notebook, at, reference) : [];
    const next = cell && pageById(notebook, cell.page);
    if (!cell || !next) return false;
    [at, text] = [next, textAt(next, cell.row, cell.column)];
  }
  return false;
}

/** `=0-COUNTBLANK(E3:E7)-COUNTBLANK(E9:E11)`: counts of cells and whole numbers, added up, and nothing else. */
const onlyCounts = (text: string): boolean =>
  /COUNT/i.test(text) && /^=[\d\s+()-]*$/.test(text.replace(/\b(?:COUNTBLANK|COUNTA|COUNT)\([^()]*\)/gi, "1"));
