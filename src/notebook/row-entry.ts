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

/** Gives what is noted under addresses another address: rows, reviews and accepted findings alike. */
function moveAddresses(notebook: Notebook, move: (address: string) => string): Notebook {
  const { about } = notebook;
  // `Supply.drop@Cruiser` goes with its row.
  const moveCell = (place: string): string => {
    const [row = "", ...option] = place.split("@");
    return [move(row), ...option].join("@");
  };
  const rows = about.rows && renamed(about.rows, move);
  const reviews = about.reviews && renamed(about.reviews, moveCell);
  const accepted = about.accepted?.map((one) => ({ ...one, at: moveCell(one.at) }));
  return {
    ...notebook,
    about: { ...about, ...(rows && { rows }), ...(reviews && { reviews }), ...(accepted && { accepted }) },
  };
}

const renamed = <T>(entries: Record<string, T>, rename: (address: string) => string): Record<string, T> =>
  Object.fromEntries(Object.entries(entries).map(([address, entry]) => [rename(address), entry]));

/** Lets reviews and accepted findings of an option's cells follow its name. */
export function moveOption(notebook: Notebook, from: string, to: string): Notebook {
  const { about } = notebook;
  const move = (place: string): string => (place.endsWith(`@${from}`) ? `${place.slice(0, -from.length)}${to}` : place);
  if (!about.reviews && !about.accepted) return notebook;
  return {
    ...notebook,
    about: {
      ...about,
      ...(about.reviews && { reviews: renamed(about.reviews, move) }),
      ...(about.accepted && { accepted: about.accepted.map((one) => ({ ...one, at: move(one.at) })) }),
    },
  };
}

/** Follows a key that was changed. */
export function moveRowEntry(notebook: Notebook, page: string, from: string, to: string): Notebook {
  const old = `${page}.${from}`;
  const { rows, reviews, accepted } = notebook.about;
  const noted = [...Object.keys(rows ?? {}), ...Object.keys(reviews ?? {}), ...(accepted ?? []).map(({ at }) => at)];
  if (from === "" || to === "" || !noted.some((at) => at === old || at.startsWith(`${old}@`))) return notebook;
  return moveAddresses(notebook, (address) => (address === old ? `${page}.${to}` : address));
}
