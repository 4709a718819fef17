import type { RowEntry } from "./about";
import { isOptionPage, lead, type Notebook, type Page } from "./model";

/** `Supply.run`: how a row is named in notebook.json, on the terminal and in reviews; undefined without a key. */
export function rowAddress(page: Page, row: number): string | undefined {
  const key = isOptionPage(page) && row > 0 ? page.rows[row]?.[lead.key] : undefined;
  return key ? `${page.name}.${key}` : undefined;
}

/** What notebook.json says of a row: choices, plausible limits, digits. */
export function rowEntry(notebook: Notebook, page: Page, row: number): RowEntry | undefined {
  const address = rowAddress(page, row);
  return address === undefined ? undefined : notebook.about.rows?.[address];
}

/** Gives what is noted under addresses another address, in rows and reviews alike. */
export function moveAddresses(notebook: Notebook, move: (address: string) => string): Notebook {
  const { about } = notebook;
  const moved = <T>(entries: Record<string, T> | undefined) =>
    entries && Object.fromEntries(Object.entries(entries).map(([address, entry]) => [move(address), entry]));
  const rows = moved(about.rows);
  const reviews = moved(about.reviews);
  return { ...notebook, about: { ...about, ...(rows && { rows }), ...(reviews && { reviews }) } };
}

/** Follows a key that was changed. */
export function moveRowEntry(notebook: Notebook, page: string, from: string, to: string): Notebook {
  const old = `${page}.${from}`;
  if (from === "" || to === "" || !(notebook.about.rows?.[old] || notebook.about.reviews?.[old])) return notebook;
  return moveAddresses(notebook, (address) => (address === old ? `${page}.${to}` : address));
}
