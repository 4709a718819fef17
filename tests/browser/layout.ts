import type { Page } from "playwright-core";

/**
 * What is out of its place: parts of the frame, or buttons, that stand beyond the window, are covered, or push the
 * page sideways. On a wide window everything but what scrolls by itself is in sight.
 */
export const outOfPlace = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const { innerWidth, innerHeight } = window;
    const root = document.documentElement;
    const isWide = innerWidth > 1080;
    if (root.scrollWidth > innerWidth) found.push(`the document is ${root.scrollWidth} px wide`);
    if (isWide && root.scrollHeight > innerHeight) found.push(`the document is ${root.scrollHeight} px high`);
    const within = (name: string, element: Element | null, least = 1) => {
      if (!element) return;
      const { left, right, top, bottom, width, height } = element.getBoundingClientRect();
      const isOut = left < -1 || right > innerWidth + 1 || (isWide && (top < -1 || bottom > innerHeight + 1));
      if (isOut || width < least || height < least) {
        found.push(`${name} stands at ${[left, top, right, bottom].map(Math.round)}`);
      }
    };
    for (const [name, least] of [
      ["nav.left", 100],
      [".pages", 30],
      [".files", 20],
      ["main", 200],
      [".head h1", 10],
      [".cell-line", 25],
      ["#cells", 180],
      [".said", 20],
      ["aside.side", 100],
      [".title-block", 20],
    ] as const)
      within(name, document.querySelector(name), least);
    const side = document.querySelector(".side-content");
    if (side && side.scrollWidth > side.clientWidth + 1)
      found.push(`the side's content is ${side.scrollWidth} px wide`);
    const dialog = document.querySelector("dialog[open]");
    if (dialog) {
      const { left, right, top, bottom } = dialog.getBoundingClientRect();
      if (left < 0 || right > innerWidth || top < 0 || bottom > innerHeight)
        found.push("the dialog is larger than the window");
      if (dialog.scrollWidth > dialog.clientWidth + 1)
        found.push(`the dialog's content is ${dialog.scrollWidth} px wide`);
    }
    // A button is within reach when what lies at its middle, once it is scrolled to, is the button.
    const buttons = dialog
      ? dialog.querySelectorAll("button, select, input")
      : document.querySelectorAll(".tools button, .files button, .pages li:last-child button, .side h2 button");
    const [x, y] = [window.scrollX, window.scrollY];
    for (const button of buttons) {
      if (button.closest("details:not([open])")) continue;
      button.scrollIntoView({ block: "nearest", inline: "nearest" });
      const box = button.getBoundingClientRect();
      const hit = document.elementFromPoint(box.x + box.width / 2, box.y + Math.min(box.height, innerHeight) / 2);
      const label = hit?.closest("label");
      if (!hit || !(button.contains(hit) || hit.contains(button) || label?.contains(button)))
        found.push(
          `"${(button.textContent ?? "").trim().slice(0, 30)}" cannot be pressed at ${[box.x, box.y, box.width, box.height].map(Math.round)}`,
        );
    }
    dialog?.scrollTo(0, 0);
    window.scrollTo(x, y);
    return [...new Set(found)].slice(0, 8);
  });
