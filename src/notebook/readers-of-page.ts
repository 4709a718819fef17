import { isFormula } from "../engine/content";
import { type Notebook, type Page, pageById } from "./model";
import { isNoted } from "./noted-of-page";
import { ownFunctions } from "./own/own-functions";
import { referencesOf } from "./references";

/** Formulas on other pages, and the names of those pages in the order of the job. */
export interface Readers {
  readonly formulas: number;
  readonly pages: readonly string[];
}

/** What is lost with a page, and what elsewhere would miss it. */
export interface PageLoss {
  /** Formulas that read its cells. */
  readonly reads: Readers;
  /** Formulas that call functions which it defines. */
  readonly calls: Readers;
  readonly hasNote: boolean;
  /** Ticks of reviews on it, its page's own among them. */
  readonly ticks: number;
  readonly accepted: number;
}

function readersWhere(notebook: Notebook, gone: Page, test: (formula: string) => boolean): Readers {
  let formulas = 0;
  const pages: string[] = [];
  for (const page of notebook.pages) {
    if (page === gone) continue;
    const count = page.rows.reduce((sum, row) => sum + row.filter((text) => isFormula(text) && test(text)).length, 0);
    if (count > 0) pages.push(page.name);
    formulas += count;
  }
  return { formulas, pages };
}

/** Whether a formula calls one of some functions; what stands in quotation marks is text. */
function callsOneOf(names: readonly string[]): (formula: string) => boolean {
  if (names.length === 0) return () => false;
  const any = names.map((name) => name.replaceAll(".", "\\.")).join("|");
  const call = new RegExp(`(?<![\\p{L}\\p{N}_.])(?:${any})\\s*\\(`, "iu");
  return (formula) => call.test(formula.replace(/"(?:[^"]|"")*"/g, '""'));
}

/** What the removal of a page would take away and leave behind. */
export function lossWithPage(notebook: Notebook, id: string): PageLoss {
  const page = pageById(notebook, id);
  if (!page) return { reads: none, calls: none, hasNote: false, ticks: 0, accepted: 0 };
  const name = page.name.toLowerCase();
  const own = ownFunctions(notebook).flatMap((one) => (one.page === page.name && one.name ? [one.name] : []));
  const { notes, reviews, accepted } = notebook.about;
  return {
    reads: readersWhere(notebook, page, (formula) =>
      referencesOf(formula).some((reference) => reference.page?.toLowerCase() === name),
    ),
    calls: readersWhere(notebook, page, callsOneOf(own)),
    hasNote: (notes?.[page.name] ?? "").trim() !== "",
    ticks: Object.keys(reviews ?? {}).filter((place) => isNoted(page.name, place)).length,
    accepted: (accepted ?? []).filter(({ at }) => isNoted(page.name, at)).length,
  };
}

const none: Readers = { formulas: 0, pages: [] };
