import type { Notebook, Page } from "../model";

/** The columns of a page that defines functions, in the order of its header. */
export const functionColumns = ["Part", "Name", "Formula", "Unit", "Limits", "Why", "Source"] as const;

export const part = { part: 0, name: 1, formula: 2, unit: 3, limits: 4, why: 5, source: 6 } as const;

/** Whether a page defines functions of the notebook's own: its first row is their header. */
export const isFunctionPage = (page: Pick<Page, "rows">): boolean =>
  functionColumns.every((name, column) => page.rows[0]?.[column] === name);

/** The pages that define functions, in the order of the notebook. */
export const functionPages = (notebook: Pick<Notebook, "pages">): readonly Page[] =>
  notebook.pages.filter(isFunctionPage);
