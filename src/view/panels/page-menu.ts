import type { Page } from "../../notebook/model";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import type { MenuEntry } from "../grid/menu";

/** Puts the keyboard on the page that is shown, in the list of pages. */
export const toPageList = (): void => document.querySelector<HTMLElement>(".pages [aria-current]")?.focus();

/** What can be done with a page as a whole, from the list of pages. */
export const pageMenu = (desk: Desk, page: Page, remove: () => void): MenuEntry[] => [
  ...(page.id === desk.page.id
    ? []
    : [
        {
          label: say`Turn to ${page.name}`,
          act: () => {
            desk.go(page.id);
            requestAnimationFrame(toPageList);
          },
        },
      ]),
  { label: say`Remove page ${page.name} …`, keys: say`Del`, act: remove },
];
