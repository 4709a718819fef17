import { movePage } from "../../notebook/edit-pages";
import type { Page } from "../../notebook/model";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { toPageList } from "../panels/page-menu";

/** Moves a page up or down in the order of the job; the keyboard stays on it. */
export function movePageBy(desk: Desk, page: Page, by: 1 | -1): void {
  const placeOf = (): number => desk.notebook.pages.findIndex(({ id }) => id === page.id);
  const to = placeOf() + by;
  desk.go(page.id);
  const label = by < 0 ? say`page ${page.name} moved up` : say`page ${page.name} moved down`;
  if (desk.apply(label, (notebook) => movePage(notebook, page.id, to))) {
    desk.say(say`Page ${page.name} is now ${placeOf() + 1} of ${desk.notebook.pages.length}.`);
  }
  // After the list is drawn, and before another key comes: the button under the keyboard stands for another page now.
  queueMicrotask(toPageList);
}
