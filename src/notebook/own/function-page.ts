import { say } from "../../words/say";
import { isOptionPage, type Notebook, type Page } from "../model";

/** The columns of a page that defines functions, in the order of its header. */
export const functionColumns = ["Part", "Name", "Formula", "Unit", "Limits", "Why", "Source"] as const;

/** What a row can say of its function, in the usual order. */
export const functionParts: readonly string[] = [
  "function",
  "argument",
  "constant",
  "step",
  "require",
  "result",
  "valid",
  "caution",
  "source",
  "example",
];

export const part = { part: 0, name: 1, formula: 2, unit: 3, limits: 4, why: 5, source: 6 } as const;

/** Whether a page defines functions of the notebook's own: its first row is their header. */
export const isFunctionPage = (page: Pick<Page, "rows">): boolean =>
  functionColumns.every((name, column) => page.rows[0]?.[column] === name);

/** Whether a page's first row stands at the head of its columns and not among its cells. */
export const hasHeader = (page: Pick<Page, "rows">): boolean => isOptionPage(page) || isFunctionPage(page);

/** Why the first row of a function page cannot be written over. */
export const headerSentence = (page: Pick<Page, "name">): string =>
  say`Row 1 of ${page.name} names the columns of its functions; without it they would be gone, so it stays as it is.`;

/** The pages that define functions, in the order of the notebook. */
export const functionPages = (notebook: Pick<Notebook, "pages">): readonly Page[] =>
  notebook.pages.filter(isFunctionPage);
