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
