import type { Page } from "playwright-core";

/** Verdicts of which some letters cannot be read, on all of the page in sight: it is scrolled from top to bottom. */
export const cutVerdicts = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const holder = document.querySelector("#cells .ht_master .wtHolder");
    if (!holder) return ["there are no cells"];
    const cut = new Set<string>();
    const step = Math.max(100, holder.clientHeight - 60);
    for (let top = 0; top === 0 || top < holder.scrollHeight - holder.clientHeight + step; top += step) {
      holder.scrollTop = top;
      // The cells of the rows that come into sight are drawn a moment later.
      await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
      for (const cell of document.querySelectorAll("#cells .ht_master td:is(.holds, .short)"))
        if (cell.scrollWidth > cell.clientWidth || cell.scrollHeight > cell.clientHeight + 1)
          cut.add(`${cell.textContent} (${cell.clientWidth} × ${cell.clientHeight})`);
    }
    holder.scrollTop = 0;
    return [...cut];
  });
