import { type Page, pageByName } from "../notebook/model";
import { referencesOf } from "../notebook/references";
import { one, within } from "./block";
import type { Desk } from "./desk";

/** An address as it is read; one that is written wrongly says nothing. */
function decoded(hash: string): string {
  try {
    return decodeURIComponent(hash);
  } catch {
    return "";
  }
}

/** Shows the cell that the page's address names behind `#`: `#Supply!F63`. Anything else is left alone. */
function goTo(desk: Desk, hash: string): boolean {
  const [, name = "", cell = ""] = /^#([^!]+)!([A-Za-z]{1,3}\d+)$/.exec(decoded(hash)) ?? [];
  const page: Page | undefined = name ? pageByName(desk.notebook, name) : undefined;
  const [reference] = referencesOf(`=${cell}`);
  if (!page || reference?.from.row === undefined || reference.from.column === undefined) return false;
  desk.select(within(page, one({ row: reference.from.row, column: reference.from.column })), page.id);
  return true;
}

/** Follows links to cells from elsewhere: a mail, a note, another page of the browser. */
export function listenToPlace(desk: Desk, toCells: () => void): void {
  const follow = () => {
    if (goTo(desk, window.location.hash)) toCells();
  };
  window.addEventListener("hashchange", follow);
  follow();
}
