import { html, render } from "lit/html.js";

export interface MenuEntry {
  readonly label: string;
  /** Keys that do the same, in words. */
  readonly keys?: string;
  readonly act: () => void;
  /** A line stands above it. */
  readonly begins?: true;
}

/** Opens a list of things to do, at a place on the screen; Escape, a click beside it or a choice closes it. */
export function openMenu(label: string, entries: readonly MenuEntry[], x: number, y: number, closed: () => void): void {
  const menu = document.createElement("div");
  menu.className = "menu";
  menu.popover = "auto";
  const items = () => [...menu.querySelectorAll<HTMLElement>('[role="menuitem"]')];
  const pick = (entry: MenuEntry) => () => {
    menu.hidePopover();
    entry.act();
  };
  const key = (event: KeyboardEvent) => {
    const all = items();
    const at = all.indexOf(document.activeElement as HTMLElement);
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: all.length - 1 }[event.key];
    event.stopPropagation();
    if (event.key === "Tab") event.preventDefault();
    if (to === undefined) return;
    event.preventDefault();
    all[(to + all.length) % all.length]?.focus();
  };
  render(
    html`<div role="menu" aria-label=${label} @keydown=${key}>
      ${entries.map(
        (
          entry,
        ) => html`<button type="button" role="menuitem" tabindex="-1" class=${entry.begins ? "begins" : ""} @click=${pick(entry)}>
          <span>${entry.label}</span>${entry.keys ? html` <kbd>${entry.keys}</kbd>` : ""}
        </button>`,
      )}
    </div>`,
    menu,
  );
  menu.addEventListener("toggle", (event) => {
    if ((event as ToggleEvent).newState !== "closed") return;
    const hadFocus = menu.contains(document.activeElement) || document.activeElement === document.body;
    menu.remove();
    if (hadFocus) closed();
  });
  (document.querySelector("main") ?? document.body).append(menu);
  menu.showPopover();
  const { width, height } = menu.getBoundingClientRect();
  menu.style.left = `${Math.max(4, Math.min(x, window.innerWidth - width - 4))}px`;
  menu.style.top = `${Math.max(4, Math.min(y, window.innerHeight - height - 4))}px`;
  items()[0]?.focus();
}
