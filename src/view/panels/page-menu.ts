import type { Page } from "../../notebook/model";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import type { MenuEntry } from "../grid/menu";

/** Puts the keyboard on the page that is shown, in the list of pages. */
export const toPageList = (): void => document.querySelector<HTMLElement>(".pages [aria-current]")?.focus();

/** What is done with a page as a whole. */
export interface PageDeeds {
  /** Turns to a page and asks for another name. */
  readonly rename: (page: Page) => void;
  /** Moves a page by so many places in the order of the job. */
  readonly move: (page: Page, by: 1 | -1) => void;
  /** Turns to a page and asks whether it may go. */
  readonly remove: (page: Page) => void;
}

/** What can be done with a page as a whole, from the list of pages. */
export function pageMenu(desk: Desk, page: Page, { rename, move, remove }: PageDeeds): MenuEntry[] {
  const { pages } = desk.notebook;
  const at = pages.findIndex(({ id }) => id === page.id);
  // In a narrow window the list runs in lines, so the neighbours say where up and down are.
  const [above, below] = [pages[at - 1], pages[at + 1]];
  const turn = () => {
    desk.go(page.id);
    requestAnimationFrame(toPageList);
  };
  return [
    ...(page.id === desk.page.id ? [] : [{ label: say`Turn to ${page.name}`, act: turn }]),
    { label: say`Rename page ${page.name} …`, keys: say`F2`, act: () => rename(page) },
    ...(above ? [{ label: say`Move up, before ${above.name}`, keys: say`Alt ↑`, act: () => move(page, -1) }] : []),
    ...(below ? [{ label: say`Move down, after ${below.name}`, keys: say`Alt ↓`, act: () => move(page, 1) }] : []),
    { label: say`Remove page ${page.name} …`, keys: say`Del`, act: () => remove(page) },
  ];
}
