import { say } from "../words/say";
import type { About } from "./about";
import { checkLength, checkNote, most } from "./limits";
import { printAbout, readAbout } from "./migrate";
import { firstOption, isOptionPage, leadColumns, type Notebook, newPageId, type Page } from "./model";
import { parsePage, printPage } from "./page-csv";
import { Refusal } from "./refusal";

/** Text files by name, as they lie in a notebook's folder. */
export type Files = ReadonlyMap<string, string>;

const aboutFile = "notebook.json";

function readPage(files: Files, name: string, file: string): Page {
  if (!/^[^/\\:\0]+\.csv$/i.test(file) || file.startsWith(".")) {
    throw new Refusal(
      say`notebook.json names the file "${file}" for ${name}; a page's file is a plain name that ends in .csv.`,
    );
  }
  const text = files.get(file);
  if (text === undefined) throw new Refusal(say`${file} is missing; notebook.json names it for the page ${name}.`);
  const rows = parsePage(file, text);
  return { id: newPageId(), name, file, rows, source: { text, rows } };
}

/** What a schema cannot say in a sentence of ours: how much is too much. */
function checkAbout({ title, pages, notes }: About): void {
  checkLength(say`notebook.json: the title`, title);
  for (const { name } of pages) checkLength(say`notebook.json: the page`, name);
  for (const [page, note] of Object.entries(notes ?? {})) checkNote(page, note);
  if (pages.length > most.pages) {
    throw new Refusal(say`notebook.json has ${pages.length} pages (allowed ${most.pages}).`);
  }
}

/** All option pages must have the same options in the same order. */
function checkOptions(pages: readonly Page[]): void {
  const [first, ...rest] = pages.filter(isOptionPage);
  const header = first?.rows[0]?.join(", ");
  const other = rest.find((page) => page.rows[0]?.join(", ") !== header);
  if (first && other) {
    const column = (other.rows[0] ?? []).findIndex((cell, i) => cell !== first.rows[0]?.[i]);
    throw new Refusal(
      say`${other.file}, row 1, column ${Math.max(column, leadColumns.length) + 1}: the options differ from those of ${first.file}; make them equal.`,
    );
  }
}

/**
 * Makes a notebook of its files.
 *
 * @throws Refusal with file, row and column for what cannot be read.
 */
export function readNotebook(files: Files): Notebook {
  const json = files.get(aboutFile);
  if (json === undefined)
    throw new Refusal(say`${aboutFile} is missing; a notebook is a folder with it and one CSV a page.`);
  const about = readAbout(json);
  checkAbout(about);
  const pages = about.pages.map(({ name, file }) => readPage(files, name, file));
  for (const key of ["name", "file"] as const) {
    const seen = new Set<string>();
    for (const page of pages) {
      if (seen.has(page[key].toLowerCase()))
        throw new Refusal(say`notebook.json has two pages with the ${key} "${page[key]}".`);
      seen.add(page[key].toLowerCase());
    }
  }
  checkOptions(pages);
  const options = pages.find(isOptionPage)?.rows[0]?.slice(firstOption) ?? [];
  for (const option of options) checkLength(say`The option`, option);
  if (options.length > most.options) {
    throw new Refusal(say`The pages have ${options.length} options (allowed ${most.options}).`);
  }
  return { about, pages, source: { text: json, about } };
}

/** A page as the text of its file: as it was read when nothing changed. */
export const pageText = (page: Page): string =>
  page.source && page.source.rows === page.rows ? page.source.text : printPage(page.rows);

/** The files of a notebook. */
export function writeNotebook(notebook: Notebook): Map<string, string> {
  const { about, source } = notebook;
  return new Map([
    [aboutFile, source?.about === about ? source.text : printAbout(about)],
    ...notebook.pages.map((page) => [page.file, pageText(page)] as const),
  ]);
}
