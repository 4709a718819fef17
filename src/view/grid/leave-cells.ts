const focusable =
  'a[href], button:not(:disabled), input:not(:disabled), select:not(:disabled), textarea:not(:disabled), [tabindex]:not([tabindex="-1"])';

/** Moves the keyboard to what comes after the cells on the page, or before them. */
export function leaveCells(host: HTMLElement, backwards: boolean): void {
  const all = [...document.querySelectorAll<HTMLElement>(focusable)].filter(
    (element) =>
      !host.contains(element) && element.tabIndex >= 0 && element.checkVisibility({ visibilityProperty: true }),
  );
  const follows = (element: HTMLElement) =>
    (host.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
  const target = backwards ? all.findLast((element) => !follows(element)) : all.find(follows);
  target?.focus();
}

/** Takes the keyboard away from the cells, so that Tab begins at the top of the page again. */
export function restKeyboard(): void {
  document.body.tabIndex = -1;
  document.body.focus({ preventScroll: true });
  document.body.removeAttribute("tabindex");
}
