import { listed } from "../words/isolated";
import { say } from "../words/say";
import { emptyRow, pageOf, withPage } from "./edit-cells";
import { mapFormulas } from "./edit-lines";
import { checkCell, checkLength, checkSize, most } from "./limits";
import {
  isOptionPage,
  leadColumns,
  type Notebook,
  newPageId,
  optionsOf,
  type Page,
  pageByName,
  type Row,
} from "./model";
import { forgetPage } from "./noted-of-page";
import { checkOffsetsName } from "./offsets-name";
import { functionColumns, isFunctionPage } from "./own/function-page";
import { Refusal } from "./refusal";
import { renameNoted } from "./rename-noted";
import { dropPageIn, renamePageIn } from "./structure";
import { fileStem } from "./usual-page";

/** @param own the page that is to have the name; it may have had it in other letters, large or small. */
function checkName(notebook: Notebook, name: string, own?: Page): void {
  checkLength(say`Page`, name);
  if (!/^[^\s.!:/\\?*[\]'"@][^.!:/\\?*[\]'"@\n\r]*$/u.test(name) || name !== name.trim()) {
    throw new Refusal(
      say`Page name "${name}": it must not be empty, begin or end with a space, or hold any of . ! : / \\ ? * [ ] ' " @`,
    );
  }
  const taken = pageByName(notebook, name);
  if (taken && taken !== own) throw new Refusal(say`There is already a page "${taken.name}"; give another name.`);
}

/** A file name of its own for a page: `side-force.csv`. */
function fileFor(notebook: Notebook, name: string): string {
  const stem = fileStem(name);
  const taken = new Set(notebook.pages.map((page) => page.file.toLowerCase()));
  let file = `${stem}.csv`;
  for (let n = 2; taken.has(file); n++) file = `${stem}-${n}.csv`;
  return file;
}

/** Keeps the page list of notebook.json in step with the pages. */
function withPages(notebook: Notebook, pages: readonly Page[]): Notebook {
  const known = new Map(notebook.about.pages.map((entry) => [entry.file, entry]));
  const entries = pages.map((page) => ({ ...known.get(page.file), name: page.name, file: page.file }));
  return { ...notebook, about: { ...notebook.about, pages: entries }, pages };
}

/** Adds a page after the others: an option page with the notebook's options, or a free sheet. */
export function addPage(notebook: Notebook, name: string, kind: "options" | "free" = "options"): Notebook {
  checkName(notebook, name);
  if (notebook.pages.length >= most.pages) {
    throw new Refusal(say`There are ${notebook.pages.length} pages (allowed ${most.pages}); remove one first.`);
  }
  const options = optionsOf(notebook);
  const header = [...leadColumns, ...(options.length ? options : ["Option 1"])];
  const rows: Row[] =
    kind === "options"
      ? [header, ...Array.from({ length: 12 }, () => emptyRow(header.length))]
      : Array.from({ length: 20 }, () => emptyRow(8));
  const page: Page = { id: newPageId(), name, file: fileFor(notebook, name), rows };
  return withPages(notebook, [...notebook.pages, page]);
}

/** Removes a page with all that is noted of it; references to it read `#REF!`. @throws Refusal for the last page. */
export function removePage(notebook: Notebook, id: string): Notebook {
  const page = pageOf(notebook, id);
  if (notebook.pages.length === 1) throw new Refusal(say`The last page cannot be removed.`);
  const rest = withPages(
    notebook,
    notebook.pages.filter((one) => one.id !== id),
  );
  return mapFormulas(forgetPage(rest, page.name), (formula) => dropPageIn(formula, page.name));
}

/**
 * Gives a page another name; references and what is noted of it follow, its file stays.
 *
 * @throws Refusal for a name that cannot be or is taken, and for a sheet of offsets that would no longer be found.
 */
export function renamePage(notebook: Notebook, id: string, name: string): Notebook {
  const page = pageOf(notebook, id);
  if (page.name === name) return notebook;
  checkName(notebook, name, page);
  checkOffsetsName(notebook, page, name);
  const renamed = withPages(
    notebook,
    notebook.pages.map((one) => (one.id === id ? { ...one, name } : one)),
  );
  const followed = mapFormulas(renamed, (formula) => renamePageIn(formula, page.name, name));
  return renameNoted(followed, page.name, name);
}

/** Moves a page to another place in the order of the job. @throws Refusal for a place before the first or past the last. */
export function movePage(notebook: Notebook, id: string, to: number): Notebook {
  const page = pageOf(notebook, id);
  const { pages } = notebook;
  const from = pages.indexOf(page);
  if (to < 0) throw new Refusal(say`${page.name} is the first page already.`);
  if (to >= pages.length) throw new Refusal(say`${page.name} is the last page already.`);
  return from === to ? notebook : withPages(notebook, pages.toSpliced(from, 1).toSpliced(to, 0, page));
}

function checkTable(name: string, rows: readonly Row[]): void {
  checkSize(name, rows.length, rows[0]?.length ?? 0);
  rows.forEach((cells, row) => {
    cells.forEach((text, column) => {
      checkCell(name, row, column, text);
    });
  });
}

/**
 * Puts imported rows in the place of a page's own.
 *
 * @throws Refusal when an option page would get other options than the rest of the notebook has, when a function page
 * would lose its header, or for too much.
 */
export function replacePage(notebook: Notebook, id: string, rows: readonly Row[]): Notebook {
  const page = pageOf(notebook, id);
  const others = notebook.pages.filter((one) => one.id !== id && isOptionPage(one));
  const options = others[0] ? optionsOf(notebook) : undefined;
  const incoming = isOptionPage({ rows }) ? (rows[0]?.slice(leadColumns.length) ?? []) : undefined;
  if (isOptionPage(page) && !incoming) {
    throw new Refusal(
      say`${page.name} is an option page; the table must begin with ${leadColumns.join(", ")} and the options.`,
    );
  }
  if (isFunctionPage(page) && !isFunctionPage({ rows })) {
    throw new Refusal(
      say`${page.name} defines functions; the table must begin with ${functionColumns.join(", ")}, or go onto a page of its own.`,
    );
  }
  if (incoming && options && incoming.join("\n") !== options.join("\n")) {
    throw new Refusal(
      say`The table's options are ${listed(incoming)}; the notebook has ${listed(options)}: make them equal first.`,
    );
  }
  checkTable(page.name, rows);
  const same = rows.length === page.rows.length && rows.every((row, i) => row.join("\0") === page.rows[i]?.join("\0"));
  return same ? notebook : withPage(notebook, { ...page, rows });
}
