import { cellsOf } from "../../notebook/feeds";
import { isOptionPage, lead, type Notebook, type Page, pageById, pageByName } from "../../notebook/model";
import { mapReferences } from "../../notebook/references";
import { say } from "../../words/say";

/** The same page in another state of a notebook: its file stays when it is renamed. */
export const sameFile = (notebook: Notebook, page: Page): Page | undefined =>
  notebook.pages.find(({ file }) => file === page.file) ?? pageByName(notebook, page.name);

/** How a formula calls a cell: by its row's key, and by how many options it lies away. */
function cellWords(page: Page, row: number, column: number, own: number, fixed: boolean): string {
  const key = isOptionPage(page) && row > 0 ? page.rows[row]?.[lead.key] : undefined;
  return `${page.file} ${key || row} ${fixed || !isOptionPage(page) ? say`at ${column}` : column - own}`;
}

/**
 * A formula with rows in the place of cells, so that rows that were inserted, pages that were renamed and options
 * that were added make no difference.
 *
 * @param own the column in which it stands.
 */
export function formulaByRows(notebook: Notebook, page: Page, text: string, own: number): string {
  const named: string[] = [];
  const bare = mapReferences(text, (reference) => {
    const cells = cellsOf(notebook, page, reference);
    // A block over several options means all of them, however many there are.
    const wide = reference.to !== undefined && reference.to.column !== reference.from.column;
    const [first] = cells;
    for (const cell of wide ? cells.filter(({ column }) => column === first?.column) : cells) {
      const home = pageById(notebook, cell.page);
      if (home) named.push(cellWords(home, cell.row, cell.column, own, wide || reference.from.fixedColumn));
    }
    return undefined;
  });
  return `${bare.replaceAll(/\s/g, "")} ${named.join(", ")}`;
}
