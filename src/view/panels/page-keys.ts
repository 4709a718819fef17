import type { Page } from "../../notebook/model";
import type { PageDeeds } from "./page-menu";

/** The deed that a key asks for on a page in the list of pages; undefined for any other key. */
export function pageDeed(event: KeyboardEvent, deeds: PageDeeds): ((page: Page) => void) | undefined {
  const { key, altKey, ctrlKey, metaKey, shiftKey } = event;
  if (ctrlKey || metaKey || shiftKey) return undefined;
  if (altKey) {
    if (key !== "ArrowUp" && key !== "ArrowDown") return undefined;
    return (page) => deeds.move(page, key === "ArrowUp" ? -1 : 1);
  }
  if (key === "F2") return deeds.rename;
  return key === "Delete" ? deeds.remove : undefined;
}
