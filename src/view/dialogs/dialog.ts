import { html, render, type TemplateResult } from "lit/html.js";

/** What the inside of a dialog may do with it. */
export interface DialogHandle {
  /** Draws the inside again, after something in it changed. */
  readonly update: () => void;
  readonly close: () => void;
}

/**
 * Opens a dialog in front of the page and waits until it is closed, by Escape too. Focus returns to where it was.
 *
 * @param body draws the inside; it is drawn again by `update`.
 * @param wide for a table; `whole` takes the whole height as well.
 */
export function openDialog(
  title: string,
  body: (handle: DialogHandle) => TemplateResult,
  wide: boolean | "whole" = false,
): Promise<void> {
  const dialog = document.createElement("dialog");
  dialog.setAttribute("aria-labelledby", "dialog-title");
  if (wide) dialog.className = wide === "whole" ? "whole" : "wide";
  const before = document.activeElement;
  const handle: DialogHandle = { update: () => draw(), close: () => dialog.close() };
  const draw = () => render(html`<h2 id="dialog-title">${title}</h2>${body(handle)}`, dialog);
  // Keys belong to the dialog alone while it is open.
  dialog.addEventListener("keydown", (event) => event.stopPropagation());
  document.body.append(dialog);
  draw();
  return new Promise((done) => {
    dialog.addEventListener("close", () => {
      dialog.remove();
      if (before instanceof HTMLElement) before.focus({ preventScroll: true });
      done();
    });
    dialog.showModal();
  });
}
