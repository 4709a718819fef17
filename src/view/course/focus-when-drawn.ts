/** Gives the keyboard to what a change has just asked to be drawn: the screen is drawn a moment after the change. */
export function focusWhenDrawn(selector: string): void {
  requestAnimationFrame(() => document.querySelector<HTMLElement>(selector)?.focus());
}
