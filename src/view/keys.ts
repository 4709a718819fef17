import type { Desk } from "./desk";
import { redo, undo } from "./edits/back";
import { fillSelection } from "./edits/fill-block";
import { insertRowsAt, removeSelectedRows } from "./edits/lines";
import type { Wishes } from "./wishes";

const isText = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && (target.matches("input, select, textarea") || target.isContentEditable);

/** Turns to the page before or after the shown one. */
function turn(desk: Desk, by: number): void {
  const { pages } = desk.notebook;
  const page = pages[pages.indexOf(desk.page) + by];
  if (page) desk.go(page.id);
}

/**
 * The keys that work on the whole page, and those of the cells that the grid does not know.
 *
 * @param isInCells whether the keyboard is in the cells and no text is being typed there.
 */
export function listenToKeys(desk: Desk, isInCells: () => boolean, wishes: Wishes): void {
  const command = (event: KeyboardEvent): (() => void) | undefined => {
    const key = event.key.toLowerCase();
    const isCommand = (event.ctrlKey || event.metaKey) && !event.altKey;
    const inCells = isInCells();
    if (isCommand && key === "s" && !event.shiftKey) return wishes.saveNotebook;
    if (event.altKey && !event.ctrlKey && (key === "pageup" || key === "pagedown")) {
      return () => {
        turn(desk, key === "pageup" ? -1 : 1);
        if (inCells) wishes.toCells();
      };
    }
    if (!inCells && isText(event.target)) return undefined;
    if (isCommand && key === "z") return () => (event.shiftKey ? redo(desk) : undo(desk));
    if (isCommand && key === "y" && !event.shiftKey) return () => redo(desk);
    if (!inCells) return undefined;
    if (isCommand && key === "d") return () => fillSelection(desk, event.shiftKey ? "right" : "down");
    if (event.ctrlKey && event.altKey && key === "i") return () => insertRowsAt(desk, "above");
    if (event.ctrlKey && event.altKey && key === "r") return () => removeSelectedRows(desk);
    if (event.ctrlKey && event.altKey && key === "k") return () => wishes.tick("cell");
    if (event.ctrlKey && event.altKey && key === "u") return () => wishes.unfold();
    if ((event.shiftKey && key === "f10") || key === "contextmenu") return () => wishes.menu();
    return undefined;
  };
  document.addEventListener(
    "keydown",
    (event) => {
      if (event.isComposing || document.querySelector("dialog[open], [popover]:popover-open")) return;
      const act = command(event);
      if (!act) return;
      event.preventDefault();
      event.stopPropagation();
      act();
    },
    { capture: true },
  );
}
