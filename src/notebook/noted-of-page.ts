import type { Notebook } from "./model";

/** Whether a place (`Supply.drop@Cruiser`, `Supply.drop`, `Supply.*`, `'Free sheet'!B3`) stands on a page. */
export const isNoted = (page: string, place: string): boolean =>
  [`${page}.`, `${page}!`, `'${page}'!`].some((start) => place.startsWith(start));

const without = <T>(entries: Record<string, T>, goes: (place: string) => boolean): Record<string, T> =>
  Object.fromEntries(Object.entries(entries).filter(([place]) => !goes(place)));

/**
 * The notebook without what is noted of a page: its note, what is said of its rows, its ticks, its accepted findings.
 * Left behind they would come back with the next page of this name.
 */
export function forgetPage(notebook: Notebook, page: string): Notebook {
  const { about } = notebook;
  const { notes, rows, reviews, accepted } = about;
  const goes = (place: string) => isNoted(page, place);
  return {
    ...notebook,
    about: {
      ...about,
      ...(notes && { notes: without(notes, (of) => of === page) }),
      ...(rows && { rows: without(rows, goes) }),
      ...(reviews && { reviews: without(reviews, goes) }),
      ...(accepted && { accepted: accepted.filter(({ at }) => !goes(at)) }),
    },
  };
}
