import { median, part, short } from "../measure";
import type { StudyFigures } from "../page/study";
import type { Benched } from "./served";

/** A spread in its worker while somebody types. */
export async function studyBench({ browser, pages }: Benched, rounds: number): Promise<string> {
  const figures: StudyFigures[] = [];
  for (let round = 0; round < rounds; round++) {
    const page = await browser.newPage();
    await page.goto(`${pages}study.html`);
    await page.waitForSelector("html[data-ready]");
    await page.focus("#typed");
    let isOver = false;
    const answer = page
      .evaluate(() => window.studyFigures?.())
      .finally(() => {
        isOver = true;
      });
    while (!isOver) {
      await page.keyboard.press("x");
      await page.waitForTimeout(20);
    }
    const found = await answer;
    if (found) figures.push(found);
    await page.close();
  }
  const keys = figures.flatMap((one) => one.keys);
  return [
    `Worker under the page's content policy: calculates by ${figures[0]?.ready.by ?? "nothing"}`,
    `10 000 trials over a whole option: ${short(median(figures.map(({ spread }) => spread)) / 1000)} s (median of ${figures.length})`,
    `Keys pressed meanwhile: ${keys.length}; taken after ${short(part(keys, 0.5))} ms p50, ${short(Math.max(...keys))} ms at most`,
  ].join("\n");
}
