import { inBackground } from "../background";
import type { Clipboard } from "../edits/clipboard";

/**
 * Joins the browser's copy, cut and paste to the cells.
 *
 * @param isHere whether the keyboard is in the cells and no text is being typed there.
 * @param marked is called when cells came to wait for their move.
 */
export function listenToClipboard(clipboard: Clipboard, isHere: () => boolean, marked: () => void): void {
  const on = (name: "copy" | "cut" | "paste", act: (data: DataTransfer) => void) =>
    document.addEventListener(name, (event) => {
      if (!isHere() || !event.clipboardData) return;
      event.preventDefault();
      act(event.clipboardData);
    });
  on("copy", (data) => {
    clipboard.take(data, false);
    marked();
  });
  on("cut", (data) => {
    clipboard.take(data, true);
    marked();
  });
  on("paste", (data) => inBackground(clipboard.put(data)));
}
