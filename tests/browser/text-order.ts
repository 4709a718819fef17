import type { Page } from "playwright-core";

/** Words that turn round themselves: they stand in the texts that turn the direction. */
const turned = ["evil", "live"];

/**
 * Ordinary words that do not stand in their order, because a text beside them turns the direction: of every line of
 * text on the screen, cells left out, the words must follow one another from left to right.
 */
export const outOfOrder = (page: Page): Promise<string[]> =>
  page.evaluate((own) => {
    const turning = /[\u0590-\u08ff\u202a-\u202e\u2066-\u2069]/;
    const blocks = new Map<Element, Text[]>();
    const walker = document.createTreeWalker(
      document.querySelector("dialog[open]") ?? document.body,
      NodeFilter.SHOW_TEXT,
    );
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      let block = node.parentElement;
      if (!block?.checkVisibility() || block.closest("#cells, .unseen, option")) continue;
      while (block && getComputedStyle(block).display === "inline") block = block.parentElement;
      if (block) blocks.set(block, [...(blocks.get(block) ?? []), node as Text]);
    }
    const range = document.createRange();
    const boxOf = (node: Text, at: number): DOMRect | undefined => {
      range.setStart(node, at);
      range.setEnd(node, at + 1);
      return range.getClientRects()[0];
    };
    const found: string[] = [];
    for (const texts of blocks.values()) {
      if (!texts.some(({ data }) => turning.test(data))) continue;
      let before: { word: string; right: number; top: number } | undefined;
      for (const node of texts) {
        for (const { 0: word, index } of node.data.matchAll(/[A-Za-z]{3,}/g)) {
          if (own.includes(word.toLowerCase())) continue;
          const [first, last] = [boxOf(node, index), boxOf(node, index + word.length - 1)];
          if (!first || !last || Math.abs(first.top - last.top) > 3) {
            before = undefined;
            continue;
          }
          if (last.left < first.left) found.push(`"${word}" reads backwards in "${node.data.trim().slice(0, 60)}"`);
          const isSameLine = before && Math.abs(before.top - first.top) < 3;
          if (before && isSameLine && first.left < before.right - 1)
            found.push(`"${word}" stands before "${before.word}" in "${node.data.trim().slice(0, 60)}"`);
          before = { word, right: last.right, top: first.top };
        }
      }
    }
    return found.slice(0, 8);
  }, turned);
