import type { Page } from "../../notebook/model";
import { inBackground } from "../background";
import type { Desk } from "../desk";
import type { PageDeeds } from "../panels/page-menu";
import { movePageBy } from "./move-page";

/** What is done with pages, where anything can be changed; where it cannot, the reason is said. */
export function pageDeedsOf(desk: Desk): PageDeeds {
  const isOpen = (): boolean => {
    if (desk.closed !== undefined) desk.say(desk.closed, "refused");
    return desk.live !== undefined && desk.closed === undefined;
  };
  const rename = async (page: Page) => {
    const { askPageName } = await import("../dialogs/rename-page");
    await askPageName(desk, page);
  };
  const remove = async (page: Page) => {
    const { askRemovePage } = await import("../dialogs/ask-remove-page");
    await askRemovePage(desk, page);
  };
  return {
    rename: (page) => {
      if (isOpen()) inBackground(rename(page));
    },
    move: (page, by) => {
      if (isOpen()) movePageBy(desk, page, by);
    },
    remove: (page) => {
      if (isOpen()) inBackground(remove(page));
    },
  };
}
