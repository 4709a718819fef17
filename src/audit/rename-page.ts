import { renamePage } from "../notebook/edit-pages";
import type { Notebook } from "../notebook/model";
import { finderOf } from "../notebook/own/own-functions";
import { cellsOfPlace, markOf, reviewsOf } from "./review";
import { Marks } from "./state";

/**
 * Gives a page another name. What was looked at is the same under it, so ticks that stood go on standing; a stale one
 * stays stale.
 *
 * @throws Refusal as `renamePage` does.
 */
export function renameReviewed(notebook: Notebook, id: string, name: string): Notebook {
  const renamed = renamePage(notebook, id, name);
  const { reviews } = renamed.about;
  if (renamed === notebook || !reviews) return renamed;
  const marks = new Marks(renamed, finderOf(renamed));
  const before = new Map(reviewsOf(notebook).map(({ place, stale }) => [place, stale]));
  // Places follow one by one, in the order in which they were.
  const old = Object.keys(notebook.about.reviews ?? {});
  const followed = Object.entries(reviews).map(([place, one], i) => {
    const cells = before.get(old[i] ?? "") === false ? cellsOfPlace(renamed, place) : undefined;
    return [place, cells ? { ...one, hash: markOf(marks, cells) } : one] as const;
  });
  return { ...renamed, about: { ...renamed.about, reviews: Object.fromEntries(followed) } };
}
